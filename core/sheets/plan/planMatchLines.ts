import type { Book } from "../book.ts";
import type { PaperPoint, SheetLink } from "../paper/displayList.ts";
import { type LabelLine, labelMarks, labelSizeMm } from "../paper/labels.ts";
import { stroke } from "../paper/marks.ts";
import { boundsOf, cornersOf } from "../paper/orientedBox.ts";
import { stationText } from "../paper/quantityText.ts";
import { type PaperStep, type PlanDesk, readableRad, shifted } from "./planDesk.ts";

const matchReachMm = 44;
/** How far words along a match line may lean back before they are turned to read downwards: all of a set read alike, from the right. */
const leanRad = Math.PI / 6;

/** Where a strip goes on: a line across it, named with the sheet and the station on both sides. */
export function drawMatchLines(desk: PlanDesk, book: Book, links: SheetLink[]): void {
  const { strip } = desk;
  const [first, last] = [desk.steps[0], desk.steps.at(-1)];
  if (strip.before !== null && first) {
    const on = onSheet(book, strip.key, strip.before, "above");
    matchLine(desk, first, first.from, { stationM: strip.startM, key: strip.before, on, outward: -1 }, links);
  }
  if (strip.after !== null && last) {
    const on = onSheet(book, strip.key, strip.after, "below");
    matchLine(desk, last, last.to, { stationM: strip.endM, key: strip.after, on, outward: 1 }, links);
  }
}

type Match = { readonly stationM: number; readonly key: string; readonly on: string; readonly outward: 1 | -1 };

function onSheet(book: Book, ownKey: string, otherKey: string, sameSheet: string): string {
  const number = book.numberOf(otherKey);
  if (number === undefined) return "continued";
  return number === book.numberOf(ownKey) ? `continued ${sameSheet}` : `continued on sheet ${number}`;
}

function matchLine(
  desk: PlanDesk,
  step: PaperStep,
  at: PaperPoint,
  { stationM, key, on, outward }: Match,
  links: SheetLink[],
): void {
  const { turnRad } = step;
  const { box } = desk;
  const inBox = ([x, y]: PaperPoint) => x > box.left && x < box.right && y > box.bottom + 1 && y < box.top - 6;
  const reach = (sign: 1 | -1) => {
    let mm = matchReachMm;
    while (mm > 12 && !inBox(shifted(at, turnRad, 0, sign * mm))) mm -= 1;
    return sign * mm;
  };
  const ends: readonly [PaperPoint, PaperPoint] = [
    shifted(at, turnRad, 0, reach(-1)),
    shifted(at, turnRad, 0, reach(1)),
  ];
  desk.draw([stroke("frame", "bold", ends, { dashMm: [7, 1.6, 1.2, 1.6] })]);
  desk.placer.block([
    shifted(ends[0], turnRad, -0.5, 0),
    shifted(ends[0], turnRad, 0.5, 0),
    shifted(ends[1], turnRad, 0.5, 0),
    shifted(ends[1], turnRad, -0.5, 0),
  ]);
  const station = stationText(stationM, desk.plant.settings().unitSystem);
  const lines: LabelLine[] = [
    { text: `Match line ${station}`, face: "narrowBold", heightMm: 2.4 },
    { text: on, face: "narrow", heightMm: 2.2 },
  ];
  const size = labelSizeMm(lines);
  const words = readableRad(turnRad + Math.PI / 2 - leanRad) + leanRad;
  const centres = [26, 20, 34, -26, -20, -34].map((leftMm) =>
    shifted(at, turnRad, outward * (size.height / 2 + 1.4), leftMm),
  );
  const placed = desk.placer.place({
    ...size,
    anchor: at,
    candidates: centres.map((centre, cost) => ({ centre, turnRad: words, cost })),
  });
  if (!placed) return;
  desk.draw(labelMarks(lines, placed.box));
  const [left, bottom, right, top] = boundsOf(cornersOf(placed.box));
  links.push({ boxMm: [left, bottom, right - left, top - bottom], to: key });
}
