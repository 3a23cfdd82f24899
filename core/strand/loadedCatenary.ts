import { requireFinite } from "../units/guard.ts";
import { type LoadedSpan, requireLoadedSpan } from "./loadedSpan.ts";
import { type PointLoad, requireInSpan } from "./pointLoad.ts";
import { type Settled, tensionNotSettled } from "./settled.ts";
import { supportPulls } from "./supportPulls.ts";

/** How a loaded span hangs, exactly: pieces of catenaries that meet at its loads. */
export type LoadedCatenary = {
  /** below the chord at a station, m, positive down */
  readonly sagM: (atM: number) => number;
  readonly lengthM: number;
  /** integral of the tension along the strand, Nm: over the stiffness of the strand it is its elastic stretch */
  readonly tensionAlongNxM: number;
  readonly nearTensionN: number;
  readonly farTensionN: number;
};

const stepLimit = 50;
const settledSlope = 1e-9;

/**
 * Hangs a span under its weight and its point loads by the catenary, supports at any two heights.
 *
 * Exact for a strand without stiffness whose load is even along itself. The slope at the near support is searched for by Newton's
 * method from that of the parabola: at most 3 steps in 120000 spans of 20 to 80 m with sags of 0.6 to 3 %, rises up to 0.4 of the
 * span and up to two loads of 900 N.
 *
 * @returns or a fault when the search did not settle, as in spans whose sag is of the size of the span
 * @throws RangeError when the span cannot hang
 * @source between two loads asinh of the slope falls by w dx / H, at a load the slope falls by P / H; checked by integration in
 *   tests/standards/pointLoads.test.ts
 */
export function loadedCatenary(span: LoadedSpan): Settled<LoadedCatenary> {
  requireLoadedSpan(span);
  const loads = [...(span.pointLoads ?? [])].sort((a, b) => a.atM - b.atM);
  let nearSlope = Math.asinh(Math.tan(supportPulls(span).nearSlopeRad));
  for (let step = 1; step <= stepLimit; step += 1) {
    const far = walk(span, loads, nearSlope, span.spanM);
    const change = (far.dropM + span.riseM) / far.dropPerSlopeM;
    nearSlope -= change;
    if (Math.abs(change) <= settledSlope) return { ok: true, value: settled(span, loads, nearSlope) };
  }
  return tensionNotSettled(stepLimit);
}

function settled(span: LoadedSpan, loads: readonly PointLoad[], nearSlope: number): LoadedCatenary {
  const { spanM, riseM, horizontalN } = span;
  const far = walk(span, loads, nearSlope, spanM);
  return {
    sagM(atM) {
      requireInSpan("atM", atM, spanM);
      return requireFinite("sagM", riseM * (atM / spanM) + walk(span, loads, nearSlope, atM).dropM);
    },
    lengthM: requireFinite("lengthM", far.lengthM),
    tensionAlongNxM: requireFinite("tensionAlongNxM", far.tensionAlongNxM),
    nearTensionN: requireFinite("nearTensionN", horizontalN * Math.cosh(nearSlope)),
    farTensionN: requireFinite("farTensionN", horizontalN * Math.cosh(far.slope)),
  };
}

/** The strand followed from the near support to a station. */
type Followed = {
  readonly atM: number;
  /** asinh of the slope, positive downward */
  readonly slope: number;
  /** below the near support */
  readonly dropM: number;
  readonly lengthM: number;
  readonly tensionAlongNxM: number;
  /** how slope and drop here change with the slope at the near support */
  readonly slopePerSlope: number;
  readonly dropPerSlopeM: number;
};

function walk(span: LoadedSpan, loads: readonly PointLoad[], nearSlope: number, toM: number): Followed {
  let at: Followed = {
    atM: 0,
    slope: nearSlope,
    dropM: 0,
    lengthM: 0,
    tensionAlongNxM: 0,
    slopePerSlope: 1,
    dropPerSlopeM: 0,
  };
  for (const load of loads) {
    if (load.atM >= toM) break;
    at = passLoad(follow(span, at, load.atM), load.weightN / span.horizontalN);
  }
  return follow(span, at, toM);
}

function follow({ weightNPerM, horizontalN }: LoadedSpan, from: Followed, toM: number): Followed {
  const parameterM = horizontalN / weightNPerM;
  const runM = toM - from.atM;
  const slope = from.slope - runM / parameterM;
  const middle = (from.slope + slope) / 2;
  const chordM = 2 * parameterM * Math.sinh(runM / (2 * parameterM));
  const pieceM = chordM * Math.cosh(middle);
  const twiceRunM = runM + parameterM * Math.sinh(runM / parameterM) * Math.cosh(2 * middle);
  return {
    atM: toM,
    slope,
    dropM: from.dropM + chordM * Math.sinh(middle),
    lengthM: from.lengthM + pieceM,
    tensionAlongNxM: from.tensionAlongNxM + (horizontalN / 2) * twiceRunM,
    slopePerSlope: from.slopePerSlope,
    dropPerSlopeM: from.dropPerSlopeM + from.slopePerSlope * pieceM,
  };
}

function passLoad(at: Followed, slopeLost: number): Followed {
  const slope = Math.asinh(Math.sinh(at.slope) - slopeLost);
  return { ...at, slope, slopePerSlope: at.slopePerSlope * (Math.cosh(at.slope) / Math.cosh(slope)) };
}
