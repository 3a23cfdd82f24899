import newtonRaphson from "newton-raphson-method";
import { Solver } from "odex";
import type { ChangeOfState } from "../../core/strand/changeOfState.ts";
import type { LoadedSpan } from "../../core/strand/loadedSpan.ts";

/** A span hung by numerical integration: no closed formula of a cable is in it. */
export type IntegratedSpan = {
  readonly heightsM: readonly number[];
  readonly nearSlope: number;
  readonly lengthM: number;
  /** integral of the tension along the strand, Nm: over the stiffness it is the elastic stretch */
  readonly tensionAlongNxM: number;
};

/**
 * Hangs a span by integrating the cable equation y'' = (w / H) sqrt(1 + y'^2) from the near support, with a kink of P / H at each
 * point load, and shooting for the slope that meets the far support.
 *
 * @param atM stations of the heights wanted, m, rising, within the span
 */
export function integrateSpan(span: LoadedSpan, atM: readonly number[] = []): IntegratedSpan {
  const missM = (nearSlope: number) => shoot(span, nearSlope, []).heightM - span.riseM;
  const nearSlope = newtonRaphson(missM, span.riseM / span.spanM, { tolerance: 1e-12, h: 1e-3, maxIterations: 100 });
  if (nearSlope === false) throw new Error("no slope at the near support meets the far one");
  const { heightsM, lengthM, tensionAlongNxM } = shoot(span, nearSlope, atM);
  return { heightsM, nearSlope, lengthM, tensionAlongNxM };
}

/** Tension after a change of state, N: the tension at which the strand, its stretch taken off, is as long as it was. */
export function integrateChangeOfState({ spanM, riseM = 0, axialStiffnessN, ...change }: ChangeOfState): number {
  const restLengthM = (state: ChangeOfState["to"], horizontalN: number) => {
    const { lengthM, tensionAlongNxM } = integrateSpan({ ...state, spanM, riseM, horizontalN });
    return lengthM - tensionAlongNxM / axialStiffnessN;
  };
  const warmerDegC = change.to.temperatureDegC - change.from.temperatureDegC;
  const wantedM = restLengthM(change.from, change.from.horizontalN) * (1 + change.expansionPerDegC * warmerDegC);
  const missM = (logN: number) => restLengthM(change.to, Math.exp(logN)) - wantedM;
  const logN = newtonRaphson(missM, Math.log(change.from.horizontalN), {
    tolerance: 1e-10,
    h: 1e-4,
    maxIterations: 100,
  });
  if (logN === false) throw new Error("no tension gives the strand its length");
  return Math.exp(logN);
}

function shoot(
  { spanM, weightNPerM, horizontalN, pointLoads = [] }: LoadedSpan,
  nearSlope: number,
  atM: readonly number[],
) {
  const solver = new Solver(4);
  solver.relativeTolerance = 1e-13;
  solver.absoluteTolerance = 1e-13;
  const derivative = (_x: number, [slope = 0]: readonly number[]) => {
    const stretch = Math.hypot(1, slope);
    return [(weightNPerM / horizontalN) * stretch, slope, stretch, horizontalN * stretch ** 2];
  };
  const kinks = new Map<number, number>();
  for (const load of pointLoads) kinks.set(load.atM, (kinks.get(load.atM) ?? 0) + load.weightN / horizontalN);
  const stops = [...new Set([...kinks.keys(), ...atM, spanM])].sort((a, b) => a - b);
  const heightAt = new Map<number, number>();
  let x = 0;
  let y = [nearSlope, 0, 0, 0];
  for (const stop of stops) {
    if (stop > x) y = solver.solve(derivative, x, y, stop).y;
    heightAt.set(stop, y[1] ?? Number.NaN);
    y = [(y[0] ?? Number.NaN) + (kinks.get(stop) ?? 0), ...y.slice(1)];
    x = stop;
  }
  const [, heightM = Number.NaN, lengthM = Number.NaN, tensionAlongNxM = Number.NaN] = y;
  return { heightM, lengthM, tensionAlongNxM, heightsM: atM.map((at) => heightAt.get(at) ?? Number.NaN) };
}
