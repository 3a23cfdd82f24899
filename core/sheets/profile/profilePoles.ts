import { poleTopM, type StandingPole } from "../../plant/profile.ts";
import { strandAtPole } from "../../plant/strandHeight.ts";
import { formatLength } from "../../units/formatLength.ts";
import { redlined } from "../asBuilt/redlined.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { type LabelLine, labelSizeMm } from "../paper/labels.ts";
import { circle, smallMm, stroke, words } from "../paper/marks.ts";
import type { Candidate } from "../paper/placer.ts";
import { stationText } from "../paper/quantityText.ts";
import { attachmentWords } from "../tradeWords.ts";
import { bandCount, bandMm, type ProfileDesk } from "./profilePaper.ts";

const dotMm = 0.75;

/** Poles to their height with everybody's attachments, and what the bands under the chart tell of each. */
export function drawProfilePoles(desk: ProfileDesk): void {
  const system = desk.plant.settings().unitSystem;
  for (const pole of desk.row.poles) {
    const [foot, top] = [desk.at(pole.stationM, pole.footM), desk.at(pole.stationM, poleTopM(pole))];
    desk.draw([stroke("poles", "thick", [foot, top], { dashMm: pole.aboveGroundM === null ? [2, 1.2] : [] })]);
    desk.draw([
      stroke("ground", "fine", [foot, [foot[0], desk.chart.bottom - bandCount * bandMm]], { dashMm: [0.3, 0.9] }),
    ]);
    desk.placer.block([
      [foot[0] - 0.4, foot[1]],
      [foot[0] + 0.4, foot[1]],
      [top[0] + 0.4, top[1]],
      [top[0] - 0.4, top[1]],
    ]);
    for (const one of pole.attachments) drawAttachment(desk, pole, one);
    const ground = pole.groundM === null ? "not measured" : formatLength(pole.groundM, system, "height");
    band(desk, 0, foot[0], { text: pole.tag, face: "narrowBold", heightMm: 2.2 });
    band(desk, 1, foot[0], { text: stationText(pole.stationM, system), face: "narrow", heightMm: smallMm });
    band(desk, 2, foot[0], { text: ground, face: "narrow", heightMm: smallMm });
  }
}

const bandNames = ["Pole, span", "Station", "Ground"] as const;

/** The bands under the chart: their rules and names. */
export function drawBands(desk: ProfileDesk): void {
  const { chart, row, plant, at, draw, placer } = desk;
  const system = plant.settings().unitSystem;
  for (let index = 0; index <= bandCount; index += 1) {
    const y = chart.bottom - index * bandMm;
    draw([
      stroke("frame", index === 0 ? "bold" : "fine", [
        [chart.left, y],
        [chart.right, y],
      ]),
    ]);
  }
  bandNames.forEach((text, index) => {
    const y = chart.bottom - (index + 0.5) * bandMm - smallMm / 2;
    draw([words(text, [chart.left - 1.4, y], { face: "narrow", heightMm: smallMm, align: "right", grey: 0.3 })]);
  });
  placer.block([
    [chart.left - 15, chart.bottom - bandCount * bandMm],
    [chart.left, chart.bottom - bandCount * bandMm],
    [chart.left, chart.bottom],
    [chart.left - 15, chart.bottom],
  ]);
  for (const { startM, span } of row.steps) {
    const [[from], [to]] = [at(startM, 0), at(startM + span.lengthM, 0)];
    const text = formatLength(span.lengthM, system, "span");
    if (to - from > 34 && from > chart.left)
      band(desk, 0, (from + to) / 2, { text, face: "narrow", heightMm: smallMm });
  }
}

/** Words in a band, under the place they tell of or beside it. */
function band({ chart, label }: ProfileDesk, index: number, x: number, line: LabelLine): void {
  const y = chart.bottom - (index + 0.5) * bandMm;
  const { width } = labelSizeMm([line]);
  const shifts = [0, width / 2, -width / 2, width, -width, 1.5 * width, -1.5 * width];
  const candidates = shifts.map((mm) => ({ centre: [x + mm, y] as const, turnRad: 0, cost: Math.abs(mm) / 4 }));
  label(-1, [line], [x, y], candidates);
}

/** How high our strand was designed where it was built at this height, m; null where it is drawn as designed, or as one of several. */
function designedHeightM({ plant, designed }: ProfileDesk, poleId: string, builtM: number): number | null {
  if (!designed?.row("pole", poleId) || strandAtPole(plant, poleId).heightM !== builtM) return null;
  return strandAtPole(designed, poleId).heightM;
}

function drawAttachment(
  desk: ProfileDesk,
  pole: StandingPole,
  { kind, owner, heightM }: StandingPole["attachments"][number],
): void {
  const isOurs = kind === "ourStrand";
  const at = desk.at(pole.stationM, pole.footM + heightM);
  desk.draw([circle("poles", "thin", at, dotMm, isOurs ? 0 : 1)]);
  const name = isOurs ? "ours" : attachmentWords[kind] || owner;
  const told = (valueM: number): string =>
    `${name} ${formatLength(valueM, desk.plant.settings().unitSystem, "height")}`;
  const designed = isOurs ? designedHeightM(desk, pole.poleId, heightM) : null;
  const lines: readonly LabelLine[] =
    designed === null
      ? [{ text: told(heightM), face: isOurs ? "narrowBold" : "narrow", heightMm: smallMm }]
      : redlined(told(heightM), told(designed)).map((line) => ({ ...line, face: "narrowBold" }));
  const { width, height } = labelSizeMm(lines);
  const spot = (side: number, mm: number, cost: number) => {
    const centre: PaperPoint = [at[0] + side * (width / 2 + 1.8), at[1] + mm];
    return { centre, turnRad: 0, cost };
  };
  const up = height / 2 + 0.4;
  const candidates = [up, 0, -up, 1.6 * up, -1.6 * up, 2.3 * up, -2.3 * up].flatMap((mm, rank) => [
    spot(1, mm, rank * 0.8),
    spot(-1, mm, rank * 0.8 + 0.4),
  ]);
  desk.label(isOurs ? 2 : 3, lines, at, candidates, besidePole(desk, at, width));
}

/** Places well beside a pole, below first: over it a leader would lie on the pole, and its label be taken for that of a higher wire. */
function besidePole({ row, at }: ProfileDesk, [x, y]: PaperPoint, widthMm: number): readonly Candidate[] {
  const others = row.poles.map((one) => at(one.stationM, 0)[0] - x).filter((mm) => Math.abs(mm) > 0.1);
  const isOpen = (side: number) => others.every((mm) => side * mm < 0 || Math.abs(mm) > 12);
  const sides = [1, -1].filter(isOpen);
  return (sides.length > 0 ? sides : [1, -1]).flatMap((side) =>
    [7, 11, 15, 20, 26].flatMap((outMm) =>
      [-6, -9, -12, -15, -18, 6, 9].map((mm) => ({
        centre: [x + side * (outMm + widthMm / 2), y + mm] as const,
        turnRad: 0,
        cost: outMm / 2 + (mm < 0 ? -mm : 2 * mm),
      })),
    ),
  );
}
