import type { SheetKind } from "../../../core/sheets/book.ts";

/** Which sheets are to be drawn: all, the one shown, a range of numbers, or one kind. */
export type SheetChoice =
  | { readonly kind: "all" | "current" }
  | { readonly kind: "range"; readonly text: string }
  | { readonly kind: "sort"; readonly sort: SheetKind };

type Listed = { readonly number: string; readonly kind: SheetKind };

/**
 * Numbers of the sheets chosen, in the order of the set.
 *
 * @param current  number of the sheet shown
 * @returns null where a range cannot be read or names no sheet of the set
 */
export function chosenSheets(
  choice: SheetChoice,
  sheets: readonly Listed[],
  current: string,
): readonly string[] | null {
  const numbers = sheets.map((one) => one.number);
  switch (choice.kind) {
    case "all":
      return numbers;
    case "current":
      return [current];
    case "sort":
      return sheets.filter((one) => one.kind === choice.sort).map((one) => one.number);
    case "range":
      return rangeOf(choice.text, numbers);
  }
}

function rangeOf(text: string, numbers: readonly string[]): readonly string[] | null {
  const wanted = new Set<string>();
  for (const part of text.split(/[,;]/)) {
    const match = /^\s*(\d{1,6})\s*(?:[-\u2013]\s*(\d{1,6})\s*)?$/.exec(part);
    if (!match) return null;
    const first = Number(match[1]);
    const last = Number(match[2] ?? match[1]);
    if (!(first >= 1 && last >= first && last <= numbers.length)) return null;
    for (let position = first; position <= last; position += 1) wanted.add(numbers[position - 1] ?? "");
  }
  return numbers.filter((one) => wanted.has(one));
}
