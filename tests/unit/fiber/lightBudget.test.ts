import { expect, it } from "vitest";
import { differential, lightBudget, powerRange } from "../../../core/fiber/lightBudget.ts";

const splitter = { what: "splitter", count: 1, leastDb: 10.1, mostDb: 10.5 };

it("every loss is a line of its own, and the lines add up", () => {
  const budget = lightBudget(
    [{ what: "fiber", lengthM: 2000, upDbPerKm: 0.35, downDbPerKm: 0.28 }],
    [splitter, { what: "splices", count: 2, leastDb: 0.1, mostDb: 0.1 }],
  );
  expect(budget.terms.map((one) => one.what)).toEqual(["fiber", "splitter", "splices"]);
  expect(budget.terms[0]).toMatchObject({ least: { upDb: 0.7 }, most: { downDb: 0.56 } });
  expect(budget.least.upDb).toBeCloseTo(0.7 + 10.1 + 0.2, 12);
  expect(budget.most.downDb).toBeCloseTo(0.56 + 10.5 + 0.2, 12);
  expect(budget.lengthM).toBe(2000);
});

it("a loss that is least above its most is refused", () => {
  expect(() => lightBudget([], [{ ...splitter, leastDb: 11 }])).toThrow("the least loss of splitter");
});

it("the strongest sender over the least loss gives the most that arrives, the weakest over the most the least", () => {
  expect(powerRange({ leastDbm: 1.5, mostDbm: 5 }, 20, 22)).toEqual({ leastDbm: -20.5, mostDbm: -15 });
});

it("two units differ by the farther one's most less the nearer one's least, on the way where that is more", () => {
  const near = { least: { upDb: 14, downDb: 13 }, most: { upDb: 15, downDb: 14 } };
  const far = { least: { upDb: 20, downDb: 19 }, most: { upDb: 21, downDb: 22 } };
  expect(differential([near, far])).toEqual({ lossDb: 9, way: "down", far: 1, near: 0 });
  expect([differential([near]), differential([])]).toEqual([null, null]);
});

it("what one unit may lose at most over its own least is no difference between two", () => {
  const wide = { least: { upDb: 10, downDb: 10 }, most: { upDb: 20, downDb: 20 } };
  const other = { least: { upDb: 15, downDb: 15 }, most: { upDb: 15, downDb: 15 } };
  expect(differential([wide, other])).toMatchObject({ lossDb: 5 });
});
