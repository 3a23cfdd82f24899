import type { NumberedFinding } from "../book.ts";
import type { Mark, PaperPoint } from "../paper/displayList.ts";
import { area, stroke, words } from "../paper/marks.ts";
import { textWidthMm } from "../paper/measureText.ts";
import { boundsOf, cornersOf } from "../paper/orientedBox.ts";
import { findingSymbol } from "../paper/symbols.ts";
import { isMarked } from "../schedule/findingNumbers.ts";
import { drawnKey, type PlanDesk } from "./planDesk.ts";
import { toPaper } from "./view.ts";

const symbolMm = 3;
const textMm = 2;
const mostNumbers = 3;

/** Open findings at their places, under the numbers of the findings sheet. */
export function drawFindings(desk: PlanDesk, findings: readonly NumberedFinding[]): void {
  const groups = new Map<string, { at: PaperPoint; house: Bounds | null; findings: NumberedFinding[] }>();
  for (const one of findings) {
    if (!one.finding.at || !isMarked(one)) continue;
    const house = houseOf(desk, one);
    const at = house ? middleOf(house) : onSheet(desk, toPaper(desk.strip.view, one.finding.at));
    const key = `${Math.round(at[0] / 2)} ${Math.round(at[1] / 2)}`;
    const group = groups.get(key);
    if (group) group.findings.push(one);
    else groups.set(key, { at, house, findings: [one] });
  }
  const drawn = [...groups.values()].flatMap(
    ({ at, house, findings: here }) => groupMarks(desk, at, house, here) ?? [],
  );
  // the leader of one may pass under the number of another
  desk.draw(drawn.map((one) => one.leader));
  desk.draw(drawn.flatMap((one) => one.told));
}

/** Left, bottom, right, top, mm. */
type Bounds = ReturnType<typeof boundsOf>;

/** The house a finding is about, where it was drawn: perhaps beside its true place, or at the edge of the sheet. */
function houseOf(desk: PlanDesk, { finding }: NumberedFinding): Bounds | null {
  const units = finding.subjects.filter((one) => one.table === "livingUnit");
  const [outline] = units.flatMap((one) => [desk.drawnAt.get(drawnKey(one.table, one.id)) ?? []]);
  return units.length === 1 && outline && outline.length > 0 ? boundsOf(outline) : null;
}

function middleOf([left, bottom, right, top]: Bounds): PaperPoint {
  return [(left + right) / 2, (bottom + top) / 2];
}

type Drawn = { readonly leader: Mark; readonly told: readonly Mark[] };

function groupMarks(
  desk: PlanDesk,
  at: PaperPoint,
  house: Bounds | null,
  here: readonly NumberedFinding[],
): Drawn | null {
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
  if (!placed || !severity) return null;
  const [x, y] = placed.box.centre;
  const left = x - width / 2;
  const from: PaperPoint = [left + symbolMm / 2, y];
  const leader = stroke("findings", "fine", [from, house ? nearest(house, from) : at], { dashMm: [0.8, 0.6] });
  const told = [
    area("findings", null, cornersOf({ ...placed.box, width: width + 0.6, height: symbolMm + 0.4 }), { fill: 1 }),
    ...findingSymbol(severity, from),
    words(text, [left + symbolMm + 0.8, y - textMm / 2], { face: "narrowBold", heightMm: textMm }),
  ];
  return { leader, told };
}

/** The point of a house's edge a leader goes to, so that it never runs through the number. */
function nearest([left, bottom, right, top]: Bounds, [x, y]: PaperPoint): PaperPoint {
  return [Math.min(right, Math.max(left, x)), Math.min(top, Math.max(bottom, y))];
}

/** A place beyond the paper is told at its edge. */
function onSheet({ box }: PlanDesk, [x, y]: PaperPoint): PaperPoint {
  return [Math.min(box.right, Math.max(box.left, x)), Math.min(box.top, Math.max(box.bottom, y))];
}
