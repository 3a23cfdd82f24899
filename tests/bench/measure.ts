/** One measured figure: a time in milliseconds, or a ratio of two times taken in the same run. */
export type Figures = Record<string, number>;

/**
 * Median time of several runs.
 *
 * @param before  made ready anew for each run, outside the time measured
 */
export async function medianMs<T>(
  runCount: number,
  before: () => T | Promise<T>,
  work: (ready: T) => unknown,
): Promise<number> {
  const times: number[] = [];
  for (let run = 0; run < runCount; run += 1) {
    const ready = await before();
    const start = performance.now();
    await work(ready);
    times.push(performance.now() - start);
  }
  return median(times);
}

/** Middle of several figures. */
export function median(figures: readonly number[]): number {
  return [...figures].sort((a, b) => a - b)[Math.floor(figures.length / 2)] ?? Number.NaN;
}

/** A figure as it is printed and kept: three figures that count. */
export function rounded(value: number): number {
  return Number(value.toPrecision(3));
}
