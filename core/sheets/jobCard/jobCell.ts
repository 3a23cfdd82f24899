import type { Settings } from "../../model/tables.ts";
import { logoMark } from "../logo.ts";
import type { Mark } from "../paper/displayList.ts";
import { wrapText } from "../paper/fitText.ts";
import { smallMm } from "../paper/marks.ts";
import { textWidthMm } from "../paper/measureText.ts";
import type { PaperBox } from "../paper/paper.ts";
import { fittedMm, type Picture } from "../paper/picture.ts";
import { fitted, labelled, note, smallFaces } from "../paper/titleText.ts";

type Job = { readonly settings: Settings; readonly logo: Picture | null };

/** White over and under a logo, mm. */
const logoWhiteMm = 1.6;
/** From a logo to the words beside it, mm. */
const gutterMm = 2.4;
/** Words beside a logo have at least this much, mm, and this part of the cell. */
const leastWords = { mm: 19, part: 0.45 } as const;
/** Lines of words under a logo, mm from one to the next. */
const lineMm = 3.3;
const besideLineMm = 2.9;
/** Words keep more room under a logo: one beside them must be this much larger. */
const worthIt = 1.2;
const boldSmall = { face: "plainBold", heightMm: smallMm } as const;

/** The cell of the title block that says whose route it is: the company's logo where it has one, company, project and place. */
export function jobCell({ settings, logo }: Job, cell: PaperBox): readonly Mark[] {
  if (logo === null) return threeLabelled(settings, cell);
  const [over, beside] = [overWords(cell), besideWords(cell)];
  // a wide logo takes the width of the cell, a square or a tall one its height
  if (areaMm2(logo, over) * worthIt >= areaMm2(logo, beside))
    return [logoMark(logo, settings.company, over), ...linesUnder(settings, cell)];
  const [logoWidthMm] = fittedMm(logo, beside);
  const words = { ...cell, left: cell.left + logoWidthMm + gutterMm };
  return [logoMark(logo, settings.company, beside), ...linesBeside(settings, words)];
}

function overWords({ left, right, top, bottom }: PaperBox): PaperBox {
  return { left, right, top: top - logoWhiteMm, bottom: bottom + 3 * lineMm + logoWhiteMm };
}

function besideWords({ left, right, top, bottom }: PaperBox): PaperBox {
  const wordsMm = Math.max(leastWords.mm, (right - left) * leastWords.part);
  return { left, right: right - wordsMm - gutterMm, top: top - logoWhiteMm, bottom: bottom + logoWhiteMm };
}

function areaMm2(logo: Picture, box: PaperBox): number {
  const [width, height] = fittedMm(logo, box);
  return width * height;
}

function threeLabelled({ company, project, ...where }: Settings, { left, right, top }: PaperBox): readonly Mark[] {
  const width = right - left;
  return [
    ...labelled("Company", company, left, top - 3.6, width),
    ...labelled("Project", project, left, top - 12, width),
    ...labelled("Place", placeOf(where), left, top - 20.4, width),
  ];
}

/** A line each, the label before what it is of. */
function linesUnder({ company, project, ...where }: Settings, { left, right, bottom }: PaperBox): readonly Mark[] {
  const base = (line: number) => bottom + 1.3 + line * lineMm;
  const line = (label: string, value: string, y: number): readonly Mark[] => {
    const at = left + textWidthMm(label, "plain", smallMm) + 1.4;
    return [
      note(label, left, y, { heightMm: smallMm, grey: 0.35 }),
      fitted(value, at, y, right - at, [boldSmall, ...smallFaces]),
    ];
  };
  return [
    fitted(company, left, base(2), right - left, [boldSmall, ...smallFaces]),
    ...line("Project", project, base(1)),
    ...line("Place", placeOf(where), base(0)),
  ];
}

/** Labels over what they are of, which takes two lines where it needs them. */
function linesBeside({ company, project, ...where }: Settings, { left, right, top }: PaperBox): readonly Mark[] {
  const width = right - left;
  const base = (line: number) => top - 3.5 - line * besideLineMm;
  const twoLines = (text: string, from: number): readonly Mark[] => {
    const isShort = textWidthMm(text, boldSmall.face, boldSmall.heightMm) <= width;
    const lettering = isShort ? boldSmall : ({ face: "narrowBold", heightMm: smallMm } as const);
    const [first = "", ...others] = wrapText(text, lettering.face, lettering.heightMm, width);
    const lines = others.length === 0 ? [first] : [first, others.join(" ")];
    return lines.map((line, index) => fitted(line, left, base(from + index), width, [lettering, ...smallFaces]));
  };
  return [
    ...twoLines(company, 0),
    note("Project", left, base(2), { heightMm: smallMm, grey: 0.35 }),
    ...twoLines(project, 3),
    note("Place", left, base(5), { heightMm: smallMm, grey: 0.35 }),
    ...twoLines(placeOf(where), 6),
  ];
}

function placeOf({ place, county }: Pick<Settings, "place" | "county">): string {
  return [place, county].filter((one) => one !== "").join(", ");
}
