import type { ExplainedInput } from "../../../core/explain/explanation.ts";

/** Works a formula out by itself, symbol by symbol: numbers, + - · /, ² and ³, √ and brackets. */
export function worked(formula: string, inputs: readonly Pick<ExplainedInput, "symbol" | "value">[]): number {
  const tokens = formula.match(/[A-Za-z]+\d*|\d+(?:\.\d+)?|[-+·/²³√()]/g) ?? [];
  let at = 0;
  const take = (): string => tokens[at++] ?? "";
  const atom = (): number => {
    const token = take();
    let value: number;
    if (token === "(") {
      value = sum();
      if (take() !== ")") throw new Error(`a bracket stays open: ${formula}`);
    } else if (token === "√") value = Math.sqrt(atom());
    else if (token === "-") value = -atom();
    else if (/^\d/.test(token)) value = Number(token);
    else {
      const input = inputs.find((one) => one.symbol === token);
      if (!input) throw new Error(`no input of the name ${token}`);
      value = input.value;
    }
    while (tokens[at] === "²" || tokens[at] === "³") value **= take() === "²" ? 2 : 3;
    return value;
  };
  const product = (): number => {
    let value = atom();
    while (tokens[at] === "·" || tokens[at] === "/") value = take() === "·" ? value * atom() : value / atom();
    return value;
  };
  const sum = (): number => {
    let value = product();
    while (tokens[at] === "+" || tokens[at] === "-") value = take() === "+" ? value + product() : value - product();
    return value;
  };
  const value = sum();
  if (at < tokens.length) throw new Error(`read only to ${at} of ${formula}`);
  return value;
}
