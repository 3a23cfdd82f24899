import { pointOnSpan } from "../../plant/geometry.ts";
import { groundLine } from "../../plant/groundLine.ts";
import { formatLength } from "../../units/formatLength.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { type LabelLine, labelSizeMm, roundCandidates } from "../paper/labels.ts";
import { smallMm } from "../paper/marks.ts";
import { paperMm } from "../paper/scale.ts";
import { guySymbol, levelSymbol, structureSymbol } from "../paper/symbols.ts";
import { structureName } from "../tradeWords.ts";
import { type PaperStep, type PlanDesk, shifted } from "./planDesk.ts";
import { polesShown } from "./planLine.ts";
import { shows } from "./stripStep.ts";
import { toPaper } from "./view.ts";

/** A guy shorter than this on paper is drawn this long, so that it leaves its pole's ring, mm. */
const shortestGuyMm = 5.5;

/** Guys with their anchors, from their poles in their true directions, the lead beside the anchor. */
export function drawGuys(desk: PlanDesk): void {
  const { plant, strip } = desk;
  const system = plant.settings().unitSystem;
  for (const poleId of polesShown(desk)) {
    const at = toPaper(strip.view, plant.rowOf("pole", poleId));
    for (const id of plant.where("guy", "poleId", poleId)) {
      const { directionRad, leadM } = plant.rowOf("guy", id);
      const turnRad = directionRad + strip.view.turnRad;
      const anchor = shifted(at, turnRad, Math.max(shortestGuyMm, paperMm(leadM, strip.view.scale)), 0);
      desk.draw(guySymbol(at, anchor));
      desk.placer.block([
        shifted(at, turnRad, 0, 0.5),
        shifted(at, turnRad, 0, -0.5),
        shifted(anchor, turnRad, 1, -1),
        shifted(anchor, turnRad, 1, 1),
      ]);
      const lines: LabelLine[] = [
        { text: `lead ${formatLength(leadM, system, "height")}`, face: "narrow", heightMm: smallMm },
      ];
      const size = labelSizeMm(lines);
      desk.label(4, lines, anchor, roundCandidates(anchor, size.width, size.height, 1.4));
    }
  }
}

/** Depth a structure is drawn with: nobody measured how far it goes back. */
const structureDepthMm = 4;

/** Buildings and signs under and beside the line, as long as they are and as far off. */
export function drawStructures(desk: PlanDesk): void {
  const { plant, strip } = desk;
  for (const step of desk.steps) {
    const here = plant
      .where("structure", "spanId", step.step.spanId)
      .map((id) => plant.rowOf("structure", id))
      .filter((one) => shows(plant, step.step, one.offsetM));
    for (const one of here) {
      const at = toPaper(strip.view, pointOnSpan(plant, one.spanId, one.offsetM));
      const along = alongSpan(desk, step);
      const halfMm = Math.max(1, paperMm(one.lengthM, strip.view.scale) / 2);
      const side = one.side === "left" ? 1 : -1;
      const [near, far] =
        one.besideM > 0
          ? [side * Math.max(1.6, paperMm(one.besideM, strip.view.scale)), side * structureDepthMm]
          : [-structureDepthMm / 2, structureDepthMm];
      const corner = (alongMm: number, leftMm: number): PaperPoint => shifted(at, along, alongMm, leftMm);
      const outline = [
        corner(-halfMm, near),
        corner(halfMm, near),
        corner(halfMm, near + far),
        corner(-halfMm, near + far),
      ];
      desk.draw(structureSymbol(outline, one.besideM > 0));
      desk.placer.block(outline);
      const lines: LabelLine[] = [
        { text: structureName(one, plant.settings().unitSystem), face: "narrow", heightMm: smallMm },
      ];
      const size = labelSizeMm(lines);
      const middle = corner(0, near + far / 2);
      desk.label(3, lines, middle, roundCandidates(middle, size.width, size.height, structureDepthMm / 2 + 1));
    }
  }
}

/** Direction of a span from its first pole on paper, whichever way the strip walks it. */
function alongSpan({ plant }: PlanDesk, { step, turnRad }: PaperStep): number {
  return plant.rowOf("span", step.spanId).fromPoleId === step.fromPoleId ? turnRad : turnRad + Math.PI;
}

/** The ground under each span: levelled points with their elevation, and where nobody measured it. */
export function drawGroundNotes(desk: PlanDesk): void {
  const { plant, strip } = desk;
  const system = plant.settings().unitSystem;
  for (const step of desk.steps) {
    const { spanId } = step.step;
    const levelled = plant.where("groundPoint", "spanId", spanId).map((id) => plant.rowOf("groundPoint", id));
    for (const one of levelled.filter(({ offsetM }) => shows(plant, step.step, offsetM))) {
      const at = toPaper(strip.view, pointOnSpan(plant, spanId, one.offsetM));
      desk.draw(levelSymbol(at));
      note(desk, at, formatLength(one.groundM, system, "height"), 4);
    }
    const middle: PaperPoint = [(step.from[0] + step.to[0]) / 2, (step.from[1] + step.to[1]) / 2];
    if (groundLine(plant, spanId).kind === "unknown") note(desk, middle, "ground not measured", 5);
  }
}

function note(desk: PlanDesk, at: PaperPoint, text: string, clearMm: number): void {
  const lines: LabelLine[] = [{ text, face: "narrow", heightMm: smallMm }];
  const size = labelSizeMm(lines);
  desk.label(4, lines, at, roundCandidates(at, size.width, size.height, clearMm));
}
