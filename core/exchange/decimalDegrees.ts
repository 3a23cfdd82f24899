/** Degrees as files of places write them: a decimal figure with a point. NaN where the text is none. */
export function decimalDegrees(text: string): number {
  return /^[-+.\de]+$/i.test(text) ? Number(text) : Number.NaN;
}
