import type { Leaf, PageTags } from "./pdfLeaves.ts";

/** Operators that begin a piece of content and end it: a text object, or paths of one style. */
export type Piece = { readonly begin: string; readonly end: string };

/** The nest of a page's content: tags of drawings, pieces in them, and tags of texts in those. */
export type Nest = {
  /**
   * Ends what is open and begins what is not, so that content of an element can follow in a piece.
   *
   * @returns whether the piece begins now
   */
  readonly enter: (leaf: Leaf | null, piece: Piece) => boolean;
  readonly close: () => void;
};

/**
 * Opens a nest that writes to a list of operators.
 *
 * A drawing is tagged around its pieces, as is what is not told: thousands of lines, few tags. A text is tagged within its piece, so
 * that the cells of a table share one text object.
 */
export function openNest(parts: string[], tags: PageTags): Nest {
  let around: Leaf | null | undefined;
  let piece: Piece | null = null;
  let within: Leaf | null = null;
  const leave = (next: Leaf | null | undefined, nextPiece: Piece | null, nextWithin: Leaf | null): void => {
    const isOut = around !== next;
    const isOver = piece !== null && (isOut || piece.begin !== nextPiece?.begin);
    if (within !== null && (isOver || within !== nextWithin)) {
      parts.push("EMC");
      within = null;
    }
    if (piece !== null && isOver) {
      parts.push(piece.end);
      piece = null;
    }
    if (isOut && around !== undefined) parts.push("EMC");
    if (isOut) around = undefined;
  };
  const tag = (leaf: Leaf | null): string =>
    leaf === null ? "/Artifact BMC" : `/${leaf.tag}<</MCID ${tags.begin(leaf)}>>BDC`;
  return {
    enter(leaf, nextPiece) {
      const isAround = leaf === null || leaf.tag === "Figure";
      leave(isAround ? leaf : undefined, nextPiece, isAround ? null : leaf);
      if (isAround && around === undefined) {
        parts.push(tag(leaf));
        around = leaf;
      }
      const isFirst = piece === null;
      if (isFirst) parts.push(nextPiece.begin);
      piece = nextPiece;
      if (!isAround && within === null) {
        parts.push(tag(leaf));
        within = leaf;
      }
      return isFirst;
    },
    close: () => leave(undefined, null, null),
  };
}
