import { colourAt } from "../../fiber/colourCode.ts";
import { chipFill } from "../paper/chipColours.ts";
import type { Mark, PaperPoint } from "../paper/displayList.ts";
import { wrapText } from "../paper/fitText.ts";
import { asFigure, asParagraph, bodyMm, circle, rectangle, smallMm, words } from "../paper/marks.ts";
import type { PaperBox } from "../paper/paper.ts";
import { sheathStrip, sheathStripMm } from "./sheathStrip.ts";
import { colourWords, numberRanges, type TerminalFacts } from "./terminalFacts.ts";

const jacketMm = 17.5;
const ringMm = 12.6;
const labelMm = 21.6;
const listLeftMm = 62;
const chipRowMm = 19.2;
const listFootMm = 9;
const ringsMm = 47;

/** Height of the panel under its heading, mm: as high as the cable cut across, higher where more tubes are opened. */
export function tubePanelMm(facts: TerminalFacts): number {
  const strip = facts.opening ? sheathStripMm : 0;
  return Math.max(ringsMm, Math.max(1, facts.openTubes.length) * chipRowMm + listFootMm + strip);
}

const ringWords = "The cable cut across, its tubes in their ring";

/** The cable cut across: tubes in their ring, those to open heavy and in colour; beside it the fibers of each open tube. */
export function tubePanel(facts: TerminalFacts, box: PaperBox): readonly Mark[] {
  const centre: PaperPoint = [box.left + 29, box.top - ringsMm / 2 + 1];
  const tubeCount = Math.ceil(facts.fiberCount / facts.fibersPerTube);
  const list: PaperBox = { ...box, left: box.left + listLeftMm };
  const strip: PaperBox = { ...list, top: box.bottom + sheathStripMm };
  return [
    ...asFigure(ringWords, [
      circle("tables", "bold", centre, jacketMm),
      circle("tables", "thin", centre, 4.2),
      ...Array.from({ length: tubeCount }, (_, index) => tube(facts, centre, index + 1, tubeCount)).flat(),
    ]),
    ...openWords(facts, tubeCount, list),
    ...sheathStrip(facts, strip),
  ];
}

function tube(facts: TerminalFacts, centre: PaperPoint, number: number, tubeCount: number): readonly Mark[] {
  const turn = Math.PI / 2 - ((number - 1) * 2 * Math.PI) / tubeCount;
  const at = (radius: number): PaperPoint => [centre[0] + radius * Math.cos(turn), centre[1] + radius * Math.sin(turn)];
  const radius = Math.min(3.4, (Math.PI * ringMm) / tubeCount - 0.25);
  const open = facts.openTubes.includes(number);
  const [x, y] = at(labelMm + (tubeCount > 12 ? 0.8 : 0));
  const label = words(`${number} ${colourAt(((number - 1) % 12) + 1).abbreviation}`, [x, y - 1], {
    face: open ? "narrowBold" : "narrow",
    heightMm: open ? 2.4 : smallMm,
    align: "middle",
    layer: "tables",
    grey: open ? 0 : 0.3,
  });
  const ring = circle("tables", open ? "thick" : "thin", at(ringMm), radius, open ? chipFill(number) : 1);
  return [ring, label];
}

function openWords(facts: TerminalFacts, tubeCount: number, box: PaperBox): readonly Mark[] {
  const marks: Mark[] = [];
  let y = box.top - 3;
  const say = (text: string, bold: boolean) => {
    const face = bold ? "plainBold" : "plain";
    const [heightMm, lineMm, top] = bold ? [2.6, 4.6, y] : [bodyMm, 3.85, y];
    const lines = wrapText(text, face, heightMm, box.right - box.left);
    marks.push(
      ...asParagraph(
        lines.map((line, index) => words(line, [box.left, top - index * lineMm], { face, heightMm, layer: "tables" })),
      ),
    );
    y -= lines.length * lineMm;
  };
  if (facts.openTubes.length === 0) say("Open no tube: no fiber is given to this terminal yet.", true);
  for (const open of facts.openTubes) {
    say(`Open tube ${open}, ${colourWords(open)}`, true);
    y -= 1.6;
    marks.push(...fiberChips(facts, open, [box.left, y - 3]));
    y -= 12;
  }
  const closed = Array.from({ length: tubeCount }, (_, index) => index + 1).filter(
    (one) => !facts.openTubes.includes(one),
  );
  if (closed.length > 0) say(`Leave closed: ${closed.length === 1 ? "tube" : "tubes"} ${numberRanges(closed)}.`, false);
  say(
    `${facts.fiberCount} fibers, ${facts.fibersPerTube} in a tube. Chip in colour with a heavy edge: cut here.`,
    false,
  );
  return marks;
}

const chipMm = 8.2;

/** The fibers of one tube in a row, letters under each chip; those cut here heavy and in colour. */
function fiberChips(facts: TerminalFacts, tube: number, [x, y]: PaperPoint): readonly Mark[] {
  const cut = facts.fibers.filter((one) => one.tube === tube).map((one) => one.place);
  return Array.from({ length: facts.fibersPerTube }, (_, index) => {
    const place = index + 1;
    const taken = cut.includes(place);
    const left = x + index * chipMm;
    return [
      rectangle("tables", taken ? "thick" : "fine", [left, y], chipMm - 2, 3, { fill: taken ? chipFill(place) : 1 }),
      words(colourAt(place).abbreviation, [left + (chipMm - 2) / 2, y - 3.4], {
        face: taken ? "narrowBold" : "narrow",
        heightMm: smallMm,
        align: "middle",
        layer: "tables",
        grey: taken ? 0 : 0.35,
      }),
    ];
  }).flat();
}
