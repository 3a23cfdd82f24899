import { lineHeight } from "../../plant/lineHeight.ts";
import { type ProfileStep, stepStationM } from "../../plant/profile.ts";
import { type Below, besideElevationM, structureFootM } from "../../plant/profileSpan.ts";
import { type SpanClearance, spanClearance } from "../../plant/spanClearance.ts";
import type { Beside } from "../../plant/structureClearance.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { arrowHead } from "../paper/furniture.ts";
import { type LabelLine, labelSizeMm } from "../paper/labels.ts";
import { circle, rectangle, smallMm, stroke } from "../paper/marks.ts";
import type { Candidate } from "../paper/placer.ts";
import { crossingName, structureName } from "../tradeWords.ts";
import { washMm } from "./profileGround.ts";
import type { ProfileDesk } from "./profilePaper.ts";
import { besideLines, clearanceLines } from "./profileWords.ts";

/** What lies under each span with the height it asks for, and the least clearance of the span with its limit. */
export function drawBelow(desk: ProfileDesk): void {
  for (const step of desk.row.steps) {
    for (const one of step.span.crossings) drawCrossing(desk, step, one);
    for (const one of step.span.structures) drawStructure(desk, step, one);
    const clearance = spanClearance(desk.plant, step.span.spanId);
    if (clearance && step.span.ground) drawClearance(desk, step, clearance);
  }
}

/** Radius of the ring that stands for a distance seen from its end, mm. */
const endOnMm = 0.9;

type Under<K extends "crossings" | "structures"> = ProfileStep["span"][K][number];

function drawCrossing(desk: ProfileDesk, step: ProfileStep, { row, topM, limitM }: Under<"crossings">): void {
  if (topM === null) return;
  const [left, right] = edges(desk, step, row.offsetM, row.widthM, topM);
  const width = Math.max(1, right[0] - left[0]);
  const bar = rectangle("crossings", null, [left[0], left[1] - washMm], width, washMm, { fill: 0 });
  desk.draw([bar]);
  desk.placer.block(bar.pointsMm);
  drawLimit(desk, step, { row, topM, limitM }, row.widthM);
  const middle: PaperPoint = [(left[0] + right[0]) / 2, left[1] - washMm];
  nameUnder(desk, crossingName(row.surface, row.name), middle);
}

function drawStructure(desk: ProfileDesk, step: ProfileStep, one: Under<"structures">): void {
  const { row, topM, beside } = one;
  if (topM === null) return;
  const [left, right] = edges(desk, step, row.offsetM, row.lengthM, topM);
  const [, foot] = desk.at(step.startM, structureFootM(one, topM));
  const size = [right[0] - left[0], left[1] - foot] as const;
  const box = rectangle("crossings", "medium", [left[0], foot], ...size, {
    fill: beside ? null : 0.9,
    dashMm: beside ? [1.6, 1] : [],
  });
  desk.draw([box]);
  for (const [x] of [left, right]) desk.placer.line([x, foot], [x, left[1]], 3);
  drawLimit(desk, step, one, row.lengthM);
  // how far beside is dimensioned
  const name = structureName({ ...row, besideM: 0 }, desk.plant.settings().unitSystem);
  nameUnder(desk, name, [(left[0] + right[0]) / 2, foot - washMm]);
  if (beside) drawBeside(desk, step, { one, beside, halfMm: size[0] / 2 });
}

/** The level distance beside a structure runs towards the eye: a dotted ring, as an arrow seen from its end, and its figures. */
function drawBeside(
  desk: ProfileDesk,
  step: ProfileStep,
  { one, beside, halfMm }: { readonly one: Under<"structures">; readonly beside: Beside; readonly halfMm: number },
): void {
  const at = desk.at(stepStationM(step, one.row.offsetM), besideElevationM(step.span, one));
  const ring = circle("dimensions", "thin", at, endOnMm, 1);
  desk.draw([ring, circle("dimensions", null, at, endOnMm / 3, 0)]);
  desk.placer.block([
    [at[0] - endOnMm, at[1] - endOnMm],
    [at[0] + endOnMm, at[1] - endOnMm],
    [at[0] + endOnMm, at[1] + endOnMm],
    [at[0] - endOnMm, at[1] + endOnMm],
  ]);
  const lines = besideLines(beside, desk.plant.settings().unitSystem);
  const { width, height } = labelSizeMm(lines);
  const down = endOnMm + height / 2 + 1;
  const aside = Math.max(halfMm, endOnMm) + width / 2 + 1.4;
  const spots = [
    [0, -down],
    [0, down],
    [aside, -down],
    [-aside, -down],
    [aside, down],
    [-aside, down],
    [aside, 0],
    [-aside, 0],
  ] as const;
  desk.label(
    0,
    lines,
    at,
    spots.map(([dx, dy], rank) => ({ centre: [at[0] + dx, at[1] + dy], turnRad: 0, cost: rank * 0.3 })),
  );
}

