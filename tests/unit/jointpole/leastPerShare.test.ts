import { describe, expect, it } from "vitest";
import { leastPerShare } from "../../../core/jointpole/leastPerShare.ts";

describe("the least spare per share", () => {
  it("under a neutral at 24 ft that sags 0.9 m, our far end 1.2 m under it and 0.5715 m to keep, is 5.5236 m worked by hand", () => {
    // a = 1.2 - 0.5715 = 0.6285; c = 4 x 0.9 = 3.6; b = 7.3152 - 0.5715 - a - c = 2.5152; b + 2 sqrt(a c) = 2.5152 + 3.0084
    const ends = [
      { share: 1, spareM: 7.3152 - 0.5715 },
      { share: 0, spareM: 1.2 - 0.5715 },
    ] as const;
    const { leastM, share } = leastPerShare(ends, 3.6);
    expect(leastM).toBeCloseTo(5.5236, 4);
    expect(share).toBeCloseTo(Math.sqrt(0.6285 / 3.6), 9);
  });

  it("is at the pole itself where nothing sags between", () => {
    const ends = [
      { share: 1, spareM: 6 },
      { share: 0, spareM: 0.5 },
    ] as const;
    expect(leastPerShare(ends, 0)).toEqual({ leastM: 6, share: 1 });
  });

  it("is endless where the far end lacks already: no height here mends that", () => {
    const ends = [
      { share: 0, spareM: -0.01 },
      { share: 1, spareM: 6 },
    ] as const;
    expect(leastPerShare(ends, 3.6).leastM).toBe(Number.NEGATIVE_INFINITY);
  });

  it("counts a far end that has just what is asked as enough", () => {
    const ends = [
      { share: 0, spareM: -4e-16 },
      { share: 1, spareM: 5 },
    ] as const;
    expect(leastPerShare(ends, 2).leastM).toBeCloseTo(3, 9);
  });

  it("does not hang on a place that is the far pole and nothing else", () => {
    const far = { share: 0, spareM: 0.3 };
    expect(leastPerShare([far, far], 2).leastM).toBe(Number.POSITIVE_INFINITY);
  });
});
