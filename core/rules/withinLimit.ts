/** Half a billionth of a unit: the noise of sums in floating point, so that 40 in strung as 40 in is 40 in. */
const noise = 5e-10;

/** Whether a figure is below its limit; one that equals the limit but for noise is not. */
export function isUnder(measured: number, limit: number): boolean {
  return measured < limit - noise;
}

/** Whether a figure is over its limit; one that equals the limit but for noise is not. */
export function isOver(measured: number, limit: number): boolean {
  return measured > limit + noise;
}
