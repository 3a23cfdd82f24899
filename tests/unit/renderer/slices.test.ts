import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { inSlices } from "../../../renderer/app/slices.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

let clockMs = 0;

beforeEach(() => {
  clockMs = 0;
  vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
  vi.spyOn(performance, "now").mockImplementation(() => clockMs);
});
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

/** Work of so many steps, each of which takes some time of the page. */
function* work(stepCount: number, stepMs: number): Generator<void, number> {
  for (let step = 0; step < stepCount; step += 1) {
    clockMs += stepMs;
    yield;
  }
  return stepCount;
}

const open = () => {
  const route = smallRoute();
  return { plant: openPlant(route), route };
};

test("work in slices lets go of the page every few milliseconds and tells what it came to", () => {
  const slices: (number | null)[] = [];
  inSlices(open(), work(10, 3), (done) => slices.push(done?.value ?? null));
  expect(slices).toEqual([]);
  vi.runAllTimers();
  expect(slices).toEqual([null, null, null, 10]);
});

test("work in slices ends with the next edit, and when it is stopped", () => {
  const told: unknown[] = [];
  const here = open();
  inSlices(here, work(10, 3), (done) => told.push(done));
  here.plant.advance({ ...here.route }, []);
  const stop = inSlices(open(), work(10, 3), (done) => told.push(done));
  stop();
  vi.runAllTimers();
  expect(told).toEqual([]);
});
