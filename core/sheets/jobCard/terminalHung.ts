import { climbingSpace } from "../../plant/climbingSpace.ts";
import type { Plant } from "../../plant/plant.ts";
import { formatLength } from "../../units/formatLength.ts";
import type { Mark, PaperPoint } from "../paper/displayList.ts";
import { slant } from "../paper/furniture.ts";
import { area, smallMm, stroke, words } from "../paper/marks.ts";
import type { PaperBox } from "../paper/paper.ts";
import { nailMm, nailSymbol } from "../paper/pinSymbols.ts";
import { struckWords } from "../paper/struckWords.ts";
import { coilRadiusMm, coilSymbol, terminalBar, terminalBarMm } from "../paper/symbols.ts";
import { portTicks } from "../plan/planHung.ts";
import type { TerminalFacts } from "./terminalFacts.ts";

/** The sketch of a terminal's place: what is drawn and where its pole, ground and strand lie on paper. */
export type Scene = {
  readonly plant: Plant;
  readonly facts: TerminalFacts;
  readonly box: PaperBox;
  readonly poleX: number;
  readonly groundY: number;
  readonly strandY: number;
};

/** Paper for a metre along the strand beside the pole, so that the standard distance reads well. */
const mmPerM = 28;
const farthestMm = 40;
const enlargement = 2.1;

/** The terminal under the strand with its dimension, the climbing space and the coil. */
export function hungMarks(scene: Scene): readonly Mark[] {
  const { plant, facts, poleX, strandY } = scene;
  const ticks = portTicks(plant, facts.terminal.id);
  const atX = poleX + Math.min(farthestMm, facts.place.fromPoleM * mmPerM);
  const size = terminalBarMm(ticks);
  const corner: PaperPoint = [atX - 0.8, strandY - 5 - size.height];
  const hangers = [-0.6, 0.6].map((dx) =>
    stroke("terminals", "medium", [
      [atX + dx, strandY],
      [atX + dx, strandY - 5],
    ]),
  );
  const pin: PaperPoint = [
    corner[0] + size.width * enlargement + 1.8,
    strandY - 5 - (size.height * enlargement + nailMm.height) / 2,
  ];
  return [
    ...hangers,
    ...(facts.terminal.pinned ? nailSymbol("terminals", pin) : []),
    ...enlarged(terminalBar(ticks, corner), [atX - 0.8, strandY - 5]),
    words(
      facts.terminal.name,
      [atX - 0.8 + (size.width * enlargement) / 2, strandY - 5 - size.height * enlargement - 4.6],
      {
        face: "narrowBold",
        heightMm: 3,
        align: "middle",
      },
    ),
    ...standoffMarks(scene, atX),
    ...climbingMarks(scene),
    ...coilMarks(scene, atX + size.width * enlargement),
  ];
}

/** Marks made larger round a point. */
function enlarged(marks: readonly Mark[], [x, y]: PaperPoint): readonly Mark[] {
  const grown = (point: PaperPoint): PaperPoint => [x + (point[0] - x) * enlargement, y + (point[1] - y) * enlargement];
  return marks.map((mark) => (mark.kind === "line" ? { ...mark, pointsMm: mark.pointsMm.map(grown) } : mark));
}

function standoffMarks({ facts, poleX, strandY }: Scene, atX: number): readonly Mark[] {
  const y = strandY + 10;
  const middle: PaperPoint = [(poleX + atX) / 2, y + 1.2];
  const text = (m: number): string => formatLength(m, facts.settings.unitSystem, "offset");
  const built = text(facts.place.fromPoleM);
  const designed = facts.designed && text(facts.designed.fromPoleM);
  return [
    stroke(
      "dimensions",
      "fine",
      [
        [poleX, strandY + 2],
        [poleX, y + 1.5],
      ],
      { dashMm: [3, 0.8, 0.6, 0.8] },
    ),
    stroke("dimensions", "fine", [
      [atX, strandY + 1],
      [atX, y + 1.5],
    ]),
    stroke("dimensions", "thin", [
      [poleX, y],
      [atX, y],
    ]),
    slant([poleX, y], 0),
    slant([atX, y], 0),
    words(built, middle, { face: "narrowBold", heightMm: 3, align: "middle" }),
    ...(designed === null || designed === built
      ? []
      : struckWords(designed, [middle[0], middle[1] + 4.4], { face: "narrowBold", heightMm: 3, align: "middle" })),
  ];
}

