import type { Mark } from "../paper/displayList.ts";
import { rectangle, smallMm, stroke, words } from "../paper/marks.ts";
import type { PaperBox } from "../paper/paper.ts";

const cornerMm = 4;

/** An empty frame for a photo, its corners marked, with what it is to show. */
export function photoBox(text: string, { left, right, top, bottom }: PaperBox): readonly Mark[] {
  const corners = [
    [left, bottom, 1, 1],
    [right, bottom, -1, 1],
    [right, top, -1, -1],
    [left, top, 1, -1],
  ] as const;
  return [
    rectangle("tables", "fine", [left, bottom], right - left, top - bottom),
    ...corners.map(([x, y, inwards, upwards]) =>
      stroke("tables", "medium", [
        [x + inwards * cornerMm, y],
        [x, y],
        [x, y + upwards * cornerMm],
      ]),
    ),
    words(text, [(left + right) / 2, (top + bottom) / 2 - smallMm / 2], {
      heightMm: smallMm,
      align: "middle",
      layer: "tables",
      grey: 0.45,
    }),
  ];
}
