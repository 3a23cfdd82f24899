import { type Book, type Drawn, sheetKinds } from "./book.ts";
import type { Mark, SheetLink } from "./paper/displayList.ts";
import { shortenText } from "./paper/fitText.ts";
import { smallMm, words } from "./paper/marks.ts";
import { textWidthMm } from "./paper/measureText.ts";
import { panelHead, underHead } from "./paper/panel.ts";
import type { PaperBox } from "./paper/paper.ts";
import { cellPart } from "./paper/part.ts";
import { sheetKindWords } from "./sheetKindWords.ts";

type Entry = { readonly number: string; readonly title: string; readonly key: string };

const rowMm = 3.75;
const leastNumberMm = 8;

/** The list of sheets in a column; kinds with many sheets take one line each where the list would not fit. */
export function sheetIndex(book: Book, box: PaperBox): Required<Drawn> {
  const body = underHead(box);
  const roomCount = Math.floor((body.top - body.bottom) / rowMm);
  const entries = fitting(book, roomCount);
  const widths = entries.map((one) => textWidthMm(one.number, "plainBold", smallMm) + 2);
  const numberMm = Math.max(leastNumberMm, ...widths);
  const marks: Mark[] = [...panelHead("Sheets", box)];
  const links: SheetLink[] = [];
  const table = { columnCount: 2 };
  entries.slice(0, roomCount).forEach((entry, index) => {
    const y = body.top - (index + 1) * rowMm + 1;
    const row = { table };
    const title = shortenText(entry.title, "plain", smallMm, box.right - box.left - numberMm - 2);
    marks.push(
      words(entry.number, [box.left + numberMm - 2, y], {
        face: "plainBold",
        heightMm: smallMm,
        align: "right",
        part: cellPart(row, 0, "row"),
      }),
    );
    marks.push(words(title, [box.left + numberMm, y], { heightMm: smallMm, part: cellPart(row, 1) }));
    links.push({ boxMm: [box.left, y - 1, box.right - box.left, rowMm], to: entry.key });
  });
  return { marks, links };
}

function fitting(book: Book, roomCount: number): readonly Entry[] {
  if (book.sheets.length <= roomCount) return book.sheets;
  const withoutTerminals = merged(book, ["terminal"]);
  return withoutTerminals.length <= roomCount ? withoutTerminals : merged(book, sheetKinds);
}

function merged(book: Book, kinds: readonly string[]): readonly Entry[] {
  const entries: Entry[] = [];
  const seen = new Set<string>();
  for (const sheet of book.sheets) {
    if (!kinds.includes(sheet.kind)) {
      entries.push(sheet);
      continue;
    }
    if (seen.has(sheet.kind)) continue;
    seen.add(sheet.kind);
    const same = book.sheets.filter((one) => one.kind === sheet.kind);
    const last = same.at(-1) ?? sheet;
    entries.push(
      same.length === 1
        ? sheet
        : { key: sheet.key, number: `${sheet.number} to ${last.number}`, title: sheetKindWords[sheet.kind] },
    );
  }
  return entries;
}
