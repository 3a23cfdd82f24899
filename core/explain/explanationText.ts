import { basisWords } from "./basisWords.ts";
import type { Explanation } from "./explanation.ts";
import { putIn } from "./putIn.ts";

/** An explanation as plain text, line by line, for a letter or a report. */
export function explanationText(told: Explanation): string {
  const { title, words, formula, inputs, result, limit, source, assumed } = told;
  return [
    `${title}: ${result.text}`,
    words,
    `${result.symbol} = ${formula}`,
    `${result.symbol} = ${putIn(told)} = ${Number(result.value.toPrecision(6))} ${result.unit}`.trimEnd(),
    ...inputs.map((one) => `  ${one.symbol}  ${one.name}: ${one.text}`),
    ...(limit ? [`${limit.words}: ${limit.text}. ${basisWords(limit.basis)}`] : []),
    `Formula: ${source}.`,
    ...assumed,
  ].join("\n");
}
