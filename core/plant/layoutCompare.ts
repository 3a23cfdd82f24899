import { fixedText } from "../units/fixedText.ts";
import { formatLength } from "../units/formatLength.ts";
import { formatLossDb } from "../units/formatLossDb.ts";
import { gapText } from "../units/gapText.ts";
import { moneyText } from "../units/moneyText.ts";
import type { UnitSystem } from "../units/unitSystem.ts";

/** What one holds two layouts of a route against each other by. */
export type LayoutFigures = {
  readonly terminalCount: number;
  readonly servedCount: number;
  readonly unitCount: number;
  /** All terminals and drops, pinned ones too, at the catalogue's prices. */
  readonly cost: number;
  /** What the search had to decide, and its proven bound; null where no layout of the whole stands. */
  readonly searched: { readonly cost: number; readonly bound: number } | null;
  /** All drops together and the longest, in plan, m. */
  readonly dropM: number;
  readonly longestDropM: number;
  /** Ports in use over ports, of the emptiest and of the fullest terminal; null where there is none. */
  readonly fillFrac: readonly [least: number, most: number] | null;
  /** The greatest part of its breaking strength any strand is pulled with, in any case; null where no span could be worked out. */
  readonly strandFrac: number | null;
  /** Light left at the living unit that has least, beyond the company's margin, dB; null where none could be worked out. */
  readonly lightMarginDb: number | null;
};

/** One figure of two layouts in words, and how much more the other has; empty where that says nothing. */
export type ComparedLine = {
  readonly name: string;
  readonly present: string;
  readonly other: string;
  readonly more: string;
};

/** Two layouts side by side, figure by figure, in the reader's units. */
export function compareLayouts(present: LayoutFigures, other: LayoutFigures, units: UnitSystem): ComparedLine[] {
  const line = (
    name: string,
    pick: (of: LayoutFigures) => number | null,
    text: (value: number) => string,
  ): ComparedLine => {
    const [was, is] = [pick(present), pick(other)];
    const told = (value: number | null) => (value === null ? "not known" : text(value));
    const more = was === null || is === null ? null : is - was;
    const moreText = more === null ? "" : text(Math.abs(more));
    const isSame = more === null || moreText === text(0);
    return {
      name,
      present: told(was),
      other: told(is),
      more: isSame ? "" : `${(more ?? 0) > 0 ? "+" : "−"}${moreText}`,
    };
  };
  const whole = (value: number) => fixedText(value, 0);
  const percent = (value: number) => `${fixedText(100 * value, 1)} %`;
  const length = (value: number) => formatLength(value, units, "span");
  const gap = ({ searched }: LayoutFigures) => (searched ? gapText(searched.cost, searched.bound) : "not known");
  return [
    line("Cost", ({ cost }) => cost, moneyText),
    line(
      "Cost by living unit served",
      ({ cost, servedCount }) => (servedCount > 0 ? cost / servedCount : null),
      moneyText,
    ),
    line("Terminals", ({ terminalCount }) => terminalCount, whole),
    line("Living units served", ({ servedCount }) => servedCount, whole),
    line("Drops together", ({ dropM }) => dropM, length),
    line("Longest drop", ({ longestDropM }) => longestDropM, length),
    line("Emptiest terminal, filled", ({ fillFrac }) => fillFrac?.[0] ?? null, percent),
    line("Fullest terminal, filled", ({ fillFrac }) => fillFrac?.[1] ?? null, percent),
    line("Strand, worst part of its breaking strength", ({ strandFrac }) => strandFrac, percent),
    line("Light, least left beyond the margin", ({ lightMarginDb }) => lightMarginDb, formatLossDb),
    { name: "Gap", present: gap(present), other: gap(other), more: "" },
  ];
}
