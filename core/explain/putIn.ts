import type { Explanation } from "./explanation.ts";

/** A formula with its numbers put in, in SI units: `2.95 · 45² / (8 · 1659)`. */
export function putIn({ formula, inputs }: Pick<Explanation, "formula" | "inputs">): string {
  const values = new Map(inputs.map((one) => [one.symbol, one.value]));
  return formula.replace(/[A-Za-z]+\d*/g, (symbol) => {
    const value = values.get(symbol);
    if (value === undefined) throw new Error(`no input of the name ${symbol}`);
    return value < 0 ? `(${shortText(value)})` : shortText(value);
  });
}

/** Six figures are more than a tape or a scale gives. */
function shortText(value: number): string {
  return String(Number(value.toPrecision(6)));
}
