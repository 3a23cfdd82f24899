import type { SheetKind } from "../../core/sheets/book.ts";
import { grouped } from "../../core/sheets/paper/quantityText.ts";
import { sheetKindWords } from "../../core/sheets/sheetKindWords.ts";

/** How far a job is: steps done of steps known, and what it is doing. */
export type Progress = { readonly doneCount: number; readonly totalCount: number; readonly words: string };

type OnProgress = (progress: Progress) => void;

/** What a set that is drawn goes through; each takes a like part of the time, and of the bar. */
const stages = ["drafts", "sheets", "files"] as const;

/** Tells how far a set is while it is drawn. How many sheets it has is known once every kind has its drafts: until then kinds are counted. */
export function drawingProgress(onProgress: OnProgress): {
  readonly onKind: (kind: SheetKind, number: number, count: number) => void;
  readonly onSheet: (doneCount: number, totalCount: number) => void;
  readonly onWritten: (doneCount: number, totalCount: number) => void;
} {
  const tell = (stage: (typeof stages)[number], doneFrac: number, words: string): void =>
    onProgress({ doneCount: stages.indexOf(stage) + doneFrac, totalCount: stages.length, words });
  return {
    onKind: (kind, number, count) =>
      tell("drafts", (number - 1) / count, `${sheetKindWords[kind]}, kind ${number} of ${count}`),
    onSheet: (doneCount, totalCount) => tell("sheets", doneCount / totalCount, sheetWords(doneCount, totalCount)),
    onWritten: (doneCount, totalCount) =>
      tell("files", doneCount / totalCount, `writing ${sheetWords(doneCount, totalCount)}`),
  };
}

/** One job of several after each other, each with a like part of the bar and its own word before what it tells. */
export function partOf(onProgress: OnProgress, index: number, count: number, name: string): OnProgress {
  return ({ doneCount, totalCount, words }) =>
    onProgress({ doneCount: index + doneCount / totalCount, totalCount: count, words: `${name}, ${words}` });
}

function sheetWords(number: number, count: number): string {
  return `sheet ${grouped(number)} of ${grouped(count)}`;
}
