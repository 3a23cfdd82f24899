import type { Plant } from "../../plant/plant.ts";
import {
  type Profile,
  type ProfileStep,
  type ProfileWay,
  poleTopM,
  profileAlong,
  type StandingPole,
} from "../../plant/profile.ts";
import { byName, byText } from "../../plant/sorting.ts";
import type { SpanRun } from "../../plant/spanRuns.ts";
import type { PaperBox } from "../paper/paper.ts";
import { paperMm, type Scale } from "../paper/scale.ts";

/** Spans of one cable, or of bare strand, that are shown from the side in one piece. */
export type ProfileRow = {
  readonly key: string;
  readonly way: ProfileWay;
  readonly startM: number;
  readonly endM: number;
  readonly steps: readonly ProfileStep[];
  readonly poles: readonly StandingPole[];
  /** Keys of the rows that go on at both ends; null at a run's end. */
  readonly before: string | null;
  readonly after: string | null;
};

/** The drawing space of a sheet, how rows are scaled on it, and the paper one may take across and, for that many spans, up, mm. */
export type RowPaper = {
  readonly drawing: PaperBox;
  /** Lines of a row of the table under the chart. */
  readonly rowLines: 1 | 2;
  readonly across: Scale;
  readonly up: Scale;
  readonly widthMm: number;
  readonly heightMm: (spanCount: number) => number;
};

/** Lowest and highest elevation of what a row shows, m. */
export function heightRange({ poles, steps }: Pick<ProfileRow, "poles" | "steps">): readonly [number, number] {
  const tops = steps.flatMap(({ span }) => [...span.crossings, ...span.structures].flatMap((one) => one.topM ?? []));
  const ground = steps.flatMap(({ span }) => (span.ground ?? []).map((one) => one.groundM));
  const lines = steps.flatMap(({ span }) => span.line?.iced ?? []);
  const all = [...poles.flatMap((one) => [one.footM, poleTopM(one)]), ...tops, ...ground, ...lines];
  return [Math.min(...all), Math.max(...all)];
}

/** A run along one way, from the side, not yet cut. */
type Whole = Pick<ProfileRow, "way" | "steps" | "poles"> & {
  readonly ranges: readonly (readonly [number, number])[];
};

/**
 * Every span with strand once, along its cable or, where none is lashed yet, along its strand section, from the side, cut at poles into
 * rows that fit a sheet across and up. Of the papers offered the first that needs the fewest rows is taken.
 */
export function profileRows(
  plant: Plant,
  runs: readonly SpanRun[],
  offered: readonly RowPaper[],
): { readonly rows: readonly ProfileRow[]; readonly paper: RowPaper } | null {
  const wholes = [...runs.flatMap((run) => ofCable(plant, run)), ...bareStrands(plant)];
  const [best] = offered
    .map((paper) => ({ paper, count: wholes.reduce((sum, one) => sum + cut(one, paper).length, 0) }))
    .sort((a, b) => a.count - b.count);
  if (!best) return null;
  return { paper: best.paper, rows: wholes.flatMap((whole, index) => rowsOf(whole, index + 1, best.paper)) };
}

function ofCable(plant: Plant, { cableId, startM, steps: taken }: SpanRun): readonly Whole[] {
  if (cableId === null) return [];
  const profile = profileAlong(plant, { table: "cable", id: cableId });
  const first = profile.steps.findIndex((one) => one.startM === startM && one.span.spanId === taken[0]?.spanId);
  return [wholeOf(profile, profile.steps.slice(first, first + taken.length))];
}

/** Strand without a cable, section by section, each piece that hangs together by itself. */
function bareStrands(plant: Plant): readonly Whole[] {
  const sections = plant.all("strandSection").map((id) => plant.rowOf("strandSection", id));
  return sections
    .sort((a, b) => byName(a.name, b.name) || byText(a.id, b.id))
    .flatMap(({ id }) => {
      const profile = profileAlong(plant, { table: "strandSection", id });
      const pieces: ProfileStep[][] = [];
      for (const step of profile.steps) {
        const piece = pieces.at(-1);
        if (piece?.at(-1)?.outPoleId === step.inPoleId) piece.push(step);
        else pieces.push([step]);
      }
      return pieces.map((steps) => wholeOf(profile, steps));
    });
}

function wholeOf({ way, poles: all }: Profile, steps: readonly ProfileStep[]): Whole {
  const poles = polesOf(all, steps);
  const ranges = steps.map((step) => heightRange({ steps: [step], poles: polesOf(poles, [step]) }));
  return { way, steps, poles, ranges };
}

/** The poles at the ends of steps; where a way is broken, another piece may begin at the same station. */
function polesOf(poles: readonly StandingPole[], steps: readonly ProfileStep[]): readonly StandingPole[] {
  const [startM, endM] = [startOf(steps), endOf(steps)];
  const ends = new Set(steps.flatMap((step) => [step.inPoleId, step.outPoleId]));
  return poles.filter((one) => ends.has(one.poleId) && one.stationM >= startM - 1e-6 && one.stationM <= endM + 1e-6);
}

function rowsOf(whole: Whole, number: number, paper: RowPaper): readonly ProfileRow[] {
  const pieces = evenly(whole, paper);
  const keyOf = (at: number) => (at >= 0 && at < pieces.length ? `profile-${number}-${at + 1}` : null);
  return pieces.map((steps, at) => ({
    key: keyOf(at) ?? "",
    way: whole.way,
    steps,
    poles: polesOf(whole.poles, steps),
    startM: startOf(steps),
    endM: endOf(steps),
    before: keyOf(at - 1),
    after: keyOf(at + 1),
  }));
}

/** Parts of a sheet's width that rows are tried on, narrowest first. */
const evenParts = [0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95];

/** As few rows as fit, and those as even as that many allow. */
function evenly(whole: Whole, paper: RowPaper): readonly (readonly ProfileStep[])[] {
  const fewest = cut(whole, paper);
  const narrower = evenParts
    .map((part) => cut(whole, { ...paper, widthMm: paper.widthMm * part }))
    .find((pieces) => pieces.length === fewest.length);
  return narrower ?? fewest;
}

function cut(
  { steps, ranges }: Whole,
  { across, up, widthMm, heightMm }: RowPaper,
): readonly (readonly ProfileStep[])[] {
  const pieces: ProfileStep[][] = [];
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  steps.forEach((step, index) => {
    const [stepLow, stepHigh] = ranges[index] ?? [0, 0];
    const piece = pieces.at(-1);
    const [lowest, highest] = [Math.min(low, stepLow), Math.max(high, stepHigh)];
    const fits =
      piece !== undefined &&
      paperMm(endOf([step]) - startOf(piece), across) <= widthMm &&
      paperMm(highest - lowest, up) <= heightMm(piece.length + 1);
    if (fits) piece.push(step);
    else pieces.push([step]);
    [low, high] = fits ? [lowest, highest] : [stepLow, stepHigh];
  });
  return pieces;
}

function startOf(steps: readonly ProfileStep[]): number {
  return steps[0]?.startM ?? 0;
}

function endOf(steps: readonly ProfileStep[]): number {
  const last = steps.at(-1);
  return last ? last.startM + last.span.lengthM : 0;
}
