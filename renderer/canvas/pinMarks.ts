import type { Route } from "../../core/model/route.ts";

/** What people decided for every layout to come: things that stay, and poles beside which nothing may hang. */
export type PinMarks = {
  readonly terminals: ReadonlySet<string>;
  /** Living units whose drop is pinned. */
  readonly units: ReadonlySet<string>;
  readonly poles: ReadonlySet<string>;
};

/** Finds what is pinned. */
export function pinMarks({ terminal, drop, pole }: Pick<Route, "terminal" | "drop" | "pole">): PinMarks {
  return {
    terminals: new Set([...terminal.values()].filter((one) => one.pinned).map((one) => one.id)),
    units: new Set([...drop.values()].filter((one) => one.pinned).map((one) => one.livingUnitId)),
    poles: new Set([...pole.values()].filter((one) => !one.terminalAllowed).map((one) => one.id)),
  };
}
