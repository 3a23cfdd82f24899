import { fixedText } from "../../units/fixedText.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";

/** Ground length over paper length, and how the title block says it. */
export type Scale = { readonly denominator: number; readonly text: string };

const usFeetPerInch = [20, 30, 40, 50, 60, 100, 200, 300, 400, 500, 600, 800, 1000, 1500, 2000, 4000] as const;
const metricDenominators = [200, 250, 500, 1000, 2000, 5000, 10_000, 20_000] as const;
const usFeetPerInchFar = [6000, 8000, 10_000, 20_000, 50_000, 100_000, 200_000, 500_000] as const;
const metricDenominatorsFar = [50_000, 100_000, 200_000, 500_000, 1_000_000, 2_000_000, 5_000_000] as const;
const usFeetPerInchUp = [5, 10] as const;
const metricDenominatorsUp = [50, 100] as const;
const inchesPerFoot = 12;

/**
 * The scales a plan may be drawn at, largest drawing first.
 *
 * @source US engineer's scales: trade practice; metric: ISO 5455 series 1-2-5 from memory, with 1:250 besides
 */
export function planScales(system: UnitSystem): readonly Scale[] {
  return system === "us" ? usFeetPerInch.map(usScale) : metricDenominators.map(metricScale);
}

/** The scales a map of a whole route may be drawn at, largest drawing first: those of plans, and on until a country fits. */
function mapScales(system: UnitSystem): readonly Scale[] {
  const far = system === "us" ? usFeetPerInchFar.map(usScale) : metricDenominatorsFar.map(metricScale);
  return [...planScales(system), ...far];
}

function usScale(feet: number): Scale {
  return { denominator: feet * inchesPerFoot, text: `1 in = ${feet} ft` };
}

function metricScale(denominator: number): Scale {
  return { denominator, text: `1:${fixedText(denominator, 0)}` };
}

/** The scales heights may be drawn at, largest drawing first. */
export function heightScales(system: UnitSystem): readonly Scale[] {
  const large = system === "us" ? usFeetPerInchUp.map(usScale) : metricDenominatorsUp.map(metricScale);
  return [...large, ...planScales(system)];
}

/** Ground length on paper, mm. */
export function paperMm(groundM: number, scale: Scale): number {
  return (groundM * 1000) / scale.denominator;
}

/** The largest drawing of a whole ground of this size that fits, or the smallest drawing where none does. */
export function scaleToFit(
  system: UnitSystem,
  widthM: number,
  heightM: number,
  widthMm: number,
  heightMm: number,
): Scale {
  const scales = mapScales(system);
  const fits = scales.find((one) => paperMm(widthM, one) <= widthMm && paperMm(heightM, one) <= heightMm);
  const last = fits ?? scales.at(-1);
  if (!last) throw new Error("there is no scale to draw at");
  return last;
}
