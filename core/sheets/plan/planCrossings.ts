import { crossingClearance } from "../../plant/clearance.ts";
import { pointOnSpan } from "../../plant/geometry.ts";
import { formatLength } from "../../units/formatLength.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { type LabelLine, labelSizeMm } from "../paper/labels.ts";
import { area, stroke } from "../paper/marks.ts";
import { paperMm } from "../paper/scale.ts";
import { crossingName } from "../tradeWords.ts";
import { type PlanDesk, shifted } from "./planDesk.ts";
import { shows } from "./stripStep.ts";
import { toPaper } from "./view.ts";

const bandReachMm = 20;

/** Crossings: a band across the span with the trade's word and the least clearance found. */
export function drawCrossings(desk: PlanDesk): void {
  const { plant, strip } = desk;
  for (const { step, turnRad } of desk.steps) {
    const crossings = plant.where("crossing", "spanId", step.spanId).map((id) => plant.rowOf("crossing", id));
    for (const crossing of crossings.filter((one) => shows(plant, step, one.offsetM))) {
      const at = toPaper(strip.view, pointOnSpan(plant, step.spanId, crossing.offsetM));
      const half = Math.max(0.8, paperMm(crossing.widthM, strip.view.scale) / 2);
      const edge = (along: number): [PaperPoint, PaperPoint] => [
        shifted(at, turnRad, along, bandReachMm),
        shifted(at, turnRad, along, -bandReachMm),
      ];
      const [near, far] = [edge(-half), edge(half)];
      desk.draw([
        area("crossings", null, [near[0], far[0], far[1], near[1]], { fill: 0.92 }),
        stroke("crossings", "thin", near, { dashMm: [2.4, 1] }),
        stroke("crossings", "thin", far, { dashMm: [2.4, 1] }),
      ]);
      const lines = crossingLines(desk, crossing.id);
      const size = labelSizeMm(lines);
      const spots = [14, -14, 19, -19, 10, -10].flatMap((leftMm, rank) =>
        [0, half + size.width / 2 + 1.2, -(half + size.width / 2 + 1.2)].map((along, side) => ({
          centre: shifted(at, turnRad, along, leftMm),
          turnRad: 0,
          cost: rank * 0.5 + side * 0.6,
        })),
      );
      desk.label(3, lines, at, spots);
    }
  }
}

function crossingLines(desk: PlanDesk, crossingId: string): readonly LabelLine[] {
  const { name, surface } = desk.plant.rowOf("crossing", crossingId);
  const clearance = crossingClearance(desk.plant, crossingId);
  const text =
    clearance.kind === "known"
      ? `clearance ${formatLength(clearance.leastM, desk.plant.settings().unitSystem, "clearance")}`
      : "clearance not known";
  return [
    { text: crossingName(surface, name), face: "narrowBold", heightMm: 2.2 },
    { text, face: "narrow", heightMm: 2.2 },
  ];
}
