import { expect, it } from "vitest";
import { loadedHeightM } from "../../../core/strand/loadedSpan.ts";
import { lowestPlace } from "../../../core/strand/lowestPlace.ts";
import { parabolicSpan } from "../../../core/strand/parabola.ts";

const level = { spanM: 40, riseM: 0, weightNPerM: 3, horizontalN: 1500 };

it("a level span is lowest in its middle", () => {
  expect(lowestPlace(level)).toEqual({ atM: 20, heightM: -0.4 });
});

it("a sloping span is lowest where the parabola turns, as seen from the lower support", () => {
  const gentle = { ...level, riseM: 0.5 };
  expect(lowestPlace(gentle).atM).toBeCloseTo(parabolicSpan(gentle).lowPointM, 2);
  expect(lowestPlace({ ...level, riseM: -0.5 }).atM).toBeCloseTo(40 - lowestPlace(gentle).atM, 9);
});

it("where the parabola turns outside the span the lower support is lowest", () => {
  expect(lowestPlace({ ...level, riseM: 5 })).toEqual({ atM: 0, heightM: 0 });
  expect(lowestPlace({ ...level, riseM: -5 })).toEqual({ atM: 40, heightM: -5 });
});

it("a heavy load is the lowest place itself", () => {
  const load = { atM: 6, weightN: 900 };
  expect(lowestPlace({ ...level, pointLoads: [load] }).atM).toBe(6);
});

it("between two like loads the middle is lowest", () => {
  const pointLoads = [
    { atM: 35, weightN: 50 },
    { atM: 5, weightN: 50 },
  ];
  const lowest = lowestPlace({ ...level, pointLoads });
  expect(lowest.atM).toBeCloseTo(20, 9);
  expect(lowest.heightM).toBe(loadedHeightM({ ...level, pointLoads }, lowest.atM));
});
