import type { CellPart, Part, ToldRow, ToldTable } from "../../core/sheets/paper/part.ts";
import type { Leaf } from "./pdfLeaves.ts";
import type { PackedObjects } from "./pdfPackedObjects.ts";

/** Objects the elements of all sheets share. */
export type SharedObjects = {
  /** The element that holds all sheets. */
  readonly whole: number;
  /** Attributes of a cell that names those under it. */
  readonly columnScope: number;
};

/** What a page gives its elements: its own object, and those of the links on it with their words. */
export type PageParts = {
  readonly page: string;
  readonly title: string;
  readonly links: readonly { readonly annotation: string; readonly element: number }[];
};

/**
 * Adds the elements of one sheet: a section with its heading, then paragraphs, drawings and tables as they are drawn, then its links.
 *
 * @returns the section's number, and the number of each leaf
 */
export function addElements(
  packed: PackedObjects,
  shared: SharedObjects,
  leaves: readonly Leaf[],
  { page, title, links }: PageParts,
): { readonly section: number; readonly numberOf: ReadonlyMap<Leaf, number> } {
  const section = packed.number();
  const numberOf = new Map<Leaf, number>();
  const element = (number: number, tag: string, parent: number, rest: string): number => {
    packed.add(number, `<</S/${tag}/P ${parent} 0 R${rest}>>`);
    return number;
  };
  const leafElement = (leaf: Leaf, parent: number): number => {
    const number = packed.number();
    numberOf.set(leaf, number);
    return element(number, leaf.tag, parent, `${attributes(leaf.part, shared)}/Pg ${page}/K ${listed(leaf.contents)}`);
  };
  const tableElement = (rows: ReadonlyMap<ToldRow, readonly Cell[]>, { columnCount }: ToldTable): number => {
    const table = packed.number();
    const kids = [...rows.values()].map((cells) => {
      const row = packed.number();
      const told = wholeRow(cells, columnCount).map((cell) =>
        cell ? leafElement(cell.leaf, row) : element(packed.number(), "TD", row, ""),
      );
      return element(row, "TR", table, `/K ${references(told)}`);
    });
    return element(table, "Table", section, `/K ${references(kids)}`);
  };
  const kids = inOrder(leaves).map((one) =>
    one.kind === "table" ? tableElement(one.rows, one.table) : leafElement(one.leaf, section),
  );
  const linked = links.map((one) =>
    element(one.element, "Link", section, `/Pg ${page}/K<</Type/OBJR/Obj ${one.annotation}>>`),
  );
  element(section, "Sect", shared.whole, `/T ${pdfText(title)}/K ${references([...kids, ...linked])}`);
  return { section, numberOf };
}

type Cell = { readonly leaf: Leaf; readonly part: CellPart };

type Told =
  | { readonly kind: "leaf"; readonly leaf: Leaf }
  | { readonly kind: "table"; readonly table: ToldTable; readonly rows: Map<ToldRow, Cell[]> };

/** Headings first, then every leaf where it stands, cells gathered in their tables. */
function inOrder(leaves: readonly Leaf[]): readonly Told[] {
  const tables = new Map<ToldTable, Map<ToldRow, Cell[]>>();
  const told = leaves.flatMap((leaf): readonly Told[] => {
    const { part } = leaf;
    if (part.as !== "cell") return [{ kind: "leaf", leaf }];
    const { row } = part;
    const known = tables.get(row.table);
    const rows = known ?? new Map<ToldRow, Cell[]>();
    tables.set(row.table, rows);
    rows.set(row, [...(rows.get(row) ?? []), { leaf, part }]);
    return known ? [] : [{ kind: "table", table: row.table, rows }];
  });
  const isHeading = (one: Told) => one.kind === "leaf" && one.leaf.part.as === "heading";
  return [...told.filter(isHeading), ...told.filter((one) => !isHeading(one))];
}

/** The cells of a row from the first column to the last; null where nothing stands in a column. */
function wholeRow(cells: readonly Cell[], columnCount: number): readonly (Cell | null)[] {
  const row: (Cell | null)[] = [];
  let column = 0;
  while (column < columnCount) {
    const cell = cells.find((one) => one.part.column === column) ?? null;
    row.push(cell);
    column += cell?.part.spans ?? 1;
  }
  return row;
}

function attributes(part: Part, { columnScope }: SharedObjects): string {
  if (part.as === "figure") return `/Alt ${pdfText(part.words)}`;
  if (part.as !== "cell") return "";
  if (part.names === "column") return `/A ${columnScope} 0 R`;
  const scope = part.names === "row" ? "/Scope/Row" : "";
  const spans = part.spans > 1 ? `/ColSpan ${part.spans}` : "";
  return scope + spans === "" ? "" : `/A<</O/Table${scope}${spans}>>`;
}

/** Numbers of content: one by itself, more in a list. */
function listed(numbers: readonly number[]): string {
  return numbers.length === 1 ? String(numbers[0]) : `[${numbers.join(" ")}]`;
}

function references(numbers: readonly number[]): string {
  return `[${numbers.map((one) => `${one} 0 R`).join(" ")}]`;
}

/** A text as the format tells it: in brackets, or as UTF-16 where it has more than ASCII. */
function pdfText(text: string): string {
  if (/^[ -~]*$/.test(text)) return `(${text.replace(/[()\\]/g, "\\$&")})`;
  return `<FEFF${Buffer.from(text, "utf16le").swap16().toString("hex")}>`;
}
