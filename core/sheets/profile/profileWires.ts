import type { ProfileStep } from "../../plant/profile.ts";
import { elevationOn, type ProfileWire } from "../../plant/profileSpan.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { type LabelLine, labelSizeMm } from "../paper/labels.ts";
import { smallMm, stroke } from "../paper/marks.ts";
import type { Candidate } from "../paper/placer.ts";
import { attachmentWords } from "../tradeWords.ts";
import { curve, keepOff } from "./profileLines.ts";
import type { ProfileDesk } from "./profilePaper.ts";

const wireDashMm: Readonly<Record<ProfileWire["kind"], readonly number[]>> = {
  primary: [5, 1.2],
  secondary: [4, 0.9, 0.9, 0.9],
  neutral: [2, 1.2],
  communication: [2.4, 0.9, 0.3, 0.9, 0.3, 0.9],
  supplyFiber: [2, 0.9, 0.9, 0.9],
  ourStrand: [],
  equipment: [],
  streetLight: [],
  dripLoop: [],
  riser: [],
};

/** Wires of other parties, a dash a kind, each named once. */
export function drawOtherWires(desk: ProfileDesk): void {
  const names = new Map<string, WireName>();
  for (const [index, step] of desk.row.steps.entries()) {
    for (const wire of step.span.wires) {
      const points = curve(desk, step, wire.elevationsM);
      desk.draw([stroke("others", "thin", points, { dashMm: wireDashMm[wire.kind] })]);
      keepOff(desk, points, 1);
      const text = [wire.owner, attachmentWords[wire.kind]].filter((one) => one !== "").join(" ");
      const lines: LabelLine[] = [{ text, face: "narrow", heightMm: smallMm }];
      const size = labelSizeMm(lines);
      const spots = nameSpots(points, size, index * laterSpanCost).filter(({ centre }) =>
        isClear(desk, step, centre, size),
      );
      const [middle] = spots;
      if (!middle) continue;
      const known = names.get(text);
      if (known) known.spots.push(...spots);
      else names.set(text, { lines, at: middle.centre, spots: [...spots] });
    }
  }
  for (const { lines, at, spots } of names.values()) desk.label(4, lines, at, spots);
}

type LabelSize = { readonly width: number; readonly height: number };

/** White between a name and our line, mm. */
const clearMm = 0.5;

type WireName = { readonly lines: readonly LabelLine[]; readonly at: PaperPoint; readonly spots: Candidate[] };

/** What a name costs more by every span that it stands farther along. */
const laterSpanCost = 2;

/** Places for a name over and under a wire, the middle of its span first; none where the span is too short. */
function nameSpots(points: readonly PaperPoint[], { width, height }: LabelSize, cost: number): readonly Candidate[] {
  const [first, last, middle] = [points[0], points.at(-1), points[Math.floor(points.length / 2)]];
  if (!(middle && first && last) || Math.abs(last[0] - first[0]) < width + 24) return [];
  return points
    .slice(2, -2)
    .flatMap(([x, y]) =>
      [height / 2 + 0.6, -height / 2 - 0.6].map((mm, rank) => ({
        centre: [x, y + mm] as const,
        turnRad: 0,
        cost: cost + rank + Math.abs(x - middle[0]) / 8,
      })),
    )
    .sort((a, b) => a.cost - b.cost);
}

/** Whether a name leaves our line to be seen: wires of others may hide under a name, ours is what the sheet is about. */
function isClear(
  desk: ProfileDesk,
  { span, startM, reversed }: ProfileStep,
  [x, y]: PaperPoint,
  size: LabelSize,
): boolean {
  const { band } = span;
  if (!band) return true;
  const [left] = desk.at(startM, 0);
  const [right] = desk.at(startM + span.lengthM, 0);
  return [-0.5, 0, 0.5].every((part) => {
    const alongM = Math.min(1, Math.max(0, (x + part * size.width - left) / (right - left))) * span.lengthM;
    const offsetM = reversed ? span.lengthM - alongM : alongM;
    const [upper, lower] = [band.upperM, band.lowerM].map((one) => desk.at(startM, elevationOn(span, one, offsetM))[1]);
    return y - size.height / 2 > (upper ?? 0) + clearMm || y + size.height / 2 < (lower ?? 0) - clearMm;
  });
}
