import type { Revision, Settings } from "../model/tables.ts";
import { sheetCaution } from "./cautions.ts";
import type { Mark } from "./displayList.ts";
import { shortenText, wrapText } from "./fitText.ts";
import { type Lettering, rectangle, smallMm, stroke, words } from "./marks.ts";
import { textWidthMm } from "./measureText.ts";
import { borderBox, titleBandMm } from "./paper.ts";

/** What a title block says. */
type TitleBlock = {
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
  /** What stands in its way to being built from; also across the sheet. */
  readonly stamps: readonly string[];
};

const top = borderBox.bottom + titleBandMm;
/** Left edges of the title block's cells, mm: cautions, revisions, job, sheet, number. */
const cells = {
  cautions: borderBox.left,
  revisions: borderBox.left + 104,
  job: borderBox.left + 204,
  sheet: borderBox.left + 268,
  number: borderBox.left + 374,
} as const;
const padMm = 2.5;

/** Border and title block of a sheet. */
export function frame(block: TitleBlock): readonly Mark[] {
  const { left, right, bottom } = borderBox;
  return [
    rectangle("frame", "thick", [left, bottom], right - left, borderBox.top - bottom),
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
    ...cautions(block),
    ...revisions(block),
    ...job(block),
    ...sheet(block),
    ...number(block),
  ];
}

function cautions(block: TitleBlock): readonly Mark[] {
  const x = cells.cautions + padMm;
  const width = cells.revisions - cells.cautions - 2 * padMm;
  const lines = wrapText(sheetCaution, "plain", smallMm, width).map((text, index) =>
    note(text, x, top - 4.6 - index * 3.2, { heightMm: smallMm }),
  );
  if (block.stamps.length === 0) return lines;
  return [
    ...lines,
    rectangle("frame", "bold", [x, borderBox.bottom + 2], width, 6.4),
    note(block.stamps.join(" · ").toUpperCase(), x + width / 2, borderBox.bottom + 3.6, {
      face: "plainBold",
      heightMm: 3.2,
      align: "middle",
    }),
  ];
}

const revisionColumns = [
  { heading: "Rev", at: 0, width: 8 },
  { heading: "Date", at: 8, width: 18 },
  { heading: "By", at: 26, width: 14 },
  { heading: "Checked", at: 40, width: 14 },
  { heading: "Reason", at: 54, width: 46 },
] as const;
const revisionRows = 4;
const revisionRowMm = 5;

function revisions(block: TitleBlock): readonly Mark[] {
  const marks: Mark[] = [];
  const base = (row: number) => top - 5 - row * revisionRowMm;
  for (const column of revisionColumns) {
    marks.push(
      note(column.heading, cells.revisions + column.at + 1.6, base(0) + 1.2, { heightMm: smallMm, grey: 0.35 }),
    );
    if (column.at > 0) {
      const x = cells.revisions + column.at;
      marks.push(
        stroke("frame", "fine", [
          [x, borderBox.bottom],
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
    revisionColumns.forEach((column, index) => {
      const text = shortenText(values[index] ?? "", "narrow", 2.1, column.width - 2.2);
      marks.push(note(text, cells.revisions + column.at + 1.6, base(row + 1) + 1.5, { face: "narrow", heightMm: 2.1 }));
    });
  });
  return marks;
}

function job({ settings }: TitleBlock): readonly Mark[] {
  const x = cells.job + padMm;
  const width = cells.sheet - cells.job - 2 * padMm;
  const place = [settings.place, settings.county].filter((one) => one !== "").join(", ");
  return [
    ...labelled("Company", settings.company, x, top - 3.6, width),
    ...labelled("Project", settings.project, x, top - 12, width),
    ...labelled("Place", place, x, top - 20.4, width),
  ];
}

function sheet(block: TitleBlock): readonly Mark[] {
  const x = cells.sheet + padMm;
  const width = cells.number - cells.sheet - 2 * padMm;
  const { settings } = block;
  const shown = block.revision;
  const titleMm = textWidthMm(block.sheetTitle, "narrowBold", 3.4) <= width ? 3.4 : 2.8;
  const title = shortenText(block.sheetTitle, "narrowBold", titleMm, width);
  const route = shortenText(settings.routeName, "plain", 2.4, width);
  const grid = settings.originLonDeg === null ? "local grid" : "local transverse Mercator, WGS 84";
  const datum = settings.datum === "" ? grid : `${settings.datum}; ${grid}`;
  return [
    note(route, x, top - 4.8, { heightMm: 2.4 }),
    note(title, x, top - 10.6, { face: "narrowBold", heightMm: titleMm }),
    stroke("frame", "fine", [
      [cells.sheet, top - 13],
      [cells.number, top - 13],
    ]),
    ...labelled("Scale", block.scale, x, top - 15.6, 22),
    ...labelled("Date", shown?.dateIso ?? "", x + 25, top - 15.6, 18),
    ...labelled("Drawn", shown?.by ?? "", x + 46, top - 15.6, 26),
    ...labelled("Checked", shown?.checkedBy ?? "", x + 75, top - 15.6, 26),
    note(shortenText(`Datum and grid: ${datum}`, "plain", smallMm, width), x, top - 25, {
      heightMm: smallMm,
      grey: 0.2,
    }),
  ];
}

function number(block: TitleBlock): readonly Mark[] {
  const middle = (cells.number + borderBox.right) / 2;
  return [
    note("Sheet", middle, top - 3.9, { heightMm: smallMm, align: "middle", grey: 0.35 }),
    note(block.number, middle, top - 13, { face: "narrowBold", heightMm: 7, align: "middle" }),
    note(`of ${block.sheetCount}`, middle, top - 18, { heightMm: 2.2, align: "middle" }),
    stroke("frame", "fine", [
      [cells.number, top - 20],
      [borderBox.right, top - 20],
    ]),
    note(shortenText(block.revisionText, "plainBold", 2.4, 25), middle, top - 24.7, {
      face: "plainBold",
      heightMm: 2.4,
      align: "middle",
    }),
  ];
}

function labelled(label: string, value: string, x: number, y: number, widthMm: number): readonly Mark[] {
  return [
    note(label, x, y, { heightMm: smallMm, grey: 0.35 }),
    note(shortenText(value, "plainBold", 2.3, widthMm), x, y - 4, { face: "plainBold", heightMm: 2.3 }),
  ];
}

function note(text: string, x: number, y: number, lettering: Lettering): Mark {
  return words(text, [x, y], { layer: "frame", ...lettering });
}
