import type { Mark, PaperPoint } from "./displayList.ts";
import { drawLabel, type LabelLine } from "./labels.ts";
import type { PaperBox } from "./paper.ts";
import { type Candidate, openPlacer, type Placer } from "./placer.ts";

/** A piece of paper being drawn: what is taken on it, and what is drawn so far. */
export type LabelDesk = {
  readonly box: PaperBox;
  readonly placer: Placer;
  readonly draw: (marks: readonly Mark[]) => void;
  /** A label to be placed after all symbols; lower rank first. */
  readonly label: (
    rank: number,
    lines: readonly LabelLine[],
    anchor: PaperPoint,
    candidates: readonly Candidate[],
    far?: readonly Candidate[],
  ) => void;
  readonly drawWaitingLabels: () => void;
  readonly omittedCount: () => number;
  readonly marks: () => readonly Mark[];
};

/** An empty piece of paper. */
export function openLabelDesk(box: PaperBox): LabelDesk {
  const drawn: Mark[] = [];
  const placer = openPlacer([box.left, box.bottom, box.right, box.top]);
  let waiting: {
    rank: number;
    lines: readonly LabelLine[];
    anchor: PaperPoint;
    candidates: readonly Candidate[];
    far: readonly Candidate[];
  }[] = [];
  let omitted = 0;
  return {
    box,
    placer,
    draw: (marks) => {
      drawn.push(...marks);
    },
    label: (rank, lines, anchor, candidates, far = []) => {
      waiting.push({ rank, lines, anchor, candidates, far });
    },
    drawWaitingLabels() {
      for (const { lines, anchor, candidates, far } of [...waiting].sort((a, b) => a.rank - b.rank)) {
        const marks = drawLabel(placer, lines, anchor, candidates, far);
        if (marks) drawn.push(...marks);
        else omitted += 1;
      }
      waiting = [];
    },
    omittedCount: () => omitted,
    marks: () => drawn,
  };
}
