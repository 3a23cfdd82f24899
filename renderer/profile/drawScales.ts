import { metresPerFoot } from "../../core/units/constants.ts";
import { fixedText } from "../../core/units/fixedText.ts";
import { formatStation } from "../../core/units/station.ts";
import { lettering } from "../canvas/ink.ts";
import type { Pen } from "../canvas/paint.ts";
import { elevationAt, elevationY, stationAt, stationScalePx, stationX } from "./frame.ts";
import type { ProfileLook } from "./profileScene.ts";

/** Room of the scale of elevations, px. */
const gutterPx = 50;

/** Steps a scale may have, in its unit. */
const steps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];

/** Elevations at the left, stations below. */
export function drawScales(pen: Pen, { frame, ink, units }: ProfileLook, lengthM: number): void {
  const unitM = units === "us" ? metresPerFoot : 1;
  pen.fillStyle = ink.ground;
  pen.fillRect(0, 0, gutterPx, frame.heightPx);
  pen.fillRect(0, frame.heightPx - stationScalePx, frame.widthPx, stationScalePx);
  pen.font = lettering(11 * ink.letterFrac, 400);
  pen.fillStyle = ink.soft;
  pen.strokeStyle = ink.hair;
  pen.lineWidth = 1;
  const up = unitM * stepFor(26 / (frame.upPxPerM * unitM));
  pen.textAlign = "right";
  pen.textBaseline = "middle";
  for (let m = Math.ceil(elevationAt(frame, frame.heightPx - 24) / up) * up; elevationY(frame, m) > 26; m += up) {
    const y = elevationY(frame, m);
    pen.fillText(fixedText(m / unitM, 0), gutterPx - 8, y);
    line(pen, [gutterPx - 4, y], [gutterPx, y]);
  }
  pen.fillText(units === "us" ? "ft" : "m", gutterPx - 8, 12);
  const along = unitM * stepFor(80 / (frame.pxPerM * unitM));
  pen.textAlign = "center";
  const toM = Math.min(lengthM, stationAt(frame, frame.widthPx));
  for (let m = Math.max(0, Math.ceil(stationAt(frame, gutterPx) / along) * along); m <= toM; m += along) {
    const x = stationX(frame, m);
    pen.fillText(formatStation(m, units), x, frame.heightPx - 8);
    line(pen, [x, frame.heightPx - stationScalePx], [x, frame.heightPx - 16]);
  }
  line(pen, [gutterPx, 0], [gutterPx, frame.heightPx - stationScalePx]);
  line(pen, [gutterPx, frame.heightPx - stationScalePx], [frame.widthPx, frame.heightPx - stationScalePx]);
}

function stepFor(least: number): number {
  return steps.find((step) => step >= least) ?? 10_000;
}

function line(pen: Pen, [x, y]: readonly [number, number], [toX, toY]: readonly [number, number]): void {
  pen.beginPath();
  pen.moveTo(x, y);
  pen.lineTo(toX, toY);
  pen.stroke();
}
