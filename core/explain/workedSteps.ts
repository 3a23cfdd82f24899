import type { Explanation } from "./explanation.ts";
import { putIn } from "./putIn.ts";

/** One piece of a formula worked out: in symbols, with its numbers, and what it comes to. */
export type WorkedStep = { readonly formula: string; readonly numbers: string; readonly value: number };

const signs: Readonly<Record<string, (a: number, b: number) => number>> = {
  "+": (a, b) => a + b,
  "-": (a, b) => a - b,
  "·": (a, b) => a * b,
  "/": (a, b) => a / b,
};

/**
 * A formula worked out piece by piece, innermost first: what stands in brackets, the terms of a sum, then the whole.
 *
 * @throws Error where the formula is not one of those an explanation may hold
 */
export function workedSteps({ formula, inputs }: Pick<Explanation, "formula" | "inputs">): readonly WorkedStep[] {
  const tokens = [...formula.matchAll(/[A-Za-z]+\d*|\d+(?:\.\d+)?|[-+·/²³√()]/g)];
  const values = new Map(inputs.map((one) => [one.symbol, one.value]));
  const steps: WorkedStep[] = [];
  let at = 0;
  const textAt = (index: number): string => tokens[index]?.[0] ?? "";
  const take = (): string => textAt(at++);
  const note = (from: number, to: number, value: number): void => {
    const first = tokens[from]?.index ?? 0;
    const piece = formula.slice(first, (tokens[to - 1]?.index ?? first) + textAt(to - 1).length);
    if (to - from > 1 && !steps.some((one) => one.formula === piece))
      steps.push({ formula: piece, numbers: putIn({ formula: piece, inputs }), value });
  };
  const atom = (): number => {
    let value = plainAtom(take());
    while (textAt(at) === "²" || textAt(at) === "³") value **= take() === "²" ? 2 : 3;
    return value;
  };
  const plainAtom = (token: string): number => {
    if (token === "√") return Math.sqrt(atom());
    if (token === "-") return -atom();
    if (/^\d/.test(token)) return Number(token);
    if (token === "(") {
      const from = at;
      const inside = sum();
      note(from, at, inside);
      if (take() !== ")") throw new Error(`a bracket stays open: ${formula}`);
      return inside;
    }
    const value = values.get(token);
    if (value === undefined) throw new Error(`no input of the name ${token}`);
    return value;
  };
  const product = (): number => {
    let value = atom();
    while (textAt(at) === "·" || textAt(at) === "/") value = signs[take()]?.(value, atom()) ?? value;
    return value;
  };
  const sum = (from = at): number => {
    let value = product();
    while (textAt(at) === "+" || textAt(at) === "-") {
      note(from, at, value);
      const sign = take();
      const start = at;
      const term = product();
      note(start, at, term);
      value = signs[sign]?.(value, term) ?? value;
    }
    return value;
  };
  const value = sum();
  if (at < tokens.length) throw new Error(`read only to ${at} of ${formula}`);
  note(0, at, value);
  return steps;
}
