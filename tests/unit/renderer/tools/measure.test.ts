import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { alongStrandM, legsOf } from "../../../../renderer/tools/measure.ts";
import { smallRoute, without } from "../../../fixtures/route/buildRoute.ts";

const plant = openPlant(smallRoute());

test("along the strand the way leads over the poles between", () => {
  expect(alongStrandM(plant, { spanId: "span-1", offsetM: 40 }, { spanId: "span-3", offsetM: 10 })).toBeCloseTo(60, 9);
  expect(alongStrandM(plant, { spanId: "span-3", offsetM: 10 }, { spanId: "span-1", offsetM: 40 })).toBeCloseTo(60, 9);
});

test("within one span it is the distance between the two places", () => {
  expect(alongStrandM(plant, { spanId: "span-1", offsetM: 40 }, { spanId: "span-1", offsetM: 5 })).toBe(35);
});

test("where no spans lead there is no way along the strand", () => {
  const cut = openPlant(without(smallRoute(), "span", "span-2"));
  expect(alongStrandM(cut, { spanId: "span-1", offsetM: 0 }, { spanId: "span-3", offsetM: 0 })).toBeNull();
});

test("a leg to the north bears 0, to the east a quarter turn, to the west three quarters", () => {
  const point = (eastM: number, northM: number) => ({ eastM, northM, words: "", on: null });
  const legs = legsOf(plant, [point(0, 0), point(0, 3), point(4, 3), point(0, 3)]);
  expect(legs.map((one) => one.straightM)).toEqual([3, 4, 4]);
  expect(legs.map((one) => one.bearingRad / Math.PI)).toEqual([0, 0.5, 1.5]);
});
