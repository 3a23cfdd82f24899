import { expect, test } from "vitest";
import { limitedWatch } from "../../../core/placement/limitedWatch.ts";

const never = () => false;

function asks(watch: ReturnType<typeof limitedWatch>, most: number): number {
  let granted = 0;
  while (granted < most && !watch.stopped()) granted += 1;
  return granted;
}

test("a search may take as many steps as its limit says, and is told that they ended it", () => {
  const watch = limitedWatch({ stepLimit: 7, timeLimitS: Number.POSITIVE_INFINITY }, () => 0, never);
  expect([asks(watch, 100), watch.endedBy(), watch.stepCount()]).toEqual([7, "work", 7]);
});

test("a clock ends a search, and once ended it stays so", () => {
  let nowS = 0;
  const watch = limitedWatch({ stepLimit: 100, timeLimitS: 3 }, () => nowS++, never);
  expect([asks(watch, 100), watch.endedBy()]).toEqual([3, "time"]);
  nowS = 0;
  expect(watch.stopped()).toBe(true);
});

test("a person's stop goes before every limit", () => {
  const watch = limitedWatch(
    { stepLimit: 0, timeLimitS: 0 },
    () => 1,
    () => true,
  );
  expect([asks(watch, 5), watch.endedBy()]).toEqual([0, "stopped"]);
});

test("a search that nothing ended says so", () => {
  const watch = limitedWatch({ stepLimit: 9, timeLimitS: 9 }, () => 0, never);
  expect([asks(watch, 4), watch.endedBy(), watch.stepCount()]).toEqual([4, null, 4]);
});
