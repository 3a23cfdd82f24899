import { type ProfileStep, stepStationM } from "../../plant/profile.ts";
import { elevationOn, furtherLines, type ProfileCase, profileCases } from "../../plant/profileSpan.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { type LabelLine, labelSizeMm } from "../paper/labels.ts";
import { area, circle, rectangle, smallMm, stroke } from "../paper/marks.ts";
import type { ProfileDesk } from "./profilePaper.ts";

/** Dashes of our line in each case; strung is the full line. */
export const caseDashMm: Readonly<Record<ProfileCase, readonly number[]>> = {
  cold: [0.3, 1.2],
  stringing: [],
  hot: [1, 0.8],
  iced: [3, 1],
  extremeWind: [4, 1, 0.6, 1],
  extremeIce: [4, 1, 0.6, 1, 0.6, 1],
  worker: [0.4, 0.6],
};

/**
 * Our line: the band between its highest and lowest case of clearance, each case by its dash, strung as the full line. The further
 * cases of strength, against which no clearance is held, are dashes alone.
 */
export function drawOurLine(desk: ProfileDesk): void {
  for (const step of desk.row.steps) {
    const { line, band } = step.span;
    if (!(line && band)) continue;
    const [upper, lower] = [curve(desk, step, band.upperM), curve(desk, step, band.lowerM)];
    desk.draw([area("cable", null, [...upper, ...lower.toReversed()], { fill: 0.86 })]);
    for (const one of profileCases) {
      const pen = one === "stringing" ? "bold" : "thin";
      desk.draw([stroke("strand", pen, curve(desk, step, line[one]), { dashMm: caseDashMm[one] })]);
    }
    for (const [one, elevationsM] of furtherLines(line))
      desk.draw([stroke("strand", "thin", curve(desk, step, elevationsM), { dashMm: caseDashMm[one] })]);
    keepOff(desk, upper, 2);
    keepOff(desk, lower, 2);
    drawHung(desk, step, line.stringing);
  }
}

const hungMm = { width: 3.4, height: 1.5, down: 1.1 } as const;

/** Terminals as bars, coils as rings, closures as bars with a stroke, under the strung line at their places. */
function drawHung(desk: ProfileDesk, step: ProfileStep, strungM: readonly number[]): void {
  const { width, height, down } = hungMm;
  for (const one of step.span.hung) {
    const [x, y] = desk.at(stepStationM(step, one.offsetM), elevationOn(step.span, strungM, one.offsetM));
    const top = y - down;
    if (one.table === "slack") {
      desk.draw([
        stroke("slack", "thin", [
          [x, y],
          [x, top],
        ]),
        circle("slack", "thin", [x, top - 0.9], 0.9, 1),
        circle("slack", "thin", [x, top - 0.9], 0.4),
      ]);
      continue;
    }
    const hangers = [-0.8, 0.8].map((mm) =>
      stroke("terminals", "thin", [
        [x + mm, y],
        [x + mm, top],
      ]),
    );
    const bar = rectangle("terminals", "medium", [x - width / 2, top - height], width, height, { fill: 1 });
    const across: readonly PaperPoint[] = [
      [x - 0.7, top - height - 0.5],
      [x + 0.7, top + 0.5],
    ];
    desk.draw([...hangers, bar, ...(one.table === "closure" ? [stroke("terminals", "medium", across)] : [])]);
    desk.placer.block(bar.pointsMm);
    const lines: LabelLine[] = [
      { text: desk.plant.rowOf(one.table, one.id).name, face: "narrowBold", heightMm: smallMm },
    ];
    const size = labelSizeMm(lines);
    const beside = (width + size.width) / 2 + 0.8;
    const spots = [
      [0, -(height + size.height) / 2 - 0.8],
      [beside, 0],
      [-beside, 0],
      [0, -(height + size.height) / 2 - 3],
    ] as const;
    const middle: PaperPoint = [x, top - height / 2];
    desk.label(
      2,
      lines,
      middle,
      spots.map(([dx, dy], cost) => ({ centre: [middle[0] + dx, middle[1] + dy], turnRad: 0, cost })),
    );
  }
}

/** A curve of a span on paper. */
export function curve({ at }: ProfileDesk, step: ProfileStep, elevationsM: readonly number[]): readonly PaperPoint[] {
  return step.span.offsetsM.map((offsetM, index) => at(stepStationM(step, offsetM), elevationsM[index] ?? 0));
}

/** Keeps labels off a curve as far as they can. */
export function keepOff({ placer }: ProfileDesk, points: readonly PaperPoint[], cost: number): void {
  for (const [index, point] of points.slice(1).entries()) placer.line(points[index] ?? point, point, cost);
}
