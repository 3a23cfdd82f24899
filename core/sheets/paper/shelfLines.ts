import type { Mark } from "./displayList.ts";
import { stroke } from "./marks.ts";
import type { PaperBox } from "./paper.ts";

/** Fine lines under and beside the parts of a sheet that share it, in the middle of the white between them. */
export function shelfLines(parts: readonly PaperBox[], whole: PaperBox, gapMm: number): readonly Mark[] {
  const half = gapMm / 2;
  return parts.flatMap((part) => {
    const isLast = part.bottom - half <= whole.bottom;
    const isRightmost = part.right + half >= whole.right;
    const left = part.left - half <= whole.left ? part.left : part.left - half;
    const right = isRightmost ? part.right : part.right + half;
    const [bottom, top] = [isLast ? part.bottom : part.bottom - half, Math.min(whole.top, part.top + half)];
    return [
      ...(isLast
        ? []
        : [
            stroke("frame", "fine", [
              [left, bottom],
              [right, bottom],
            ]),
          ]),
      ...(isRightmost
        ? []
        : [
            stroke("frame", "fine", [
              [right, bottom],
              [right, top],
            ]),
          ]),
    ];
  });
}
