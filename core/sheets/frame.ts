import type { Revision, Settings } from "../model/tables.ts";
import { sheetCaution } from "./cautions.ts";
import { jobCell } from "./jobCard/jobCell.ts";
import type { Mark, PaperPoint } from "./paper/displayList.ts";
import { shortenText, wrapText } from "./paper/fitText.ts";
import { rectangle, smallMm, stroke } from "./paper/marks.ts";
import { textWidthMm } from "./paper/measureText.ts";
import { type Paper, type PaperBox, titleBandMm } from "./paper/paper.ts";
import type { Picture } from "./paper/picture.ts";
import { fitted, labelled, note, smallFaces } from "./paper/titleText.ts";

/** What a title block says. */
type TitleBlock = {
  readonly paper: Paper;
  readonly settings: Settings;
  /** Revisions by letter, oldest first. */
  readonly revisions: readonly Revision[];
  readonly sheetTitle: string;
  readonly scale: string;
  readonly number: string;
  readonly sheetCount: number;
  /** The one the sheet shows as it was issued; null where it shows none. */
  readonly revision: Revision | null;
  /** What the sheet is called where its revision stands: `B`, `after B`, `none`. */
  readonly revisionText: string;
  /** The company's own picture; null where it has none. */
  readonly logo: Picture | null;
  /** What stands in its way to being built from; also across the sheet. */
  readonly stamps: readonly string[];
};

/** Widths of the title block's cells, mm: usual ones, and least ones on narrow paper; wide paper gives the rest to the cautions. */
const usualMm = { cautions: 104, revisions: 100, job: 64, sheet: 106, number: 30 } as const;
const leastMm = { cautions: 56, revisions: 60, job: 42, sheet: 76, number: 17 } as const;
type Cell = keyof typeof usualMm;
const padMm = 2.5;

/** Where the title block lies on a paper: its edges and the left edge of each cell. */
type Band = PaperBox & { readonly cells: Readonly<Record<Cell, number>> };

function bandOf({ border }: Paper): Band {
  const sum = (widths: Readonly<Record<Cell, number>>) => Object.values(widths).reduce((all, one) => all + one, 0);
  const room = (border.right - border.left - sum(leastMm)) / (sum(usualMm) - sum(leastMm));
  const width = (cell: Cell) => leastMm[cell] + (usualMm[cell] - leastMm[cell]) * Math.min(1, Math.max(0, room));
  const number = border.right - width("number");
  const sheetLeft = number - width("sheet");
  const jobLeft = sheetLeft - width("job");
  const revisionsLeft = jobLeft - width("revisions");
  return {
    ...border,
    top: border.bottom + titleBandMm,
    cells: { cautions: border.left, revisions: revisionsLeft, job: jobLeft, sheet: sheetLeft, number },
  };
}

/** Height of the words that keep a sheet from being built from, where the paper has room, mm. */
const stampMm = 3.2;

/** Border and title block of a sheet. */
export function frame(block: TitleBlock): readonly Mark[] {
  const band = bandOf(block.paper);
  const { left, right, bottom, top, cells } = band;
  return [
    rectangle("frame", "thick", [left, bottom], right - left, block.paper.border.top - bottom),
    stroke("frame", "bold", [
      [left, top],
      [right, top],
    ]),
    ...[cells.revisions, cells.job, cells.sheet, cells.number].map((x) =>
      stroke("frame", "thin", [
        [x, bottom],
        [x, top],
      ]),
    ),
    ...cautions(block, band),
    ...revisions(block, band),
    ...jobCell(block, { left: cells.job + padMm, right: cells.sheet - padMm, top, bottom }),
    ...sheet(block, band),
    ...number(block, band),
  ];
}

function cautions(block: TitleBlock, { cells, bottom, top }: Band): readonly Mark[] {
  const x = cells.cautions + padMm;
  const width = cells.revisions - cells.cautions - 2 * padMm;
  const lines = wrapText(sheetCaution, "plain", smallMm, width).map((text, index) =>
    note(text, x, top - 4.6 - index * 3.2, { heightMm: smallMm }),
  );
  if (block.stamps.length === 0) return lines;
  return [
    ...lines,
    rectangle("frame", "bold", [x, bottom + 2], width, 6.4),
    ...stamps(block, [x + width / 2, bottom + 2], width),
  ];
}

/** On one line where the paper is wide enough, else one under the other. */
function stamps(block: TitleBlock, [middle, bottom]: PaperPoint, width: number): readonly Mark[] {
  const texts = block.stamps.map((text) => text.toUpperCase());
  const written = texts.join(" · ");
  const face = "plainBold";
  if (texts.length === 1 || textWidthMm(written, face, stampMm) < width - 3)
    return [note(written, middle, bottom + 1.6, { face, heightMm: stampMm, align: "middle" })];
  return texts.map((text, line) =>
    note(text, middle, bottom + 3.8 - 3 * line, { face, heightMm: smallMm, align: "middle" }),
  );
}

