import { requirePositive } from "../units/guard.ts";

/**
 * The twelve colours, for fibers and tubes alike, in their order.
 *
 * @source TIA-598-C: names seen second-hand, abbreviations from memory
 */
const colours = [
  { name: "blue", abbreviation: "BL" },
  { name: "orange", abbreviation: "OR" },
  { name: "green", abbreviation: "GR" },
  { name: "brown", abbreviation: "BR" },
  { name: "slate", abbreviation: "SL" },
  { name: "white", abbreviation: "WH" },
  { name: "red", abbreviation: "RD" },
  { name: "black", abbreviation: "BK" },
  { name: "yellow", abbreviation: "YL" },
  { name: "violet", abbreviation: "VI" },
  { name: "rose", abbreviation: "RS" },
  { name: "aqua", abbreviation: "AQ" },
] as const;

const tracerCountWords = [
  "",
  "",
  "two ",
  "three ",
  "four ",
  "five ",
  "six ",
  "seven ",
  "eight ",
  "nine ",
  "ten ",
  "eleven ",
] as const;

/** The last position that has a colour here: eleven tracers are more than any cable carries. */
export const lastColourPosition = colours.length * tracerCountWords.length;

/** A colour in words, and in the two letters of the standard with one more pair for each tracer. */
export type Colour = { readonly name: string; readonly abbreviation: string };

/**
 * The colour of the n-th fiber in a tube, or of the n-th tube in a cable.
 *
 * From 13 on the order starts again with a tracer stripe: black, but yellow on black itself; each further dozen adds a stripe:
 * `orange`, `orange with black tracer`, `orange with two black tracers`; `OR`, `OR/BK`, `OR/BK/BK`.
 *
 * @param position from 1 to lastColourPosition, whole
 * @throws RangeError when position is not such a number
 * @source TIA-598-C, seen second-hand; writing the tracers behind a stroke is this program's own habit
 */
export function colourAt(position: number): Colour {
  const tracerCount = Math.floor((position - 1) / colours.length);
  const base = colours[(position - 1) % colours.length];
  const countWord = tracerCountWords[tracerCount];
  if (base === undefined || countWord === undefined) {
    throw new RangeError(`a colour position is a whole number from 1 to ${lastColourPosition}, not ${position}`);
  }
  if (tracerCount === 0) return base;
  const tracer = base.name === "black" ? { name: "yellow", abbreviation: "YL" } : { name: "black", abbreviation: "BK" };
  return {
    name: `${base.name} with ${countWord}${tracer.name} ${tracerCount === 1 ? "tracer" : "tracers"}`,
    abbreviation: [base.abbreviation, ...Array.from({ length: tracerCount }, () => tracer.abbreviation)].join("/"),
  };
}

/** Where a fiber lies in its cable, tubes and fibers counted from 1. */
export type FiberPlace = {
  readonly tube: number;
  readonly tubeColour: string;
  readonly fiberInTube: number;
  readonly fiberColour: string;
};

/**
 * Tube and colours of a fiber by its number in the cable.
 *
 * @param fiber         number in the cable from 1, whole
 * @param fibersPerTube fibers in each tube, whole, 12 in most cables
 * @throws RangeError when an argument is not such a number, or the cable would have more than lastColourPosition tubes
 */
export function fiberPlace(fiber: number, fibersPerTube: number): FiberPlace {
  requireCount("fiber", fiber);
  requireCount("fibersPerTube", fibersPerTube);
  const tube = Math.ceil(fiber / fibersPerTube);
  const fiberInTube = ((fiber - 1) % fibersPerTube) + 1;
  return { tube, tubeColour: colourAt(tube).name, fiberInTube, fiberColour: colourAt(fiberInTube).name };
}

function requireCount(name: string, value: number): void {
  requirePositive(name, value);
  if (!Number.isInteger(value)) throw new RangeError(`${name} must be a whole number, not ${value}`);
}
