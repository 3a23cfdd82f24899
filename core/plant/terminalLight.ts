import { lightMargin } from "./lightMargin.ts";
import { defineQuery } from "./plant.ts";

/** The light of a terminal's drops at their worst. */
export type TerminalLight = {
  /** Drops without light. */
  readonly darkCount: number;
  /** The drop with the least margin to the class's largest loss; null where none has light. */
  readonly worst: { readonly dropId: string; readonly marginDb: number; readonly way: "up" | "down" } | null;
  /** Least margin over the class's least loss; below zero the receiver is overloaded. */
  readonly overloadDb: number | null;
};

/** How the light of a terminal's drops stands against their classes. */
export const terminalLight = defineQuery("terminal-light", (plant, terminalId): TerminalLight => {
  const margins = plant
    .where("drop", "terminalId", terminalId)
    .map((dropId) => ({ dropId, margin: lightMargin(plant, dropId) }));
  const known = margins.flatMap(({ dropId, margin }) => (margin.kind === "known" ? [{ dropId, margin }] : []));
  const [worst] = known.toSorted((a, b) => a.margin.worstDb - b.margin.worstDb);
  return {
    darkCount: margins.length - known.length,
    worst: worst ? { dropId: worst.dropId, marginDb: worst.margin.worstDb, way: worst.margin.way } : null,
    overloadDb: worst ? Math.min(...known.map((one) => one.margin.overloadDb)) : null,
  };
});
