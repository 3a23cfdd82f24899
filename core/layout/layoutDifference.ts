import type { Route } from "../model/route.ts";
import type { Terminal } from "../model/tables.ts";

/** What another layout of a route does otherwise, thing by thing; names and numbers do not count, places do. */
export type LayoutDifference = {
  /** Terminals where none hangs now, as the other layout has them. */
  readonly hung: readonly Terminal[];
  /** Terminals that hang where they are as another model. */
  readonly remodelled: readonly Terminal[];
  /** Terminals that hang now, where the other layout has none. */
  readonly gone: readonly Terminal[];
  /** Living units whose drop comes from another place than now, or that have none now, with the terminal that serves them. */
  readonly moved: readonly { readonly livingUnitId: string; readonly terminal: Terminal }[];
  /** Living units that have a drop now and none in the other layout. */
  readonly lost: readonly string[];
};

type Hung = Pick<Route, "terminal" | "drop">;

/** Compares what hangs and whom it serves. */
export function layoutDifference(present: Hung, other: Hung): LayoutDifference {
  const [now, then] = [byPlace(present), byPlace(other)];
  const [served, toServe] = [terminalOfUnit(present), terminalOfUnit(other)];
  return {
    hung: [...then].filter(([place]) => !now.has(place)).map(([, one]) => one),
    remodelled: [...then]
      .filter(([place, one]) => (now.get(place)?.terminalModelId ?? one.terminalModelId) !== one.terminalModelId)
      .map(([, one]) => one),
    gone: [...now].filter(([place]) => !then.has(place)).map(([, one]) => one),
    moved: [...toServe].flatMap(([livingUnitId, terminal]) => {
      const before = served.get(livingUnitId);
      return before && placeKey(before) === placeKey(terminal) ? [] : [{ livingUnitId, terminal }];
    }),
    lost: [...served.keys()].filter((id) => !toServe.has(id)),
  };
}

function byPlace({ terminal }: Hung): ReadonlyMap<string, Terminal> {
  return new Map([...terminal.values()].map((one) => [placeKey(one), one]));
}

function terminalOfUnit({ terminal, drop }: Hung): ReadonlyMap<string, Terminal> {
  return new Map(
    [...drop.values()].flatMap(({ livingUnitId, terminalId }) => {
      const serving = terminal.get(terminalId);
      return serving ? [[livingUnitId, serving] as const] : [];
    }),
  );
}

/** A place on the strand to the millimetre. */
function placeKey({ spanId, offsetM }: Terminal): string {
  return `${spanId} ${offsetM.toFixed(3)}`;
}
