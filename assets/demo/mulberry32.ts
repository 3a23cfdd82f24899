/** Draws the next number of a stream, 0 <= x < 1. */
export type Draw = () => number;

/**
 * A small seeded stream of numbers: the same seed gives the same stream on every machine.
 *
 * @param seed  any whole number; its lowest 32 bits count
 * @source mulberry32, a public-domain generator with 32 bits of state
 */
export function mulberry32(seed: number): Draw {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A number drawn evenly between two bounds. */
export function between(draw: Draw, low: number, high: number): number {
  return low + (high - low) * draw();
}
