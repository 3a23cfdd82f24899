import { between, type Draw } from "./mulberry32.ts";
import { bearingRadOf, feet, type Point, step } from "./place.ts";
import { planted } from "./planted.ts";

/** A pole of the demo before anything hangs on it. */
export type Stake = Point & {
  readonly tag: string;
  readonly line: LineName;
  readonly order: number;
  /** Pole of the main line a lateral leaves from; empty on every other pole. */
  readonly from: string;
};

export type LineName = "Main" | "Lateral A" | "Lateral B";

type Plan = {
  readonly line: LineName;
  readonly letter: string;
  readonly poleCount: number;
  /** Change of bearing at a pole by its order, degrees, positive to the right. */
  readonly bendsDeg: Readonly<Record<number, number>>;
  /** Lengths of the spans that end at these orders, ft, where the place decides them. */
  readonly spansFt: Readonly<Record<number, number>>;
};

const main: Plan = {
  line: "Main",
  letter: "M",
  poleCount: 30,
  bendsDeg: { 6: 9, 11: -12, 18: 14, 23: -5, 26: -8 },
  spansFt: { 6: 200, 10: 130, 13: planted.shortSpan.lengthFt, 15: 170, 21: 130, 25: 140 },
};
const lateralA: Plan = {
  line: "Lateral A",
  letter: "A",
  poleCount: 11,
  bendsDeg: { 3: -6, 6: 15 },
  spansFt: { 1: 120, 7: 150 },
};
const lateralB: Plan = {
  line: "Lateral B",
  letter: "B",
  poleCount: 9,
  bendsDeg: { 4: 11 },
  spansFt: { 1: 110, 4: 150 },
};

/** Tag of a pole by the letter of its line and its order. */
export function tagOf(letter: string, order: number): string {
  return `${letter}-${String(order).padStart(2, "0")}`;
}

function lay(draw: Draw, plan: Plan, start: Point, startRad: number, from: string): Stake[] {
  const stakes: Stake[] = [];
  let at = start;
  let bearingRad = startRad;
  for (let order = 1; order <= plan.poleCount; order++) {
    const first = order === 1;
    if (!first || from !== "") {
      const lengthM = feet(plan.spansFt[order] ?? Math.round(between(draw, 130, 205)));
      at = step(at, bearingRad, lengthM, 0);
    }
    const stake = { ...at, tag: tagOf(plan.letter, order), line: plan.line, order, from: first ? from : "" };
    stakes.push(stake);
    bearingRad += (((plan.bendsDeg[order] ?? 0) + between(draw, -2, 2)) * Math.PI) / 180;
  }
  return stakes;
}

/** The poles of the main line and of its two laterals, each line in order. */
export function layPoles(draw: Draw): readonly Stake[] {
  const mainStakes = lay(draw, main, { eastM: 0, northM: 0 }, (76 * Math.PI) / 180, "");
  const corner = (tag: string, turnDeg: number): readonly [Stake, number] => {
    const at = mainStakes.findIndex((stake) => stake.tag === tag);
    const [pole, next] = [mainStakes[at], mainStakes[at + 1]];
    if (!pole || !next) throw new Error(`the main line has no corner at ${tag}`);
    return [pole, bearingRadOf(pole, next) + (turnDeg * Math.PI) / 180];
  };
  const [cornerA, bearingA] = corner("M-09", 88);
  const [cornerB, bearingB] = corner("M-20", -94);
  return [
    ...mainStakes,
    ...lay(draw, lateralA, cornerA, bearingA, cornerA.tag),
    ...lay(draw, lateralB, cornerB, bearingB, cornerB.tag),
  ];
}
