import fc from "fast-check";
import { expect, it } from "vitest";
import { nextLetter } from "../../../core/sheets/revised/nextLetter.ts";

it.each([
  [undefined, "A"],
  ["A", "B"],
  ["Z", "AA"],
  ["AZ", "BA"],
  ["9", "10"],
  ["P1", "P2"],
  ["a", "b"],
])("after %s comes %s", (last, next) => expect(nextLetter(last)).toBe(next));

it("no letter comes twice in a row of a thousand", () => {
  const row = Array.from({ length: 1000 }).reduce<string[]>((all) => [...all, nextLetter(all.at(-1))], []);
  expect(new Set(row).size).toBe(1000);
});

it("always comes to another letter", () => {
  fc.assert(
    fc.property(fc.string(), (last) => {
      expect(nextLetter(last)).not.toBe(last);
    }),
  );
});
