import type { ClearanceCase } from "../model/catalogueRows.ts";
import { clearanceLimitFor, crossingClearance } from "../plant/clearance.ts";
import { spanEnds } from "../plant/geometry.ts";
import { groundAtM, groundLine } from "../plant/groundLine.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { spanSag, strandSagM } from "../plant/spanSag.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { catalogueBasis } from "../rules/rule.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { clearanceCaseWords } from "./clearanceCaseWords.ts";
import type { ExplainedInput, Explanation, NoExplanation } from "./explanation.ts";
import { lengthInput } from "./inputs.ts";

/** Least height of the line over a crossing in one condition. */
export function explainClearance(
  plant: Plant,
  crossingId: string,
  part: ClearanceCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const crossing = plant.rowOf("crossing", crossingId);
  const title = `Clearance ${clearanceCaseWords[part]} over ${crossing.name || `the ${crossing.surface}`}, span ${spanName(plant, crossing.spanId)}`;
  const clearance = crossingClearance(plant, crossingId);
  const sag = spanSag(plant, crossing.spanId);
  if (clearance.kind === "unknown") return { kind: "unknown", title, why: clearance.why };
  if (sag.kind === "unknown") return { kind: "unknown", title, why: sag.why };
  const limit = clearanceLimitFor(plant, crossing.surface, part);
  const offsetM = clearance.atByCaseM[part];
  const span = ["span", crossing.spanId] as const;
  const isOverMeasured = !clearance.surfaceAssumed;
  return {
    kind: "known",
    title,
    words:
      "Height of the strand over the surface on the straight line between both poles, less the sag at that point, less what hangs under the strand. Taken where it is least over the crossing's whole width.",
    formula: `${isOverMeasured ? "h1 + g1 - s + (h2 + g2 - h1 - g1)" : "h1 + (h2 - h1)"} · x / L - y - u`,
    inputs: [
      ...endInputs(plant, crossingId, { isOverMeasured, offsetM, units }),
      lengthInput(
        ["x", "lowest point over the crossing, from the first pole"],
        offsetM,
        [units, "span"],
        ["crossing", crossingId],
      ),
      lengthInput(["L", "span length"], sag.lengthM, [units, "span"], span),
      lengthInput(
        ["y", `sag of the strand there ${clearanceCaseWords[part]}`],
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
    ],
    result: {
      symbol: "C",
      value: clearance.byCase[part],
      unit: "m",
      text: formatLength(clearance.byCase[part], units, "clearance"),
    },
    limit: limit
      ? {
          words: "Least clearance of the clearance set",
          value: limit.limitM,
          text: formatLength(limit.limitM, units, "height"),
          basis: catalogueBasis(limit),
        }
      : null,
    source: "height on the chord less the parabola's sag, y = 4 D (x / L) (1 - x / L); textbook statics",
    assumed: [
      ...(clearance.surfaceAssumed
        ? ["The surface was taken as the straight line between the ground at both poles."]
        : []),
      ...(clearance.strandAssumed ? ["A pole lacks the height of our strand; the company's usual one was taken."] : []),
      ...(limit ? [] : ["The clearance set has no limit for this surface in this case."]),
    ],
  };
}

type Over = { readonly isOverMeasured: boolean; readonly offsetM: number; readonly units: UnitSystem };

/** Heights over a measured surface need the ground at both poles; over the straight line between them it falls out. */
function endInputs(plant: Plant, crossingId: string, { isOverMeasured, offsetM, units }: Over): ExplainedInput[] {
  const { spanId, surfaceM } = plant.rowOf("crossing", crossingId);
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
  if (!isOverMeasured || ground.kind === "unknown") return heights;
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
    surfaceM === null
      ? lengthInput(["s", "ground at x"], groundAtM(ground, offsetM), [units, "height"], ["span", spanId])
      : lengthInput(["s", "elevation of the surface"], surfaceM, [units, "height"], ["crossing", crossingId]),
  ];
}
