import { describe, expect, test } from "vitest";
import { openFiberTaker } from "../../../core/fiber/fiberTaker.ts";
import type { TubedCable } from "../../../core/fiber/tubes.ts";

function of(fiberCount: number, taken: readonly number[] = []): TubedCable {
  return { fiberCount, fibersPerTube: 12, spareCount: 2, taken: new Set(taken) };
}

describe("fibers of a cable of 24 in tubes of 12, two of each tube spare", () => {
  test("come in order and never a spare", () => {
    const taker = openFiberTaker(of(24));
    expect([taker.take(4), taker.take(4)]).toEqual([
      [1, 2, 3, 4],
      [5, 6, 7, 8],
    ]);
  });

  test("a terminal that does not fit what is left of a tube opens the next one", () => {
    const taker = openFiberTaker(of(24));
    taker.take(8);
    expect(taker.take(3)).toEqual([13, 14, 15]);
  });

  test("what was passed over serves a later terminal once the last tube is full", () => {
    const taker = openFiberTaker(of(24));
    taker.take(8);
    taker.take(10);
    expect(taker.take(2)).toEqual([9, 10]);
  });

  test("a terminal takes fibers of two tubes only where no tube has enough", () => {
    const taker = openFiberTaker(of(24));
    taker.take(8);
    taker.take(8);
    expect(taker.take(4)).toEqual([9, 10, 21, 22]);
  });

  test("a lateral that needs more than a tube takes whole tubes", () => {
    const taker = openFiberTaker(of(36));
    taker.take(1);
    expect(taker.take(12)).toEqual([13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 25, 26]);
    expect(taker.take(1)).toEqual([27]);
  });

  test("fibers in use are passed over, and what the cable has not is not given", () => {
    const taker = openFiberTaker(of(24, [1, 2, 14]));
    expect(taker.take(1)).toEqual([3]);
    expect(taker.leftCount()).toBe(16);
    expect(taker.take(17)).toBeNull();
    expect(taker.leftCount()).toBe(16);
  });
});
