import fc from "fast-check";
import { expect, it } from "vitest";
import { type Shelved, shelved } from "../../../core/sheets/paper/shelves.ts";

const whole = { left: 10, right: 310, bottom: 20, top: 220 };
const gapMm = 5;
const size = (most: number) => fc.double({ min: 1, max: most, noNaN: true });
const things = fc.array(fc.record({ width: size(300), height: size(200) }));

const isClear = ({ box: one }: Shelved<unknown>, { box: other }: Shelved<unknown>) =>
  one.right < other.left || other.right < one.left || one.top < other.bottom || other.top < one.bottom;

it("gives every thing once, in order, at least what it needs, inside the sheet and clear of the others", () => {
  fc.assert(
    fc.property(things, (needs) => {
      const sheets = shelved(
        needs.map((need, thing) => ({ thing, ...need })),
        () => whole,
        gapMm,
      );
      expect(sheets.flat().map((one) => one.thing)).toEqual(needs.map((_, index) => index));
      for (const parts of sheets) {
        for (const [at, part] of parts.entries()) {
          const { left, bottom, right, top } = part.box;
          expect(right - left).toBeGreaterThanOrEqual((needs[part.thing]?.width ?? 0) - 1e-6);
          expect(top - bottom).toBeGreaterThanOrEqual((needs[part.thing]?.height ?? 0) - 1e-6);
          expect(left >= whole.left - 1e-6 && right <= whole.right + 1e-6).toBe(true);
          expect(bottom >= whole.bottom - 1e-6 && top <= whole.top + 1e-6).toBe(true);
          expect(parts.slice(at + 1).every((other) => isClear(part, other))).toBe(true);
        }
      }
    }),
  );
});

it("lays things beside each other, then under each other, and takes a new sheet only where the last is full", () => {
  const needs = Array.from({ length: 9 }, (_, thing) => ({ thing, width: 140, height: 90 }));
  const sheets = shelved(needs, () => whole, gapMm);
  expect(sheets.map((parts) => parts.length)).toEqual([4, 4, 1]);
  expect(sheets[0]?.map(({ box }) => [box.left, box.top])).toEqual([
    [10, 220],
    [162.5, 220],
    [10, 117.5],
    [162.5, 117.5],
  ]);
});

it("asks for less room where what lies on a sheet takes some itself", () => {
  const needs = Array.from({ length: 4 }, (_, thing) => ({ thing, width: 300, height: 60 }));
  const room = (some: readonly number[]) => ({ ...whole, bottom: whole.bottom + 20 * some.length });
  expect(shelved(needs, room, gapMm).map((parts) => parts.length)).toEqual([2, 2]);
});
