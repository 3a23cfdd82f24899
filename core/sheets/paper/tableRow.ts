import type { Cell } from "./figure.ts";

export type Column = {
  readonly heading: string;
  /** Unit of the figures below, printed under the heading; empty for words. */
  readonly unit?: string;
  /** Unit of figures that paper prints with theirs, such as 18 ft 6 in; a spreadsheet's heading names it. */
  readonly innerUnit?: string;
  /** What columns beside each other have in common, printed over them. */
  readonly over?: string;
  /** Share of the table's width. */
  readonly share: number;
  readonly align?: "left" | "right";
  /** Whether a long text is broken into lines or cut with an ellipsis; where not given, words at the left are broken, figures at the right cut. */
  readonly wraps?: boolean;
  /** True keeps room before the text of a row for a chip of a colour of the code. */
  readonly chip?: boolean;
};

/** Figures in columns, a heading over the rows that follow, or a sentence across all columns. */
export type TableRow =
  | {
      readonly cells: readonly Cell[];
      /** What was designed and built otherwise, column by column: printed struck over the cell; null and left out for what was not. */
      readonly struck?: readonly (string | null)[];
      /** Colours of the code, one for each column that has chips, left to right; null leaves one out. */
      readonly chips?: readonly (number | null)[];
    }
  /** `of` is the group's name by itself, where its heading says more; `sum` stands under the last column. */
  | { readonly group: string; readonly of?: string; readonly sum?: string }
  | { readonly note: string };

const [emptyBox, tickedBox] = ["□", "☑"] as const;

/** A box to tick, ticked or empty. */
export function tickBox(isTicked: boolean): string {
  return isTicked ? tickedBox : emptyBox;
}

/** Whether a text is a box to tick and nothing else. */
export function isTickBox(text: string): boolean {
  return text === emptyBox || text === tickedBox;
}
