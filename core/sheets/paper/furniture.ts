import { metresPerFoot } from "../../units/constants.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";
import type { Mark, PaperPoint } from "./displayList.ts";
import { area, circle, rectangle, smallMm, stroke, words } from "./marks.ts";
import { grouped, lengthUnit } from "./quantityText.ts";
import { paperMm, type Scale } from "./scale.ts";

/**
 * A north arrow round a centre, 14 mm high.
 *
 * @param turnRad  how the ground is turned on the paper, counter-clockwise, rad
 */
export function northArrow(centre: PaperPoint, turnRad: number): readonly Mark[] {
  const north = Math.PI / 2 + turnRad;
  const at = (radius: number, turn: number): PaperPoint => [
    centre[0] + radius * Math.cos(north + turn),
    centre[1] + radius * Math.sin(north + turn),
  ];
  const tip = at(5, 0);
  const tail = at(2.1, Math.PI);
  const [x, y] = at(7.4, 0);
  return [
    circle("frame", "thin", centre, 5),
    area("frame", "thin", [tip, at(4.3, 2.55), tail], { fill: 0 }),
    area("frame", "thin", [tip, at(4.3, -2.55), tail], { fill: 1 }),
    words("N", [x, y - 1.25], { face: "narrowBold", heightMm: 2.5, align: "middle" }),
  ];
}

const barSteps = [
  5, 10, 20, 25, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000, 200_000,
] as const;

/** A scale bar of four fields from its lower left corner, its fields a round length near 12 mm each. */
export function scaleBar([x, y]: PaperPoint, scale: Scale, system: UnitSystem): readonly Mark[] {
  const { step, fieldMm } = barField(scale, system);
  const fields = [0, 1, 2, 3].map((index) =>
    rectangle("frame", "thin", [x + index * fieldMm, y], fieldMm, 1.3, { fill: index % 2 === 0 ? 0 : 1 }),
  );
  const figures = [0, 1, 2, 4].map((count) => {
    const text = count === 4 ? `${grouped(count * step)} ${lengthUnit(system)}` : grouped(count * step);
    return words(text, [x + count * fieldMm, y + 2.3], { face: "narrow", heightMm: smallMm, align: "middle" });
  });
  return [...fields, ...figures];
}

/** What the last figure of a scale bar reaches beyond it, mm. */
const lastFigureMm = 5;

/** Length of a scale bar with its last figure, mm. */
export function scaleBarMm(scale: Scale, system: UnitSystem): number {
  return 4 * barField(scale, system).fieldMm + lastFigureMm;
}

function barField(scale: Scale, system: UnitSystem): { readonly step: number; readonly fieldMm: number } {
  const unitM = system === "us" ? metresPerFoot : 1;
  const step = barSteps.find((one) => paperMm(one * unitM, scale) >= 10) ?? 500_000;
  return { step, fieldMm: paperMm(step * unitM, scale) };
}

/** Dimensions shorter than this have their arrows outside, mm. */
const narrowMm = 6;
/** How far outside arrows reach, mm. */
export const outsideArrowMm = 3.2;

/**
 * A dimension between two places along a line: strokes out from both and a line between, or arrows from outside where it is short.
 *
 * @param outMm  distance of the dimension line from the places, to the left of the way from one to the other, mm
 */
export function dimension(from: PaperPoint, to: PaperPoint, outMm: number): readonly Mark[] {
  const turn = Math.atan2(to[1] - from[1], to[0] - from[0]);
  const side = Math.sign(outMm);
  const out = (point: PaperPoint, mm: number): PaperPoint => [
    point[0] - mm * Math.sin(turn),
    point[1] + mm * Math.cos(turn),
  ];
  const [a, b] = [out(from, outMm), out(to, outMm)];
  const narrow = Math.hypot(to[0] - from[0], to[1] - from[1]) < narrowMm;
  return [
    stroke("dimensions", "fine", [out(from, side * 1.9), out(from, outMm + side * 0.9)]),
    stroke("dimensions", "fine", [out(to, side * 0.9), out(to, outMm + side * 0.9)]),
    ...(narrow
      ? [...arrow(a, turn), ...arrow(b, turn + Math.PI)]
      : [stroke("dimensions", "thin", [a, b]), slant(a, turn), slant(b, turn)]),
  ];
}

/** A short stroke across the end of a dimension line. */
export function slant([x, y]: PaperPoint, turnRad: number): Mark {
  const [dx, dy] = [0.8 * Math.cos(turnRad + Math.PI / 4), 0.8 * Math.sin(turnRad + Math.PI / 4)];
  return stroke("dimensions", "medium", [
    [x - dx, y - dy],
    [x + dx, y + dy],
  ]);
}

/** An arrow whose tip stands at a point and whose shaft comes from behind. */
function arrow(tip: PaperPoint, turnRad: number): readonly Mark[] {
  const at = (back: number) => behind(tip, turnRad, back, 0);
  return [stroke("dimensions", "thin", [at(1), at(outsideArrowMm)]), arrowHead(tip, turnRad)];
}

/** The head of an arrow that points in a direction. */
export function arrowHead(tip: PaperPoint, turnRad: number): Mark {
  const at = (back: number, aside: number) => behind(tip, turnRad, back, aside);
  return area("dimensions", null, [at(0, 0), at(1.5, 0.42), at(1.5, -0.42)], { fill: 0 });
}

function behind([x, y]: PaperPoint, turnRad: number, back: number, aside: number): PaperPoint {
  return [
    x - back * Math.cos(turnRad) - aside * Math.sin(turnRad),
    y - back * Math.sin(turnRad) + aside * Math.cos(turnRad),
  ];
}
