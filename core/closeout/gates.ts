import type { BuiltKind } from "../model/closeoutRows.ts";
import type { SignOff, TableName } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import type { AskedReading } from "./askedReadings.ts";
import { type BuiltThing, builtThings } from "./board.ts";
import { disputes, saidBy } from "./disputes.ts";
import { standingStates } from "./standing.ts";
import type { Subject } from "./subject.ts";
import { readingWords } from "./words.ts";

/** What a person can sign for, in order; each takes in those before it. */
export const stages = ["built", "tested", "accepted"] as const;
export type Stage = SignOff["stage"];

/** A finding as a gate looks at it. */
type GatedFinding = {
  readonly key: string;
  readonly severity: "error" | "warning" | "note";
  readonly message: string;
  readonly waiverId: string | null;
  readonly subjects: readonly { readonly table: TableName; readonly id: string }[];
};

/** One thing that keeps a gate shut. */
type Missing =
  | { readonly kind: "finding"; readonly finding: GatedFinding }
  | { readonly kind: "thing"; readonly subject: Subject }
  | { readonly kind: "reading"; readonly asked: AskedReading }
  | {
      readonly kind: "row";
      readonly table: "trace" | "punch" | "rivalReading";
      readonly id: string;
      readonly name: string;
    }
  | { readonly kind: "nothing" };

/** What must be so before a stage is signed for; open where nothing is missing. */
export type Gate = {
  readonly id: string;
  readonly stage: Stage;
  readonly title: string;
  readonly missing: readonly Missing[];
};

/** Light and houses are tested; whatever else is read is read while it is built. */
const testedKinds: readonly BuiltKind[] = ["port", "drop"];

/**
 * The gates a route goes through to be signed for as a stage, those of the stages before it among them. A finding waived with a reason shuts
 * none.
 */
export function gatesBefore(plant: Plant, stage: Stage, findings: readonly GatedFinding[]): readonly Gate[] {
  const things = builtThings(plant);
  const lacking = things.flatMap(({ standing }) => standing.missing);
  const gates: readonly Gate[] = [
    gate("errors", "built", "No error among the findings but those waived", errorsIn(findings)),
    gate("built", "built", "Everything on the route is built", shortOf(things, "built")),
    gate("readings", "built", "Offsets, coils, marks, heights and bonds are read", readingsOf(lacking, false)),
    gate("tested", "tested", "Everything on the route is tested", shortOf(things, "tested")),
    gate("light", "tested", "Light at every port, tag and port of every drop are read", readingsOf(lacking, true)),
    gate("traces", "tested", "Every trace taken is of a fiber of the route", strayTraces(plant)),
    gate("punch", "accepted", "Nothing is left on the punch list", openPunches(plant)),
    gate("rivals", "accepted", "No two readings of one thing wait for a decision", disputed(plant)),
  ];
  return gates.filter((one) => stages.indexOf(one.stage) <= stages.indexOf(stage));
}

function gate(id: string, stage: Stage, title: string, missing: readonly Missing[]): Gate {
  return { id, stage, title, missing };
}

function errorsIn(findings: readonly GatedFinding[]): readonly Missing[] {
  return findings
    .filter((one) => one.severity === "error" && one.waiverId === null)
    .map((finding) => ({ kind: "finding", finding }));
}

function shortOf(things: readonly BuiltThing[], state: "built" | "tested"): readonly Missing[] {
  if (things.length === 0) return [{ kind: "nothing" }];
  const least = standingStates.indexOf(state);
  return things
    .filter(({ standing }) => standingStates.indexOf(standing.state) < least)
    .map(({ subject }) => ({ kind: "thing", subject }));
}

function readingsOf(lacking: readonly AskedReading[], ofTests: boolean): readonly Missing[] {
  return lacking
    .filter(({ subject }) => testedKinds.includes(subject.kind) === ofTests)
    .map((asked) => ({ kind: "reading", asked }));
}

function strayTraces(plant: Plant): readonly Missing[] {
  return plant
    .all("trace")
    .map((id) => plant.rowOf("trace", id))
    .filter(({ cableId, fiber }) => cableId === null || fiber === null)
    .map(({ id, fileName }) => ({ kind: "row", table: "trace", id, name: fileName }));
}

function openPunches(plant: Plant): readonly Missing[] {
  return plant
    .all("punch")
    .map((id) => plant.rowOf("punch", id))
    .filter(({ doneBy }) => doneBy === "")
    .sort((a, b) => a.number - b.number)
    .map(({ id, number, what }) => ({ kind: "row", table: "punch", id, name: `${number} ${what}` }));
}

function disputed(plant: Plant): readonly Missing[] {
  return disputes(plant).map(({ sides }) => {
    const [first] = sides.flatMap((one) => one.rivals);
    const who = sides.map((one) => saidBy(one).by).join(" and ");
    const name = `${first ? readingWords[first.what] : ""}: ${who} disagree`;
    return { kind: "row", table: "rivalReading", id: first?.id ?? "", name };
  });
}
