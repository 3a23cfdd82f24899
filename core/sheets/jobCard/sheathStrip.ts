import { formatLength } from "../../units/formatLength.ts";
import type { Mark, PaperPoint } from "../paper/displayList.ts";
import { rectangle, smallMm, stroke, words } from "../paper/marks.ts";
import type { PaperBox } from "../paper/paper.ts";
import type { TerminalFacts } from "./terminalFacts.ts";

/** Height of the strip with its words, mm. */
export const sheathStripMm = 18.5;
const thickMm = 3;

/** The coil's sheath laid straight: where it begins and ends, and what of it is opened, by the marks counted from the feed end. */
export function sheathStrip({ opening, settings }: TerminalFacts, box: PaperBox): readonly Mark[] {
  if (!opening) return [];
  const length = (valueM: number) => formatLength(valueM, settings.unitSystem, "span");
  const y = box.top - 8.5;
  const [left, right] = [box.left + 12, box.right - 12];
  const parts = [0, 0.3, 0.7, 1] as const;
  const x = (part: number) => left + (right - left) * part;
  const marks = [
    { part: parts[0], top: "coil begins", figure: length(opening.coilFromM) },
    { part: parts[1], top: "open from", figure: length(opening.fromM) },
    { part: parts[2], top: "to", figure: length(opening.toM) },
    { part: parts[3], top: "coil ends", figure: length(opening.coilToM) },
  ];
  const bare = (part: number): readonly PaperPoint[] => [
    [x(part), y - thickMm / 2 - 1],
    [x(part), y + thickMm / 2 + 1],
  ];
  return [
    rectangle("cable", "thin", [left - 8, y - thickMm / 2], x(parts[1]) - left + 8, thickMm, { fill: 0.82 }),
    rectangle("cable", "thin", [x(parts[2]), y - thickMm / 2], right + 8 - x(parts[2]), thickMm, { fill: 0.82 }),
    ...[-0.7, 0, 0.7].map((dy) =>
      stroke("cable", "thin", [
        [x(parts[1]), y + dy],
        [x(parts[2]), y + dy],
      ]),
    ),
    words(`opening ${length(opening.toM - opening.fromM)}`, [x(0.5), y + 2], {
      face: "narrowBold",
      heightMm: 2.2,
      align: "middle",
      layer: "tables",
    }),
    ...marks.flatMap(({ part, top, figure }) => [
      stroke("dimensions", "thin", bare(part)),
      words(top, [x(part), y + thickMm / 2 + 2.2], {
        face: "narrow",
        heightMm: smallMm,
        align: "middle",
        layer: "tables",
        grey: 0.2,
      }),
      words(figure, [x(part), y - thickMm / 2 - 4], {
        face: "narrowBold",
        heightMm: 2.4,
        align: "middle",
        layer: "tables",
      }),
    ]),
    words("Sheath marks counted from the feed end, coils included; not to scale", [box.left, box.bottom + 1], {
      heightMm: smallMm,
      layer: "tables",
      grey: 0.35,
    }),
  ];
}
