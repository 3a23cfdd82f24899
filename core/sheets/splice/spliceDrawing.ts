import { colourWords } from "../jobCard/terminalFacts.ts";
import { chipFill } from "../paper/chipColours.ts";
import type { Mark, PaperPoint } from "../paper/displayList.ts";
import { shortenText } from "../paper/fitText.ts";
import { rectangle, smallMm, stroke, words } from "../paper/marks.ts";
import type { PaperBox } from "../paper/paper.ts";
import { type EndBlock, type Join, type SpliceDiagram, type SpliceEnd, sideMm } from "./spliceDiagram.ts";

/** Widest a diagram is drawn, mm: lines as long as a wide sheet are hard to follow. */
const widestMm = 380;
/** What the words of a side take: its tubes outside, its fibers inside, mm. */
const tubeMm = 34;
const fiberMm = 38;
const chipMm = { width: 3.6, height: 2 } as const;
/** How far a line goes straight before it slants to its other end; at the right it bears the sleeve. */
const stubMm = { left: 7, right: 9 } as const;
const sleeveMm = { width: 4.4, height: 1.5 } as const;

/** A side of the diagram: where its lines begin, and which way its words go from there. */
type Side = { readonly x: number; readonly out: -1 | 1 };

/**
 * A splice diagram from the top of a box down: cables at both sides, tubes as brackets with their colour, fibers by number and colour;
 * a heavy line with a sleeve where two are fused, a fine one where a fiber passes uncut. Sleeves stand before the ends at the right, where no
 * two lines meet.
 */
export function drawSplices({ left, right, joins }: SpliceDiagram, box: PaperBox): readonly Mark[] {
  const edge = Math.min(box.right, box.left + widestMm);
  const from: Side = { x: box.left + tubeMm + fiberMm, out: -1 };
  const to: Side = { x: edge - tubeMm - fiberMm, out: 1 };
  const [starts, ends] = [placed(left, box.top), placed(right, box.top)];
  const lines = joins.flatMap((join) => {
    const [start, end] = [starts.get(join.from), ends.get(join.to)];
    return start === undefined || end === undefined ? [] : [{ ...join, start, end }];
  });
  const passing = lines.filter((one) => !one.isSpliced);
  const spliced = lines.filter((one) => one.isSpliced);
  return [
    ...passing.map(({ start, end }) => stroke("cable", "fine", way(from, start, to, end))),
    ...spliced.flatMap(({ start, end }) => [
      stroke("cable", "bold", way(from, start, to, end)),
      sleeve([to.x - stubMm.right / 2, end]),
    ]),
    ...deadEnds(left, joins).flatMap((end) => deadEnd(from, starts.get(end.key) ?? box.top)),
    ...left.flatMap((block) => blockMarks(block, starts, from, box.left)),
    ...right.flatMap((block) => blockMarks(block, ends, to, edge)),
  ];
}

/** Heights of the ends of one side on the sheet, by key. */
function placed(blocks: readonly EndBlock[], top: number): ReadonlyMap<string, number> {
  const heights = new Map<string, number>();
  let y = top;
  for (const { ends } of blocks) {
    y -= sideMm.title;
    ends.forEach((end, index) => {
      if (index > 0 && end.tube !== ends[index - 1]?.tube) y -= sideMm.tubeGap;
      heights.set(end.key, y - sideMm.end / 2);
      y -= sideMm.end;
    });
    y -= sideMm.blockGap;
  }
  return heights;
}

function way(from: Side, start: number, to: Side, end: number): readonly PaperPoint[] {
  return [
    [from.x, start],
    [from.x + stubMm.left, start],
    [to.x - stubMm.right, end],
    [to.x, end],
  ];
}

/** Where two fibers are fused. */
function sleeve([x, y]: PaperPoint): Mark {
  const { width, height } = sleeveMm;
  return rectangle("terminals", "medium", [x - width / 2, y - height / 2], width, height, { fill: 1 });
}

