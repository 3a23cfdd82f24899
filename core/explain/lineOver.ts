import type { ClearanceCase, ClearanceSurface } from "../model/clearanceRows.ts";
import { type Clearance, clearanceLimitFor } from "../plant/clearance.ts";
import { spanEnds } from "../plant/geometry.ts";
import { groundAtM, groundLine } from "../plant/groundLine.ts";
import type { Plant } from "../plant/plant.ts";
import { spanSag, strandSagM } from "../plant/spanSag.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import type { Subject } from "../rules/rule.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { caseTitles } from "./caseTitles.ts";
import type { ExplainedInput, Explanation, NoExplanation } from "./explanation.ts";
import { lengthInput } from "./inputs.ts";
import { clearanceLimitTold, takenOfClearance } from "./limitWords.ts";

/** What the line passes over, as its clearance is explained. */
export type LineOver = {
  readonly title: string;
  readonly spanId: string;
  readonly part: ClearanceCase;
  readonly clearance: Clearance;
  readonly surface: ClearanceSurface;
  /** Where over it the line is looked at: "over the crossing's whole width". */
  readonly where: string;
  /** The row it is; null for the ground of the span. */
  readonly row: Subject | null;
  /** Its measured elevation, m; null where it lies on the ground. */
  readonly surfaceM: number | null;
  /** What stands on the ground there, m; 0 for nothing. */
  readonly raisedM: number;
};

/** Least height of the line over something in one case: height on the straight line between the poles, less sag, less bundle. */
export function explainLineOver(plant: Plant, over: LineOver, units: UnitSystem): Explanation | NoExplanation {
  const { title, spanId, part, clearance, surface, raisedM } = over;
  const sag = spanSag(plant, spanId);
  if (clearance.kind === "unknown") return { kind: "unknown", title, why: clearance.why };
  if (sag.kind === "unknown") return { kind: "unknown", title, why: sag.why };
  const limit = clearanceLimitFor(plant, surface, part);
  const offsetM = clearance.atByCaseM[part];
  const span = ["span", spanId] as const;
  const chord = clearance.surfaceAssumed ? "h1 + (h2 - h1)" : "h1 + g1 - s + (h2 + g2 - h1 - g1)";
  return {
    kind: "known",
    title,
    words: `Height of the strand over the surface on the straight line between both poles, less the sag at that point, less what hangs under the strand${raisedM > 0 ? ", less the height of what it passes over" : ""}. Taken where it is least ${over.where}.`,
    formula: `${chord} · x / L - y - u${raisedM > 0 ? " - t" : ""}`,
    inputs: [
      ...poleInputs(plant, over, [clearance.surfaceAssumed, offsetM], units),
      lengthInput(["x", "lowest point over it, from the first pole"], offsetM, [units, "span"], span),
      lengthInput(["L", "span length"], sag.lengthM, [units, "span"], span),
      lengthInput(
        ["y", `sag of the strand there ${caseTitles[part]}`],
        strandSagM(sag.lengthM, sag[part], offsetM),
        [units, "sag"],
        span,
      ),
      lengthInput(
        ["u", "cable's underside below the strand's centre line"],
        sag.bundle.underStrandM,
        [units, "sag"],
        span,
      ),
      ...(raisedM > 0 && over.row
        ? [lengthInput(["t", "its top above the ground"], raisedM, [units, "height"], [over.row.table, over.row.id])]
        : []),
    ],
    result: {
      symbol: "C",
      value: clearance.byCase[part],
      unit: "m",
      text: formatLength(clearance.byCase[part], units, "clearance"),
    },
    limit: clearanceLimitTold(limit, units),
    source: "height on the chord less the parabola's sag, y = 4 D (x / L) (1 - x / L); textbook statics",
    assumed: [...takenOfClearance(clearance, limit, "poles")],
  };
}

/** Heights over a measured surface need the ground at both poles; over the straight line between them it falls out. */
function poleInputs(
  plant: Plant,
  { spanId, surfaceM, row }: LineOver,
  [isAssumed, offsetM]: readonly [surfaceAssumed: boolean, offsetM: number],
  units: UnitSystem,
): ExplainedInput[] {
  const ground = groundLine(plant, spanId);
  const { from, to } = spanEnds(plant, spanId);
  const heights = [from, to].map((pole, index) => {
    const { heightM, attachmentId } = strandAtPole(plant, pole.id);
    return lengthInput(
      [`h${index + 1}`, `our strand above ground at pole ${pole.tag}`],
      heightM,
      [units, "height"],
      attachmentId === null ? ["settings", plant.settings().id] : ["attachment", attachmentId],
    );
  });
  if (isAssumed || ground.kind === "unknown") return heights;
  const grounds = [from, to].map((pole, index) =>
    lengthInput(
      [`g${index + 1}`, `ground elevation at pole ${pole.tag}`],
      pole.groundM ?? 0,
      [units, "height"],
      ["pole", pole.id],
    ),
  );
  return [
    ...heights,
    ...grounds,
    surfaceM === null || row === null
      ? lengthInput(["s", "ground at x"], groundAtM(ground, offsetM), [units, "height"], ["span", spanId])
      : lengthInput(["s", "elevation of the surface"], surfaceM, [units, "height"], [row.table, row.id]),
  ];
}
