import { expect, it } from "vitest";
import { workedSteps } from "../../../core/explain/workedSteps.ts";
import { worked } from "./worked.ts";

const inputs = [
  ["H", 1659],
  ["w", 2.95],
  ["L", 45],
  ["g", -3],
].map(([symbol, value]) => ({
  symbol: String(symbol),
  name: "",
  value: Number(value),
  unit: "",
  text: "",
  from: null,
}));

it("works out brackets first, then terms, then the whole, each once", () => {
  expect(workedSteps({ formula: "H + w² · L² / (8 · H)", inputs }).map((one) => one.formula)).toEqual([
    "8 · H",
    "w² · L² / (8 · H)",
    "H + w² · L² / (8 · H)",
  ]);
});

it("the last step is the formula's value, as an independent reading of it gives", () => {
  for (const formula of ["H + w² · L² / (8 · H)", "√(H² + (w · L)²) / 2", "H - L - w", "0 - (g + w · 2)", "g"]) {
    const steps = workedSteps({ formula, inputs });
    const last = steps.at(-1);
    if (formula !== "g") expect(last?.value, formula).toBeCloseTo(worked(formula, inputs), 9);
  }
});

it("every step is worth what its own piece is worth, and shows its numbers", () => {
  for (const { formula, numbers, value } of workedSteps({ formula: "(H + w · L) / (8 · H) - g", inputs })) {
    expect(worked(formula, inputs)).toBeCloseTo(value, 9);
    expect(numbers).not.toMatch(/[A-Za-z]/);
  }
});

it("refuses a bracket that stays open", () => {
  expect(() => workedSteps({ formula: "(H + w", inputs })).toThrow("open");
});
