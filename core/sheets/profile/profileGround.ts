import { type ProfileStep, stepStationM } from "../../plant/profile.ts";
import { metresPerFoot } from "../../units/constants.ts";
import { formatLength } from "../../units/formatLength.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { area, smallMm, stroke, words } from "../paper/marks.ts";
import { paperMm } from "../paper/scale.ts";
import type { ProfileDesk } from "./profilePaper.ts";

const gridSteps = [1, 2, 5, 10, 20, 50, 100] as const;
/** Depth of the wash under measured ground, mm. */
export const washMm = 1.6;
/** Least distance of two grid lines, mm. */
const gridMm = 14;

/** The frame of the chart: elevations up both sides, with a dotted line across at each. */
export function drawGrid({ plant, chart, up, at, row, draw, placer }: ProfileDesk): void {
  const system = plant.settings().unitSystem;
  const unitM = system === "us" ? metresPerFoot : 1;
  const stepM = unitM * (gridSteps.find((one) => paperMm(one * unitM, up) >= gridMm) ?? 100);
  const elevationAt = (y: number) => ((y - at(row.startM, 0)[1]) * up.denominator) / 1000;
  const first = Math.ceil(elevationAt(chart.bottom + 2) / stepM);
  const last = Math.floor(elevationAt(chart.top) / stepM);
  for (let index = first; index <= last; index += 1) {
    const [, y] = at(row.startM, index * stepM);
    const text = formatLength(index * stepM, system, "span");
    const across: readonly PaperPoint[] = [
      [chart.left, y],
      [chart.right, y],
    ];
    draw([
      stroke("ground", "fine", across, { dashMm: [0.3, 1.9] }),
      words(text, [chart.left - 1.4, y - smallMm / 2], { face: "narrow", heightMm: smallMm, align: "right" }),
      words(text, [chart.right + 1.4, y - smallMm / 2], { face: "narrow", heightMm: smallMm }),
    ]);
  }
  for (const [from, to] of [
    [chart.left - 15, chart.left],
    [chart.right, chart.right + 15],
  ] as const)
    placer.block([
      [from, chart.bottom],
      [to, chart.bottom],
      [to, chart.top],
      [from, chart.top],
    ]);
  for (const x of [chart.left, chart.right])
    draw([
      stroke("frame", "thin", [
        [x, chart.bottom],
        [x, chart.top],
      ]),
    ]);
}

/** The ground, washed where it was measured; a dashed guess from foot to foot where it was not. */
export function drawGround(desk: ProfileDesk): void {
  const feet = new Map(desk.row.poles.map((one) => [one.poleId, one.footM]));
  for (const step of desk.row.steps) {
    const measured = step.span.ground;
    const points = (
      measured?.map((one) => desk.at(stepStationM(step, one.offsetM), one.groundM)) ?? [
        desk.at(step.startM, feet.get(step.inPoleId) ?? 0),
        desk.at(step.startM + step.span.lengthM, feet.get(step.outPoleId) ?? 0),
      ]
    ).toSorted((a, b) => a[0] - b[0]);
    if (measured) {
      const down = points.toReversed().map(([x, y]): PaperPoint => [x, y - washMm]);
      desk.draw([area("ground", null, [...points, ...down], { fill: 0.88 })]);
    }
    desk.draw([stroke("ground", "bold", points, { dashMm: measured ? [] : [1.6, 1.6] })]);
    for (const [index, point] of points.slice(1).entries()) desk.placer.line(points[index] ?? point, point, 3);
    const [first, last] = [points[0], points.at(-1)];
    if (!measured && first && last) sayUnknown(desk, step, first, last);
  }
}

function sayUnknown(desk: ProfileDesk, step: ProfileStep, from: PaperPoint, to: PaperPoint): void {
  const middle: PaperPoint = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const text = step.span.why ?? "Ground not measured.";
  const candidates = [-4, 4, -7, 7].map((mm, cost) => ({
    centre: [middle[0], middle[1] + mm] as const,
    turnRad: 0,
    cost,
  }));
  desk.label(1, [{ text, face: "narrow", heightMm: smallMm }], middle, candidates);
}
