import type { SheetKind } from "../../core/sheets/book.ts";
import type { Sheet } from "../../core/sheets/paper/displayList.ts";
import { sheetKindWords } from "../../core/sheets/sheetKindWords.ts";

/** A bookmark: its words and the page it leads to, counted from 0. */
export type Bookmark = { readonly words: string; readonly page: number; readonly under: readonly Bookmark[] };

/** Bookmarks of sheets in their order: one for each kind of sheet, its sheets under it; a kind with one sheet is that sheet. */
export function bookmarksOf(sheets: readonly Sheet[]): readonly Bookmark[] {
  const byKind = new Map<SheetKind, Bookmark[]>();
  for (const [page, { kind, number, title, names = [title] }] of sheets.entries()) {
    const own = names.map((name) => ({ words: `${number}  ${name}`, page, under: [] }));
    byKind.set(kind, [...(byKind.get(kind) ?? []), ...own]);
  }
  return [...byKind].flatMap(([kind, own]) => {
    const [first] = own;
    return first && own.length > 1 ? [{ words: sheetKindWords[kind], page: first.page, under: own }] : own;
  });
}

/** What the library takes beyond what its types tell. */
type Leads = { readonly expanded?: boolean; readonly pageNumber: number; readonly fit: boolean };

/** Puts bookmarks on a document whose pages are all there; those with others under them are closed. */
export function addBookmarks(outline: PDFKit.PDFOutline, bookmarks: readonly Bookmark[]): void {
  for (const { words, page, under } of bookmarks) {
    const options: Leads = { pageNumber: page, fit: true };
    const item = outline.addItem(words, options);
    addBookmarks(item, under);
    const entries: Record<string, unknown> = Reflect.get(item, "outlineData"); // the library tells no count of closed ones
    if (under.length > 0) entries.Count = -under.length;
  }
}
