import { metresPerFoot } from "../../core/units/constants.ts";
import { lettering } from "./ink.ts";
import type { Pen, Picture } from "./paint.ts";

const usFeet = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000, 20000];
const metricM = [0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];

/** The paper under the drawing. */
export function drawGround(pen: Pen, { view, ink }: Picture): void {
  pen.fillStyle = ink.ground;
  pen.fillRect(0, 0, view.widthPx, view.heightPx);
}

/** The scale bar and the north arrow, on a patch of paper in the corner. */
export function drawScale(pen: Pen, { scene, view, ink, units }: Picture): void {
  const { straight } = scene.places;
  // evenly spaced poles have no scale, a straightened page no north
  if (straight?.spacing === "even") return;
  const isUs = units === "us";
  const metresPerStep = isUs ? metresPerFoot : 1;
  const steps = isUs ? usFeet : metricM;
  const step = steps.find((one) => one * metresPerStep * view.pxPerM >= 70) ?? steps.at(-1) ?? 1;
  const lengthPx = step * metresPerStep * view.pxPerM;
  const x = 20;
  const y = view.heightPx - 20;
  pen.fillStyle = ink.ground;
  pen.beginPath();
  const letterPx = 12 * ink.letterFrac;
  pen.roundRect(x - 10, y - 18 - letterPx, lengthPx + 46 + letterPx, 28 + letterPx, 6);
  pen.fill();
  pen.strokeStyle = ink.soft;
  pen.lineWidth = 1;
  pen.beginPath();
  pen.moveTo(x + 0.5, y - 5);
  pen.lineTo(x + 0.5, y + 0.5);
  pen.lineTo(x + lengthPx + 0.5, y + 0.5);
  pen.lineTo(x + lengthPx + 0.5, y - 5);
  pen.moveTo(x + lengthPx / 2 + 0.5, y - 3);
  pen.lineTo(x + lengthPx / 2 + 0.5, y);
  pen.stroke();
  pen.fillStyle = ink.soft;
  pen.font = lettering(letterPx, 400);
  pen.textAlign = "left";
  pen.textBaseline = "alphabetic";
  pen.fillText(`${step} ${isUs ? "ft" : "m"}`, x, y - 10);
  if (!straight) drawNorth(pen, x + lengthPx + 26, y - 8, ink.soft);
}

function drawNorth(pen: Pen, x: number, y: number, colour: string): void {
  pen.strokeStyle = colour;
  pen.fillStyle = colour;
  pen.beginPath();
  pen.moveTo(x, y + 9);
  pen.lineTo(x, y - 9);
  pen.stroke();
  pen.beginPath();
  pen.moveTo(x, y - 12);
  pen.lineTo(x + 3.5, y - 3);
  pen.lineTo(x, y - 5);
  pen.closePath();
  pen.fill();
  pen.textAlign = "left";
  pen.fillText("N", x + 7, y - 2);
}
