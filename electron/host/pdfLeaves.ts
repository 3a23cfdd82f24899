import type { Layer, Mark, TextMark } from "../../core/sheets/paper/displayList.ts";
import type { Part } from "../../core/sheets/paper/part.ts";

/** An element of the structure whose content is on a page. */
export type Leaf = {
  readonly tag: "H1" | "P" | "Figure" | "TD" | "TH";
  readonly part: Part;
  /** Numbers of its content on the page. */
  readonly contents: number[];
};

/** What the content of a page asks of its sheet's structure. */
export type PageTags = {
  /** The element a mark belongs to; null where it is not told. */
  readonly leafOf: (mark: Mark) => Leaf | null;
  /** Takes a number for content of an element that begins now. */
  readonly begin: (leaf: Leaf) => number;
};

/** The leaves of a sheet, in the order they are told; those whose content is on the page, by the numbers of that content. */
export type SheetLeaves = PageTags & { readonly all: readonly Leaf[]; readonly owners: readonly Leaf[] };

/** What stands on every sheet: told nowhere, but for a heading there. */
const silent: ReadonlySet<Layer> = new Set(["frame", "watermark"]);

export function leavesOf(marks: readonly Mark[]): SheetLeaves {
  const leaves = new Map<Part | TextMark, Leaf>();
  const owners: Leaf[] = [];
  for (const mark of marks) {
    const key = keyOf(mark);
    if (key === null || leaves.has(key)) continue;
    const part: Part = mark.part ?? { as: "paragraph" };
    leaves.set(key, { tag: tagOf(part), part, contents: [] });
  }
  return {
    all: [...leaves.values()],
    owners,
    leafOf(mark) {
      const key = keyOf(mark);
      return key === null ? null : (leaves.get(key) ?? null);
    },
    begin(leaf) {
      const number = owners.push(leaf) - 1;
      leaf.contents.push(number);
      return number;
    },
  };
}

/** What a mark's leaf is found by; null where the mark is not told. */
function keyOf(mark: Mark): Part | TextMark | null {
  const { part = null } = mark;
  if (silent.has(mark.layer)) return part?.as === "heading" ? part : null;
  return part ?? (mark.kind === "text" ? mark : null);
}

function tagOf(part: Part): Leaf["tag"] {
  switch (part.as) {
    case "heading":
      return "H1";
    case "paragraph":
      return "P";
    case "figure":
      return "Figure";
    case "cell":
      return part.names === null ? "TD" : "TH";
  }
}
