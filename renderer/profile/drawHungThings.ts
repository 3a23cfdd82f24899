import type { ProfileStep } from "../../core/plant/profile.ts";
import { elevationOn } from "../../core/plant/profileSpan.ts";
import type { Pen } from "../canvas/paint.ts";
import { placed } from "./drawLine.ts";
import type { Frame } from "./frame.ts";
import type { ProfileLook, ProfileScene } from "./profileScene.ts";

/** Least length of a span for what hangs in it to be drawn, px. */
const leastSpanPx = 24;

/** What hangs under the strand: terminals as bars, coils as rings, closures as bars with a stroke. */
export function drawHungThings(pen: Pen, { frame, ink }: ProfileLook, { steps }: ProfileScene): void {
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 1.25;
  for (const step of steps) {
    const { line, hung } = step.span;
    if (!line || frame.pxPerM * step.span.lengthM < leastSpanPx) continue;
    for (const one of hung) {
      const [x, y] = hungPoint(frame, step, one.offsetM);
      pen.fillStyle = ink.ground;
      pen.beginPath();
      if (one.table === "slack") pen.arc(x, y + 5, 4, 0, Math.PI * 2);
      else {
        const widthPx = Math.max(10, one.halfM * 2 * frame.pxPerM);
        pen.roundRect(x - widthPx / 2, y + 4, widthPx, 7, 2);
        pen.moveTo(x - widthPx / 4, y);
        pen.lineTo(x - widthPx / 4, y + 4);
        pen.moveTo(x + widthPx / 4, y);
        pen.lineTo(x + widthPx / 4, y + 4);
      }
      if (one.table !== "slack") pen.fill();
      if (one.table === "closure") {
        pen.moveTo(x - 6, y + 14);
        pen.lineTo(x + 6, y + 1);
      }
      pen.stroke();
    }
  }
}

/** Pixel of the strand where something hangs. */
export function hungPoint(frame: Frame, step: ProfileStep, offsetM: number): readonly [number, number] {
  return placed(frame, step, offsetM, elevationOn(step.span, step.span.line?.stringing ?? [], offsetM));
}
