import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { profileOf } from "../../../../core/plant/profile.ts";
import { nextStop, stopsOf } from "../../../../renderer/profile/stops.ts";
import { smallRoute } from "../../../fixtures/route/buildRoute.ts";

const stops = stopsOf(profileOf(openPlant(smallRoute()), "cable-1"));

test("walking right from the feed end reaches the far pole, walking left comes back over the same stations", () => {
  const there: number[] = [];
  for (let at: number | null = null; ; ) {
    const stop = nextStop(stops, at, 1);
    if (!stop || stop.stationM === at) break;
    there.push(stop.stationM);
    at = stop.stationM;
  }
  expect(there[0]).toBe(0);
  expect(there.at(-1)).toBe(135);
  const back: number[] = [135];
  for (let at = 135; ; ) {
    const stop = nextStop(stops, at, -1);
    if (!stop) break;
    back.push(stop.stationM);
    at = stop.stationM;
  }
  expect(back.toReversed()).toEqual(there);
});
