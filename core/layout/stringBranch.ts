import { fail, ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import { cablesAtPole, cablesInSpan } from "../plant/cablePath.ts";
import { spansAtPole } from "../plant/geometry.ts";
import { spanName } from "../plant/names.ts";
import { openPlant, type Plant } from "../plant/plant.ts";
import { cableRows } from "./cableRows.ts";
import { strandRows } from "./lineRows.ts";
import { lineTree } from "./lineTree.ts";

/**
 * Strings the bare spans that hang together with one of them: strand and our attachments, and cable from where they leave a line that
 * has one. Where they go on from its last pole, the cable goes on along the first of them; all others are laterals, spliced on at a
 * closure, of the type of the cable they leave. Which fibers are spliced through is for the layout to say.
 *
 * @returns a fault where the span is strung, where no cable is met, where cables are met at two poles, or where spans close a loop
 */
export function stringBranch(route: Route, spanId: string): Result<RowChange[]> {
  const plant = openPlant(route);
  const bare = bareFrom(plant, spanId);
  if (bare.size === 0)
    return fail(
      "strung",
      "The span carries strand or cable already.",
      spanId,
      "Choose a span the line does not reach.",
    );
  const [rootId, other] = polesOf(plant, bare).filter((poleId) => cablesAtPole(plant, poleId).length > 0);
  if (rootId === undefined)
    return fail(
      "no-cable-met",
      "These spans meet no pole that a cable passes.",
      spanName(plant, spanId),
      "Add the span between them and the line first.",
    );
  if (other !== undefined)
    return fail(
      "loop",
      `These spans meet a cable at pole ${tagOf(plant, rootId)} and at pole ${tagOf(plant, other)}; a cable tree needs one way to every pole.`,
      spanId,
      "Take away one span between the two.",
    );
  const lines = lineTree(plant, rootId, (one) => bare.has(one));
  if (!lines.ok) return lines;
  const cableId = cablesAtPole(plant, rootId)[0] ?? "";
  const type = plant.rowOf("cableType", plant.rowOf("cable", cableId).cableTypeId);
  const met = { cableId, poleId: rootId };
  return ok([
    ...strandRows(plant, lines.value, plant.settings().strandTypeId),
    ...cableRows(plant, lines.value, { typeOf: () => type, met }),
  ]);
}

/** The bare spans that hang together with one; none where it carries anything itself. */
function bareFrom(plant: Plant, spanId: string): ReadonlySet<string> {
  const isBare = (id: string): boolean =>
    plant.rowOf("span", id).strandSectionId === null && cablesInSpan(plant, id).length === 0;
  const found = new Set(isBare(spanId) ? [spanId] : []);
  for (const id of found) {
    const { fromPoleId, toPoleId } = plant.rowOf("span", id);
    // the far side of a line that has a cable is another branch
    const poleIds = [fromPoleId, toPoleId].filter((poleId) => cablesAtPole(plant, poleId).length === 0);
    for (const near of poleIds.flatMap((poleId) => spansAtPole(plant, poleId))) if (isBare(near)) found.add(near);
  }
  return found;
}

function polesOf(plant: Plant, spanIds: ReadonlySet<string>): readonly string[] {
  return [
    ...new Set(
      [...spanIds].flatMap((id) => {
        const { fromPoleId, toPoleId } = plant.rowOf("span", id);
        return [fromPoleId, toPoleId];
      }),
    ),
  ].sort();
}

function tagOf(plant: Plant, poleId: string): string {
  return plant.rowOf("pole", poleId).tag;
}