function climbingMarks({ plant, facts, poleX, groundY, strandY }: Scene): readonly Mark[] {
  const { spaceM } = climbingSpace(plant, facts.place.poleId);
  if (spaceM === 0) return [];
  const x = poleX + spaceM * mmPerM;
  const bottom = (groundY + strandY) / 2 - 3;
  return [
    stroke(
      "dimensions",
      "fine",
      [
        [x, strandY - 1.8],
        [x, bottom],
      ],
      { dashMm: [1.2, 0.8] },
    ),
    stroke("dimensions", "fine", [
      [poleX, bottom + 1.5],
      [x, bottom + 1.5],
    ]),
    words(`climbing space ${formatLength(spaceM, facts.settings.unitSystem, "offset")}`, [poleX + 2.6, bottom - 3], {
      face: "narrow",
      heightMm: smallMm,
    }),
    area(
      "dimensions",
      null,
      [
        [x, bottom + 1.5],
        [x - 1.8, bottom + 2],
        [x - 1.8, bottom + 1],
      ],
      { fill: 0 },
    ),
  ];
}

function coilMarks({ plant, facts, poleX, strandY, box }: Scene, afterX: number): readonly Mark[] {
  const { coil, terminal, place, settings } = facts;
  if (!coil) return [];
  const span = plant.rowOf("span", coil.spanId);
  const atPole = span.fromPoleId === place.poleId || span.toPoleId === place.poleId;
  const fromPoleM = span.fromPoleId === place.poleId ? coil.offsetM : span.lengthM - coil.offsetM;
  const sameSide = coil.spanId === terminal.spanId;
  if (!atPole) return [];
  const away = Math.min(farthestMm, fromPoleM * mmPerM);
  const x = sameSide
    ? Math.min(box.right - 21, Math.max(afterX + 8, poleX + away))
    : poleX - Math.min(34, Math.max(12, away));
  const text = (m: number): string => `coil ${formatLength(m, settings.unitSystem, "span")}`;
  const built = text(coil.storedM);
  const designed = facts.designed?.storedM == null ? built : text(facts.designed.storedM);
  const isRedlined = designed !== built;
  const downMm = isRedlined ? 3.6 : 0;
  const centre: PaperPoint = [x, strandY - 6 + downMm - coilRadiusMm * 2];
  const grown = coilSymbol(centre).map((mark) =>
    mark.kind === "line"
      ? {
          ...mark,
          pointsMm: mark.pointsMm.map(([px, py]): PaperPoint => [x + (px - x) * 2, centre[1] + (py - centre[1]) * 2]),
        }
      : mark,
  );
  const distance = formatLength(fromPoleM, settings.unitSystem, fromPoleM < 1.6 ? "offset" : "height");
  return [
    stroke("slack", "thin", [
      [x, strandY],
      [x, centre[1] + coilRadiusMm * 2],
    ]),
    ...grown,
    ...(isRedlined
      ? struckWords(designed, [x, centre[1] - 8], { face: "narrowBold", heightMm: 2, align: "middle" })
      : []),
    words(built, [x, centre[1] - 7.6 - downMm], { face: "narrowBold", heightMm: 2.4, align: "middle" }),
    words(`${distance} from pole`, [x, centre[1] - 11.4 - downMm], { face: "narrow", heightMm: 2.2, align: "middle" }),
  ];
}
