import { cablesInSpan } from "../../plant/cablePath.ts";
import { farPoleId, spansAtPole } from "../../plant/geometry.ts";
import type { Book } from "../book.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { type LabelLine, labelSizeMm, roundCandidates } from "../paper/labels.ts";
import { stroke } from "../paper/marks.ts";
import type { PaperBox } from "../paper/paper.ts";
import { poleRingMm } from "../paper/symbols.ts";
import { type PlanDesk, shifted } from "./planDesk.ts";
import { drawStrung, polesShown } from "./planLine.ts";
import { toPaper } from "./view.ts";

const stubMm = 13;
const leastStubMm = 4;
/** White between the end of a stub, with its stroke across, and the edge, mm. */
const edgeMm = 2.5;

/** Spans that leave the strip: a short piece of them, with the cable and the sheet that carries on. */
export function drawBranches(desk: PlanDesk, stripOfSpan: ReadonlyMap<string, string>, book: Book): void {
  const own = new Set(desk.strip.steps.map((step) => step.spanId));
  for (const poleId of polesShown(desk)) {
    const at = toPaper(desk.strip.view, desk.plant.rowOf("pole", poleId));
    for (const spanId of spansAtPole(desk.plant, poleId).filter((id) => !own.has(id))) {
      const far = toPaper(desk.strip.view, desk.plant.rowOf("pole", farPoleId(desk.plant, spanId, poleId)));
      const turn = Math.atan2(far[1] - at[1], far[0] - at[0]);
      const end = shifted(at, turn, stubWithin(desk.box, at, turn, Math.hypot(far[0] - at[0], far[1] - at[1]) / 2), 0);
      drawStrung(desk, spanId, shifted(at, turn, poleRingMm, 0), end);
      desk.draw([
        stroke("frame", "thin", [
          shifted(end, turn, 0, 2),
          shifted(end, turn, 0.7, 0.5),
          shifted(end, turn, -0.7, -0.5),
          shifted(end, turn, 0, -2),
        ]),
      ]);
      desk.placer.block([
        shifted(at, turn, 0, 1),
        shifted(at, turn, 0, -2.5),
        shifted(end, turn, 1, -2.5),
        shifted(end, turn, 1, 1),
      ]);
      const lines = branchLines(desk, spanId, book.numberOf(stripOfSpan.get(spanId) ?? ""));
      const size = labelSizeMm(lines);
      desk.label(3, lines, end, roundCandidates(shifted(end, turn, 1.5, 0), size.width, size.height, 1));
    }
  }
}

/** As long as a stub may be, mm: short of the middle of its span, and of the edge of the strip's paper. */
function stubWithin({ left, bottom, right, top }: PaperBox, at: PaperPoint, turn: number, mostMm: number): number {
  let mm = Math.min(stubMm, mostMm);
  const isInside = ([x, y]: PaperPoint) =>
    x > left + edgeMm && x < right - edgeMm && y > bottom + edgeMm && y < top - edgeMm;
  while (mm > leastStubMm && !isInside(shifted(at, turn, mm, 0))) mm -= 0.5;
  return mm;
}

function branchLines(desk: PlanDesk, spanId: string, number: string | undefined): readonly LabelLine[] {
  const names = cablesInSpan(desk.plant, spanId).map((id) => desk.plant.rowOf("cable", id).name);
  return [
    { text: names.length === 0 ? "span without cable" : names.join(", "), face: "narrowBold", heightMm: 2.2 },
    ...(number === undefined ? [] : [{ text: `sheet ${number}`, face: "narrow" as const, heightMm: 2.2 }]),
  ];
}
