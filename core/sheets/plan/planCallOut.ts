import { cablesInSpan } from "../../plant/cablePath.ts";
import type { Plant } from "../../plant/plant.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { type LabelLine, labelMarks, labelSizeMm } from "../paper/labels.ts";
import { circle, smallMm, stroke } from "../paper/marks.ts";
import { type PaperStep, type PlanDesk, shifted } from "./planDesk.ts";

const dotMm = 0.4;

/** What hangs along a strip, led to the line itself at its longest span: the strand, then every cable lashed to it. */
export function drawCallOut(desk: PlanDesk): void {
  const [longest] = [...desk.steps].sort((a, b) => lengthMm(b) - lengthMm(a));
  if (!longest) return;
  const lines = linesOf(desk.plant, longest.step.spanId);
  if (lines.length === 0) return;
  const { from, turnRad } = longest;
  const candidates = [0.62, 0.4, 0.75, 0.28].flatMap((part, rank) =>
    [8, -10, 13, -15].map((leftMm, side) => ({
      centre: shifted(from, turnRad, lengthMm(longest) * part, leftMm),
      turnRad: 0,
      cost: rank + side * 0.6,
    })),
  );
  const placed = desk.placer.place({ ...labelSizeMm(lines), anchor: shifted(from, turnRad, 0, 0), candidates });
  if (!placed || placed.leader) return;
  const { box } = placed;
  const [x, y] = box.centre;
  const along = (x - from[0]) * Math.cos(turnRad) + (y - from[1]) * Math.sin(turnRad);
  const foot = shifted(from, turnRad, along, 0);
  const edge: PaperPoint = [x, y + Math.sign(foot[1] - y) * (box.height / 2 + 0.4)];
  desk.draw([
    stroke("dimensions", "fine", [edge, foot]),
    circle("dimensions", null, foot, dotMm, 0),
    ...labelMarks(lines, box),
  ]);
}

function lengthMm({ from, to }: PaperStep): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}

function linesOf(plant: Plant, spanId: string): readonly LabelLine[] {
  const { strandSectionId } = plant.rowOf("span", spanId);
  const strand =
    strandSectionId === null
      ? []
      : [plant.rowOf("strandType", plant.rowOf("strandSection", strandSectionId).strandTypeId).name];
  const cables = cablesInSpan(plant, spanId).map((id) => {
    const { name, cableTypeId } = plant.rowOf("cable", id);
    return `${name}, ${plant.rowOf("cableType", cableTypeId).fiberCount} fibers`;
  });
  return [...strand.map((one) => `strand ${one}`), ...cables].map((text) => ({
    text,
    face: "narrow",
    heightMm: smallMm,
  }));
}
