import type { NumberedFinding } from "./book.ts";
import type { PaperPoint } from "./displayList.ts";
import { isMarked } from "./findingNumbers.ts";
import { area, stroke, words } from "./marks.ts";
import { textWidthMm } from "./measureText.ts";
import { cornersOf } from "./orientedBox.ts";
import type { PlanDesk } from "./planDesk.ts";
import { findingSymbol } from "./symbols.ts";
import { toPaper } from "./view.ts";

const symbolMm = 3;
const textMm = 2;
const mostNumbers = 3;

/** Open findings at their places, under the numbers of the findings sheet. */
export function drawFindings(desk: PlanDesk, findings: readonly NumberedFinding[]): void {
  const groups = new Map<string, { at: PaperPoint; findings: NumberedFinding[] }>();
  for (const one of findings) {
    if (!one.finding.at || !isMarked(one)) continue;
    const at = onSheet(desk, toPaper(desk.strip.view, one.finding.at));
    const key = `${Math.round(at[0] / 2)} ${Math.round(at[1] / 2)}`;
    const group = groups.get(key);
    if (group) group.findings.push(one);
    else groups.set(key, { at, findings: [one] });
  }
  for (const { at, findings: here } of groups.values()) drawGroup(desk, at, here);
}

function drawGroup(desk: PlanDesk, at: PaperPoint, here: readonly NumberedFinding[]): void {
  const numbers = [...new Set(here.map((one) => String(one.number)))];
  const more = numbers.length > mostNumbers ? ` +${numbers.length - mostNumbers}` : "";
  const text = numbers.slice(0, mostNumbers).join(", ") + more;
  const width = symbolMm + 0.8 + textWidthMm(text, "narrowBold", textMm);
  const near = [0, 3, 6].flatMap((ring) =>
    Array.from({ length: 12 }, (_, step) => {
      const turn = (step * Math.PI) / 6 + Math.PI / 4;
      return {
        centre: [at[0] + (width / 2 + 3 + ring) * Math.cos(turn), at[1] + (4.5 + ring) * Math.sin(turn)] as const,
        turnRad: 0,
        cost: ring,
      };
    }),
  );
  const placed = desk.placer.place({ width, height: symbolMm, anchor: at, candidates: near });
  const severity = here[0]?.finding.severity;
  if (!placed || !severity) return;
  const [x, y] = placed.box.centre;
  const left = x - width / 2;
  desk.draw([
    stroke("findings", "fine", [[left + symbolMm / 2, y], at], { dashMm: [0.8, 0.6] }),
    area("findings", null, cornersOf({ ...placed.box, width: width + 0.6, height: symbolMm + 0.4 }), { fill: 1 }),
    ...findingSymbol(severity, [left + symbolMm / 2, y]),
    words(text, [left + symbolMm + 0.8, y - textMm / 2], { face: "narrowBold", heightMm: textMm }),
  ]);
}

/** A place beyond the paper is told at its edge. */
function onSheet({ box }: PlanDesk, [x, y]: PaperPoint): PaperPoint {
  return [Math.min(box.right, Math.max(box.left, x)), Math.min(box.top, Math.max(box.bottom, y))];
}
