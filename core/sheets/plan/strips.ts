import type { Plant } from "../../plant/plant.ts";
import type { SpanRun } from "../../plant/spanRuns.ts";
import { boundsOf } from "../paper/orientedBox.ts";
import type { PaperBox } from "../paper/paper.ts";
import { cutFrac } from "./cutFrac.ts";
import { stripScale } from "./stripScale.ts";
import { contentPoints, linePoints, type StripStep, unitsOn } from "./stripStep.ts";
import { type StripGround, stripView } from "./stripView.ts";
import { unitsBySpan } from "./unitsBySpan.ts";
import { toPaper, type View } from "./view.ts";

/** A piece of a run that fits one sheet. */
export type Strip = {
  readonly key: string;
  readonly cableId: string | null;
  /** Distance along the cable where the strip starts and ends, m. */
  readonly startM: number;
  readonly endM: number;
  readonly steps: readonly StripStep[];
  readonly view: View;
  /** Left, bottom, right and top of the line on the strip's own paper, mm. */
  readonly lineBounds: readonly [number, number, number, number];
  /** The same of the line with its living units. */
  readonly contentBounds: readonly [number, number, number, number];
  readonly unitIds: readonly string[];
  /** Keys of the strips that the match lines lead to; null at a run's end. */
  readonly before: string | null;
  readonly after: string | null;
};

type Piece = { readonly steps: readonly StripStep[]; readonly view: View };

/** Living units this many times farther off than nine in ten are do not stretch a strip. */
const outlierFactor = 1.35;
/** A bent strip takes a whole sheet where that carries it on by this many spans. */
const worthSpanCount = 2;

/**
 * The whole route cut into strips, each turned so that its line runs across the paper. Where houses stand near enough to the line,
 * strips are cut for half the box, so that two share a sheet.
 */
export function strips(plant: Plant, runs: readonly SpanRun[], whole: PaperBox): readonly Strip[] {
  const units = unitsBySpan(plant);
  const { scale, box, reachM } = stripScale(plant, runs, units, whole);
  const ground = { plant, units, scale, farthestM: Math.min(reachM * outlierFactor, plant.settings().dropReachM) };
  return runs.flatMap((run, index) => named(ground, run, `strip-${index + 1}`, cutRun(ground, run, box, whole)));
}

function cutRun(ground: StripGround, run: SpanRun, box: PaperBox, whole: PaperBox): readonly Piece[] {
  const cuts = run.steps.map((step) => cutFrac(ground.plant, step));
  const pieces: Piece[] = [];
  for (let first = 0; ; ) {
    const continued = pieces.length > 0;
    const steps = (last: number) => stepsOf(run, cuts, first, last, continued);
    const least = continued ? first + 1 : first;
    const reach = (on: PaperBox) => {
      let last = least;
      while (last + 1 < run.steps.length && stripView(ground, steps(last + 1), on).fits) last += 1;
      return last;
    };
    const [low, tall] = [reach(box), reach(whole)];
    const last = tall >= low + worthSpanCount && low <= least ? tall : low;
    pieces.push({ steps: steps(last), view: stripView(ground, steps(last), last === low ? box : whole).view });
    if (last === run.steps.length - 1) return pieces;
    first = last;
  }
}

/** Steps first to last: the first from its cut on where a strip comes before, the last up to its cut where more follow. */
function stepsOf(
  run: SpanRun,
  cuts: readonly number[],
  first: number,
  last: number,
  continued: boolean,
): readonly StripStep[] {
  return run.steps.slice(first, last + 1).map((step, index) => ({
    ...step,
    startFrac: index === 0 && continued ? (cuts[first] ?? 0.5) : 0,
    endFrac: first + index === last && last < run.steps.length - 1 ? (cuts[last] ?? 0.5) : 1,
  }));
}

function named(
  { plant, units, farthestM }: StripGround,
  run: SpanRun,
  key: string,
  pieces: readonly Piece[],
): readonly Strip[] {
  const keyOf = (index: number) => (index >= 0 && index < pieces.length ? `${key}-${index + 1}` : null);
  let startM = run.startM;
  return pieces.map((piece, index) => {
    const lengthM = piece.steps.reduce((sum, step) => sum + step.lengthM * (step.endFrac - step.startFrac), 0);
    const strip: Strip = {
      ...piece,
      lineBounds: boundsOf(linePoints(plant, piece.steps).map((one) => toPaper(piece.view, one))),
      contentBounds: boundsOf(
        contentPoints(plant, piece.steps, units, farthestM).map((one) => toPaper(piece.view, one)),
      ),
      key: keyOf(index) ?? key,
      cableId: run.cableId,
      startM,
      endM: startM + lengthM,
      unitIds: piece.steps.flatMap((step) => unitsOn(plant, step, units)),
      before: keyOf(index - 1),
      after: keyOf(index + 1),
    };
    startM += lengthM;
    return strip;
  });
}
