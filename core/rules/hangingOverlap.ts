import { belongTogether, gapBetweenM, type Hung, hangsFree, hungInSpan } from "../plant/hanging.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { companySetting, type Fix, type Rule } from "./rule.ts";
import { moveTerminalFix } from "./terminalFix.ts";
import { isUnder } from "./withinLimit.ts";

export const hangingOverlap: Rule = {
  id: "hanging-overlap",
  title: "Things hung on the strand keep clear of each other",
  compares: "The gap between one thing hung on the strand and the next, end to end, against the gap of the settings.",
  severity: "error",
  basis: companySetting("hangingGapM"),
  each: "span",
  *check(plant, id) {
    const limit = plant.settings().hangingGapM;
    const all = hungInSpan(plant, id);
    const hung = all.filter((one) => !all.some((other) => hangsAtItsTerminal(one, other)));
    for (const [index, first] of hung.entries()) {
      const second = hung.slice(index + 1).find((one) => !belongTogether(first, one));
      if (!second) continue;
      const measured = gapBetweenM(first, second);
      if (!isUnder(measured, limit)) continue;
      yield {
        subjects: [first, second].map(({ table, id }) => ({ table, id })),
        message: `In span ${spanName(plant, id)} ${first.name} and ${second.name} hang too close.`,
        measured,
        limit,
        unit: "m",
        fixes: [...apartFix(plant, id, first, second), ...apartFix(plant, id, second, first)],
      };
    }
  },
};

/** A coil right at its own terminal takes no strand of its own. */
function hangsAtItsTerminal(coil: Hung, terminal: Hung): boolean {
  const pair = coil.table === "slack" && terminal.table === "terminal" && belongTogether(coil, terminal);
  return pair && gapBetweenM(coil, terminal) <= 0;
}

/** Moves a storage coil out of the way, or a terminal to the other end of its span. */
function apartFix(plant: Plant, spanId: string, still: Hung, moving: Hung): readonly Fix[] {
  const { hangingGapM } = plant.settings();
  const { lengthM } = plant.rowOf("span", spanId);
  if (moving.table === "slack" && moving.terminalId === null) {
    const stepM = still.halfM + moving.halfM + hangingGapM + 0.01; // a centimetre, so that rounding cannot bring the gap back
    const offsetM = [still.offsetM + stepM, still.offsetM - stepM].find((place) =>
      hangsFree(plant, spanId, { ...moving, offsetM: place }),
    );
    if (offsetM === undefined) return [];
    return [{ label: "Move the coil clear", command: "slack.move", input: { slackId: moving.id, spanId, offsetM } }];
  }
  if (moving.table !== "terminal") return [];
  const offsetM = lengthM - moving.offsetM;
  if (!hangsFree(plant, spanId, { ...moving, offsetM })) return [];
  return moveTerminalFix(plant, moving.id, `Move ${moving.name} to the other end of the span`, spanId, offsetM);
}