/** Columns of the revisions; the reason takes what is left. */
const revisionColumns = [
  { heading: "Rev", leastMm: 7, names: 0 },
  { heading: "Date", leastMm: 16, names: 0 },
  { heading: "By", leastMm: 11, names: 1 },
  { heading: "Checked", leastMm: 14, names: 1 },
  { heading: "Reason", leastMm: 0, names: 0 },
] as const;
/** Where the cell is wide, each column of names has as much more at most, mm. */
const moreMm = 5;
const revisionRows = 4;
const revisionRowMm = 5;

function revisions(block: TitleBlock, { cells, bottom, top }: Band): readonly Mark[] {
  const marks: Mark[] = [];
  const base = (row: number) => top - 5 - row * revisionRowMm;
  const cellMm = cells.job - cells.revisions;
  const more = Math.min(moreMm, (cellMm - leastMm.revisions) / 8);
  let left = 0;
  const columns = revisionColumns.map(({ heading, leastMm: least, names }) => {
    const at = left;
    left += least + names * more;
    return { heading, at, widthMm: (least === 0 ? cellMm : left) - at };
  });
  for (const column of columns) {
    marks.push(
      note(column.heading, cells.revisions + column.at + 1.4, base(0) + 1.2, { heightMm: smallMm, grey: 0.35 }),
    );
    if (column.at > 0) {
      const x = cells.revisions + column.at;
      marks.push(
        stroke("frame", "fine", [
          [x, bottom],
          [x, top],
        ]),
      );
    }
  }
  for (let row = 0; row < revisionRows; row += 1) {
    marks.push(
      stroke("frame", "fine", [
        [cells.revisions, base(row)],
        [cells.job, base(row)],
      ]),
    );
  }
  block.revisions.slice(-revisionRows).forEach((one, row) => {
    const reason = one.voidedBy === "" ? one.reason : `Void: ${one.voidReason}`;
    const values = [one.letter, one.dateIso, one.by, one.checkedBy, reason];
    columns.forEach((column, index) => {
      const text = shortenText(values[index] ?? "", "narrow", 2.1, column.widthMm - 2);
      marks.push(note(text, cells.revisions + column.at + 1.4, base(row + 1) + 1.5, { face: "narrow", heightMm: 2.1 }));
    });
  });
  return marks;
}

function sheet(block: TitleBlock, { cells, top }: Band): readonly Mark[] {
  const x = cells.sheet + padMm;
  const width = cells.number - cells.sheet - 2 * padMm;
  const { settings } = block;
  const shown = block.revision;
  const titleMm = textWidthMm(block.sheetTitle, "narrowBold", 3.4) <= width ? 3.4 : 2.8;
  const title = shortenText(block.sheetTitle, "narrowBold", titleMm, width);
  const grid = settings.originLonDeg === null ? "local grid" : "local transverse Mercator, WGS 84";
  const datum = settings.datum === "" ? grid : `${settings.datum}; ${grid}`;
  const head = [settings.routeName, settings.titleLine].filter((one) => one !== "").join("   ·   ");
  return [
    fitted(head, x, top - 4.8, width, [{ face: "plain", heightMm: 2.4 }, ...smallFaces]),
    note(title, x, top - 10.6, { face: "narrowBold", heightMm: titleMm, part: { as: "heading" } }),
    stroke("frame", "fine", [
      [cells.sheet, top - 13],
      [cells.number, top - 13],
    ]),
    ...[
      ["Scale", block.scale],
      ["Date", shown?.dateIso ?? ""],
      ["Drawn", shown?.by ?? ""],
      ["Checked", shown?.checkedBy ?? ""],
    ].flatMap(([label = "", value = ""], index) =>
      labelled(label, value, x + (index * (width + 2)) / 4, top - 15.6, (width + 2) / 4 - 2),
    ),
    note(shortenText(`Datum and grid: ${datum}`, "plain", smallMm, width), x, top - 25, {
      heightMm: smallMm,
      grey: 0.2,
    }),
  ];
}

function number(block: TitleBlock, { cells, top, right }: Band): readonly Mark[] {
  const middle = (cells.number + right) / 2;
  const room = right - cells.number - 2;
  return [
    note("Sheet", middle, top - 3.9, { heightMm: smallMm, align: "middle", grey: 0.35 }),
    note(block.number, middle, top - 13, { face: "narrowBold", heightMm: 7, align: "middle" }),
    note(`of ${block.sheetCount}`, middle, top - 18, { heightMm: 2.2, align: "middle" }),
    stroke("frame", "fine", [
      [cells.number, top - 20],
      [right, top - 20],
    ]),
    fitted(
      block.revisionText,
      middle,
      top - 24.7,
      room,
      [{ face: "plainBold", heightMm: 2.4 }, ...smallFaces],
      "middle",
    ),
  ];
}
