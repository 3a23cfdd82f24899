import type { Sheet } from "../../core/sheets/paper/displayList.ts";
import { addElements } from "./pdfElements.ts";
import { leavesOf, type PageTags, type SheetLeaves } from "./pdfLeaves.ts";
import { openPackedObjects } from "./pdfPackedObjects.ts";

/** The structure of a document: its sheets, what each is made of, and the order in which it is told. */
export type Structure = {
  /** Begins the structure of the sheet whose page is open. */
  readonly openSheet: (sheet: Sheet) => PageTags;
  /** What the next link on the open page has to carry. */
  readonly link: (words: string) => object;
  /** Ends the sheet, once content and links are on its page. */
  readonly closeSheet: () => void;
  readonly end: () => void;
};

type Reference = { readonly data: Record<string, unknown> };
type Page = { readonly dictionary: Reference; readonly annotations: readonly Reference[] };
type OpenSheet = {
  readonly title: string;
  readonly page: Page;
  readonly key: number;
  readonly leaves: SheetLeaves;
  readonly links: number[];
};

/**
 * Tags a document: sheets as sections with their heading, tables with rows and cells, drawings with words in their place.
 *
 * @source ISO 32000-1:2008, 14.7 logical structure and 14.8 tagged PDF, from memory
 */
export function openStructure(document: PDFKit.PDFDocument): Structure {
  const packed = openPackedObjects(document);
  const [whole, parents, columnScope] = [packed.number(), packed.number(), packed.number()];
  packed.add(columnScope, "<</O/Table/Scope/Column>>");
  const catalogue: Reference = Reflect.get(document, "_root");
  catalogue.data.MarkInfo = document.ref({ Marked: true });
  catalogue.data.StructTreeRoot = document.ref({
    Type: "StructTreeRoot",
    K: reference(whole),
    ParentTree: reference(parents),
  });
  const sections: number[] = [];
  /** Under a key of a page or a link: the elements that its content belongs to. */
  const owners: string[] = [];
  let open: OpenSheet | null = null;
  return {
    openSheet({ title, marks }) {
      const page: Page = document.page as never; // the library's own fields have no types
      const leaves = leavesOf(marks);
      const key = owners.push("") - 1;
      page.dictionary.data.StructParents = key;
      open = { title, page, key, leaves, links: [] };
      return leaves;
    },
    link(words) {
      const element = packed.number();
      open?.links.push(element);
      return { StructParent: owners.push(`${element} 0 R`) - 1, Contents: new String(words) };
    },
    closeSheet() {
      if (!open) return;
      const { title, page, key, leaves } = open;
      const links = open.links.map((element, index) => ({ element, annotation: String(page.annotations[index]) }));
      const parts = { title, links, page: String(page.dictionary) };
      const { section, numberOf } = addElements(packed, { whole, columnScope }, leaves.all, parts);
      sections.push(section);
      owners[key] = `[${leaves.owners.map((leaf) => `${numberOf.get(leaf)} 0 R`).join(" ")}]`;
    },
    end() {
      packed.add(parents, `<</Nums[${owners.map((one, key) => `${key} ${one}`).join(" ")}]>>`);
      const kids = sections.map((one) => `${one} 0 R`).join(" ");
      packed.add(whole, `<</S/Document/P ${catalogue.data.StructTreeRoot}/K[${kids}]>>`);
    },
  };
}

/** A reference the library prints as it stands. */
function reference(number: number): object {
  return { [Symbol.toStringTag]: "Reference", toString: () => `${number} 0 R` };
}