/** Both ends of something along a span at an elevation, left one first. */
function edges(
  { at }: ProfileDesk,
  step: ProfileStep,
  offsetM: number,
  widthM: number,
  elevationM: number,
): readonly [PaperPoint, PaperPoint] {
  const middleM = stepStationM(step, offsetM);
  return [at(middleM - widthM / 2, elevationM), at(middleM + widthM / 2, elevationM)];
}

/** The height a surface asks for: a bar held up over its width by dotted posts. */
function drawLimit(
  desk: ProfileDesk,
  step: ProfileStep,
  { row, topM, limitM }: Below<{ readonly offsetM: number }>,
  widthM: number,
): void {
  if (limitM === null || topM === null) return;
  const foot = edges(desk, step, row.offsetM, widthM, topM);
  const head = edges(desk, step, row.offsetM, widthM, topM + limitM);
  const [left, right] = head;
  const bar: readonly [PaperPoint, PaperPoint] = [
    [left[0] - 1, left[1]],
    [right[0] + 1, right[1]],
  ];
  desk.draw([
    ...[0, 1].map((index) =>
      stroke("dimensions", "fine", [foot[index] ?? left, head[index] ?? left], { dashMm: [0.3, 0.9] }),
    ),
    stroke("dimensions", "medium", bar),
  ]);
  desk.placer.line(...bar, 2);
}

function nameUnder(desk: ProfileDesk, text: string, at: PaperPoint): void {
  const lines: LabelLine[] = [{ text, face: "narrow", heightMm: smallMm }];
  const { width, height } = labelSizeMm(lines);
  const candidates = [0, 3, 6].flatMap((down) =>
    [0, width / 2 - 2, 2 - width / 2].map((aside, rank) => ({
      centre: [at[0] + aside, at[1] - height / 2 - 0.9 - down] as const,
      turnRad: 0,
      cost: down / 2 + rank * 0.4,
    })),
  );
  desk.label(1, lines, at, candidates);
}

/** The least clearance of a span: an arrow from the surface to the line, and what it is held against. */
function drawClearance(desk: ProfileDesk, step: ProfileStep, clearance: SpanClearance): void {
  const line = lineHeight(desk.plant, step.span.spanId);
  if (line.kind === "unknown") return;
  const stationM = stepStationM(step, clearance.atOffsetM);
  const lineM = line.undersideM(clearance.atOffsetM, clearance.condition);
  const [foot, head] = [desk.at(stationM, lineM - clearance.measuredM), desk.at(stationM, lineM)];
  desk.draw([stroke("dimensions", "thin", [foot, head]), arrowHead(head, Math.PI / 2), arrowHead(foot, -Math.PI / 2)]);
  desk.placer.block([
    [foot[0] - 0.4, foot[1]],
    [foot[0] + 0.4, foot[1]],
    [head[0] + 0.4, head[1]],
    [head[0] - 0.4, head[1]],
  ]);
  const lines = clearanceLines(clearance, desk.plant.settings().unitSystem);
  const { width, height } = labelSizeMm(lines);
  const beside = (thickMm: number, turnRad: number, leastCost: number): readonly Candidate[] =>
    [0.5, 0.35, 0.62, 0.22, 0.76].flatMap((part, rank) =>
      [1, -1].map((side) => ({
        centre: [foot[0] + side * (thickMm / 2 + 1.4), foot[1] + (head[1] - foot[1]) * part] as const,
        turnRad,
        cost: leastCost + rank * 0.8 + (side < 0 ? 0.3 : 0),
      })),
    );
  // in a short span the words stand along the arrow
  const candidates = [...beside(width, 0, 0), ...beside(height, Math.PI / 2, 6)];
  desk.label(0, lines, [foot[0], (foot[1] + head[1]) / 2], candidates);
}
