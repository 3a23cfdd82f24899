import type { Route } from "../model/route.ts";
import type { Pole } from "../model/tables.ts";

/**
 * The pole each pole is joined to by a span that its line and order do not tell, such as the first pole of a lateral: what an
 * exported pole list needs so that it reads back with all its spans.
 *
 * @returns tag of that pole by pole id. One span a pole; where both ends of a span have one already it is left out, as loops do.
 */
export function poleJoins(route: Route): ReadonlyMap<string, string> {
  const told = pairsInOrder([...route.pole.values()]);
  const joins = new Map<string, string>();
  for (const { fromPoleId, toPoleId } of route.span.values()) {
    if (told.has(pairKey(fromPoleId, toPoleId))) continue;
    const [poleId, otherId] = joins.has(toPoleId) ? [fromPoleId, toPoleId] : [toPoleId, fromPoleId];
    const other = route.pole.get(otherId);
    if (other && !joins.has(poleId)) joins.set(poleId, other.tag);
  }
  return joins;
}

/** Neighbours in order along each line. */
function pairsInOrder(poles: readonly Pole[]): ReadonlySet<string> {
  const ordered = poles
    .filter((pole) => pole.order > 0)
    .sort((a, b) => (a.line === b.line ? a.order - b.order : a.line < b.line ? -1 : 1));
  const pairs = ordered.flatMap((pole, index) => {
    const next = ordered[index + 1];
    return next?.line === pole.line ? [pairKey(pole.id, next.id)] : [];
  });
  return new Set(pairs);
}

function pairKey(a: string, b: string): string {
  return JSON.stringify([a, b].sort());
}