/** Fibers cut here that go nowhere. */
function deadEnds(left: readonly EndBlock[], joins: readonly Join[]): readonly SpliceEnd[] {
  const joined = new Set(joins.map((one) => one.from));
  return left.flatMap((block) => block.ends).filter((one) => one.fiber !== null && !joined.has(one.key));
}

function deadEnd({ x }: Side, y: number): readonly Mark[] {
  const end = x + stubMm.left;
  return [
    stroke("cable", "bold", [
      [x, y],
      [end, y],
    ]),
    stroke("cable", "bold", [
      [end, y - 1],
      [end, y + 1],
    ]),
  ];
}

function blockMarks(
  { title, ends }: EndBlock,
  heights: ReadonlyMap<string, number>,
  side: Side,
  edge: number,
): readonly Mark[] {
  const first = ends[0];
  if (!first) return [];
  const y = (heights.get(first.key) ?? 0) + sideMm.end / 2;
  const [near, far] = side.out < 0 ? [edge, side.x] : [side.x, edge];
  const text = shortenText(title, "plainBold", 2.4, far - near);
  return [
    words(text, [near, y + 2], { face: "plainBold", heightMm: 2.4, layer: "tables" }),
    stroke("tables", "medium", [
      [near, y + 0.7],
      [far, y + 0.7],
    ]),
    ...ends.flatMap((end) => endMarks(end, heights.get(end.key) ?? 0, side)),
    ...tubesOf(ends).flatMap((own) => tubeMarks(own, heights, side)),
  ];
}

/** Ends that lie in one tube, tube after tube. */
function tubesOf(ends: readonly SpliceEnd[]): readonly (readonly SpliceEnd[])[] {
  const groups: SpliceEnd[][] = [];
  for (const end of ends) {
    const last = groups.at(-1);
    if (last && last[0]?.tube === end.tube) last.push(end);
    else groups.push([end]);
  }
  return groups.filter(([first]) => first?.tube !== null);
}

function tubeMarks(own: readonly SpliceEnd[], heights: ReadonlyMap<string, number>, { x, out }: Side): readonly Mark[] {
  const [first, last] = [own[0], own.at(-1)];
  if (!first || first.tube === null || !last) return [];
  const [top, bottom] = [(heights.get(first.key) ?? 0) + 1.6, (heights.get(last.key) ?? 0) - 1.6];
  const inner = x + out * fiberMm;
  const middle = (top + bottom) / 2;
  const align = out < 0 ? "right" : "left";
  const told = colourWords(first.tube);
  const isLow = own.length === 1;
  const at = inner + out * 6.5;
  const lines = isLow ? [`Tube ${first.tube}, ${told}`] : [`Tube ${first.tube}`, told];
  return [
    rectangle("tables", "thin", [inner + (out < 0 ? -4.6 : 1), bottom], 3.6, top - bottom, {
      fill: chipFill(first.tube),
    }),
    ...lines.map((text, index) =>
      words(shortenText(text, "plain", smallMm, tubeMm - 7), [at, middle - 1 + (isLow ? 0 : 1.7 - index * 3.4)], {
        heightMm: smallMm,
        layer: "tables",
        align,
      }),
    ),
  ];
}

function endMarks({ tube, fiber, text }: SpliceEnd, y: number, { x, out }: Side): readonly Mark[] {
  const base = y - smallMm / 2;
  const align = out < 0 ? "right" : "left";
  const heightMm = smallMm;
  if (fiber === null) {
    const told = shortenText(text, "narrow", 2.1, tube === null ? fiberMm + tubeMm - 4 : fiberMm - 3);
    return [words(told, [x + out * 2, base], { face: "narrow", heightMm: 2.1, layer: "tables", align })];
  }
  const left = out < 0 ? x - fiberMm + 2 : x + 2;
  return [
    words(String(fiber.number), [left + 6, base], { heightMm, align: "right", layer: "tables" }),
    rectangle("tables", "thin", [left + 7.4, y - chipMm.height / 2], chipMm.width, chipMm.height, {
      fill: chipFill(fiber.place),
    }),
    words(`${fiber.place}  ${colourWords(fiber.place)}`, [left + 12.4, base], { heightMm, layer: "tables" }),
  ];
}
