import { type BuiltState, builtStates } from "../model/closeoutRows.ts";
import { defineQuery, type Plant } from "../plant/plant.ts";
import { type AskedReading, askedReadings } from "./askedReadings.ts";
import { disputeOf } from "./disputes.ts";
import { type Subject, subjectKey } from "./subject.ts";

/** How far a thing has come; designed where nobody has said anything of it. */
export type StandingState = "designed" | BuiltState;
export const standingStates: readonly StandingState[] = ["designed", ...builtStates];

/** The state a thing stands in, who said so and when. */
type Reached = { readonly state: StandingState; readonly by: string; readonly atIso: string };

/** How far a thing has come, and the readings it still lacks. */
export type Standing = Reached & {
  readonly askedCount: number;
  readonly missing: readonly AskedReading[];
  /** Those read otherwise by another. */
  readonly disputed: readonly AskedReading[];
};

/** By the key of a thing. */
const reachedBy = defineQuery("reached", (plant, key): Reached => {
  for (const state of [...builtStates].reverse()) {
    const row = plant.row("milestone", `${key} ${state}`);
    if (row) return { state, by: row.by, atIso: row.atIso };
  }
  return { state: "designed", by: "", atIso: "" };
});

/** How far a thing has come, and the readings it still lacks. */
export function standingOf(plant: Plant, subject: Subject): Standing {
  const asked = askedReadings(plant, subject);
  const missing = asked.filter((one) => !plant.row("reading", one.id));
  const disputed = asked.filter((one) => disputeOf(plant, one.id) !== null);
  return { ...reachedBy(plant, subjectKey(subject)), askedCount: asked.length, missing, disputed };
}
