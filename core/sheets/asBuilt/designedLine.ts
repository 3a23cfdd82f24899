import type { Plant } from "../../plant/plant.ts";
import type { ProfileStep } from "../../plant/profile.ts";
import { profileSpan } from "../../plant/profileSpan.ts";
import type { Mark, PaperPoint } from "../paper/displayList.ts";
import { stroke } from "../paper/marks.ts";
import { curve, keepOff } from "../profile/profileLines.ts";
import type { ProfileDesk } from "../profile/profilePaper.ts";

/** Where the two lie nearer to each other throughout, they are one line on paper, mm. */
const apartMm = 0.35;
const slashMm = { every: 11, across: 0.8, up: 1.3 } as const;

/** Our line as it was designed, a thin line with slashes through it, in the spans where it was built so far off that paper shows it. */
export function drawDesignedLine(desk: ProfileDesk): void {
  const { designed } = desk;
  if (!designed) return;
  for (const step of desk.row.steps) {
    const points = designedPoints(desk, designed, step);
    if (!points) continue;
    desk.draw(struckLine(points));
    keepOff(desk, points, 1);
  }
}

/** Whether a profile shows any line struck. */
export function showsDesignedLine(desk: ProfileDesk): boolean {
  const { designed } = desk;
  return designed !== null && desk.row.steps.some((step) => designedPoints(desk, designed, step) !== null);
}

/** The strung line of the design in a span; null where none is known, or the built one lies over it. */
function designedPoints(desk: ProfileDesk, designed: Plant, step: ProfileStep): readonly PaperPoint[] | null {
  if (!designed.row("span", step.span.spanId) || !step.span.line) return null;
  const span = profileSpan(designed, step.span.spanId);
  if (!span.line) return null;
  const drawn = curve(desk, { ...step, span }, span.line.stringing);
  const built = curve(desk, step, step.span.line.stringing);
  return drawn.every((point) => offMm(point, built) < apartMm) ? null : drawn;
}

/** How far a point lies from a curve, straight up or down, mm. */
function offMm([x, y]: PaperPoint, points: readonly PaperPoint[]): number {
  const ordered = [...points].sort((a, b) => a[0] - b[0]);
  const next = ordered.findIndex((one) => one[0] >= x);
  const [to, from] = [ordered[next] ?? ordered.at(-1), ordered[Math.max(0, next - 1)]];
  if (!to || !from) return 0;
  const part = to[0] === from[0] ? 0 : (x - from[0]) / (to[0] - from[0]);
  return Math.abs(y - from[1] - (to[1] - from[1]) * part);
}

/** A thin line with a slash through it now and then: told from every dash without colour. */
export function struckLine(points: readonly PaperPoint[]): readonly Mark[] {
  const marks: Mark[] = [stroke("strand", "thin", points)];
  let walkedMm = slashMm.every / 2;
  for (const [index, to] of points.slice(1).entries()) {
    const from = points[index] ?? to;
    const lengthMm = Math.hypot(to[0] - from[0], to[1] - from[1]);
    for (; walkedMm <= lengthMm; walkedMm += slashMm.every) {
      const part = walkedMm / lengthMm;
      const [x, y] = [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part];
      marks.push(
        stroke("strand", "thin", [
          [x - slashMm.across, y - slashMm.up],
          [x + slashMm.across, y + slashMm.up],
        ]),
      );
    }
    walkedMm -= lengthMm;
  }
  return marks;
}
