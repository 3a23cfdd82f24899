import { cablesInSpan } from "../../plant/cablePath.ts";
import type { Plant } from "../../plant/plant.ts";
import { carriesStrand } from "../../plant/separation.ts";
import { strandAtPole } from "../../plant/strandHeight.ts";
import { formatLength } from "../../units/formatLength.ts";
import { redlined } from "../asBuilt/redlined.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { type LabelLine, labelSizeMm, roundCandidates } from "../paper/labels.ts";
import { smallMm, stroke } from "../paper/marks.ts";
import { closedPoleStroke } from "../paper/pinSymbols.ts";
import { poleRingMm, poleSymbol } from "../paper/symbols.ts";
import { blockSquare, type PlanDesk, readableRad, shifted } from "./planDesk.ts";
import { toPaper } from "./view.ts";

const cableGapMm = 1.15;

/** Strand as a bold line, each cable a thin one beside it. */
export function drawLine(desk: PlanDesk): void {
  for (const { step, from, to } of desk.steps) {
    drawStrung(desk, step.spanId, from, to);
    const turn = Math.atan2(to[1] - from[1], to[0] - from[0]);
    const below = -(cablesInSpan(desk.plant, step.spanId).length * cableGapMm + 0.6);
    const outline = [
      shifted(from, turn, 0, 0.6),
      shifted(from, turn, 0, below),
      shifted(to, turn, 0, below),
      shifted(to, turn, 0, 0.6),
    ];
    desk.placer.block(outline);
  }
}

/** Strand and cables of a span between two places of the paper. */
export function drawStrung(desk: PlanDesk, spanId: string, from: PaperPoint, to: PaperPoint): void {
  const turn = Math.atan2(to[1] - from[1], to[0] - from[0]);
  const hasStrand = desk.plant.rowOf("span", spanId).strandSectionId !== null;
  desk.draw([stroke("strand", hasStrand ? "thick" : "thin", [from, to], { dashMm: hasStrand ? [] : [3, 1.5] })]);
  cablesInSpan(desk.plant, spanId).forEach((_, index) => {
    const leftMm = -(index + 1) * cableGapMm;
    desk.draw([stroke("cable", "thin", [shifted(from, turn, 0, leftMm), shifted(to, turn, 0, leftMm)])]);
  });
}

/** Poles with their tags, a bar for each other party, and a slash where no terminal may hang. */
export function drawPoles(desk: PlanDesk): void {
  const { plant, strip } = desk;
  const system = plant.settings().unitSystem;
  for (const poleId of polesShown(desk)) {
    const pole = plant.rowOf("pole", poleId);
    const at = toPaper(strip.view, pole);
    const parties = new Set(
      plant
        .where("attachment", "poleId", poleId)
        .map((id) => plant.rowOf("attachment", id))
        .filter((one) => one.kind !== "ourStrand")
        .map((one) => one.owner),
    );
    desk.draw(poleSymbol(at, parties.size));
    if (!pole.terminalAllowed) desk.draw([closedPoleStroke(at)]);
    blockSquare(desk.placer, at, 2 * poleRingMm + (pole.terminalAllowed ? 0.6 : 3));
    if (parties.size > 0) blockSquare(desk.placer, [at[0], at[1] + 2.2], 1.8);
    const facts = [
      ...(pole.poleClass === "" ? [] : [`class ${pole.poleClass}`]),
      ...(pole.aboveGroundM === null ? [] : [formatLength(pole.aboveGroundM, system, "span")]),
    ];
    const oursAt = (of: Plant): string => `ours at ${formatLength(strandAtPole(of, poleId).heightM, system, "height")}`;
    const designed = desk.designed?.row("pole", poleId) ? oursAt(desk.designed) : null;
    const lines: LabelLine[] = [
      { text: pole.tag, face: "narrowBold", heightMm: 2.4 },
      ...(facts.length === 0 ? [] : [{ text: facts.join(", "), face: "narrow" as const, heightMm: smallMm }]),
      ...(carriesStrand(plant, poleId) ? redlined(oursAt(plant), designed) : []),
    ];
    const size = labelSizeMm(lines);
    desk.label(1, lines, at, roundCandidates(at, size.width, size.height, 3.4));
  }
}

/** Ids of the poles a strip shows, in its order: one before its match line belongs to the sheet before. */
export function polesShown(desk: PlanDesk): readonly string[] {
  return [
    ...new Set(
      desk.steps.flatMap(({ step }) => [
        ...(step.startFrac === 0 ? [step.fromPoleId] : []),
        ...(step.endFrac === 1 ? [step.toPoleId] : []),
      ]),
    ),
  ];
}

/** Small figures along each span, above the strand; led to a whole span that is too short to bear its own. */
export function drawSpanLengths(desk: PlanDesk): void {
  const system = desk.plant.settings().unitSystem;
  for (const { step, from, to, turnRad } of desk.steps) {
    const lines: LabelLine[] = [{ text: formatLength(step.lengthM, system, "span"), face: "narrow", heightMm: 2.2 }];
    const readable = readableRad(turnRad);
    const lengthMm = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const size = labelSizeMm(lines);
    const candidates = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74].flatMap((part, rank) =>
      [size.height / 2 + 1.5, -(size.height / 2 + 2.6)].map((leftMm, side) => ({
        centre: shifted(from, turnRad, lengthMm * part, leftMm),
        turnRad: readable,
        cost: rank * 0.4 + side * 1.5,
      })),
    );
    const isLong = lengthMm > size.width + 6;
    const isWhole = step.startFrac === 0 && step.endFrac === 1;
    if (isLong || isWhole) desk.label(2, lines, shifted(from, turnRad, lengthMm / 2, 0), isLong ? candidates : []);
  }
}
