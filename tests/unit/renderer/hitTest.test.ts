import { expect, test } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { hitAll, refsWithin, screenPoint } from "../../../renderer/canvas/hitTest.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { pictureOf } from "./pictureOf.ts";

const picture = pictureOf(openPlant(smallRoute()), 4);

function hitAt(ref: Parameters<typeof screenPoint>[1]) {
  const point = screenPoint(picture, ref);
  if (!point) throw new Error(`${ref} is not drawn`);
  return hitAll(picture, point[0], point[1])[0];
}

test("a click on the drawn symbol chooses its row, also where it is drawn beside its true place", () => {
  expect(hitAt("pole/pole-2")).toBe("pole/pole-2");
  expect(hitAt("terminal/terminal-1")).toBe("terminal/terminal-1");
  expect(hitAt("slack/coil-1")).toBe("slack/coil-1");
  expect(hitAt("livingUnit/unit-2")).toBe("livingUnit/unit-2");
  expect(hitAt("span/span-1")).toBe("span/span-1");
});

test("a click beside the strand in a crossing's band chooses the crossing", () => {
  const point = screenPoint(picture, "crossing/crossing-1");
  expect(point && hitAll(picture, point[0], point[1] - 20)[0]).toBe("crossing/crossing-1");
});

test("a click on empty ground chooses nothing", () => {
  expect(hitAll(picture, 5, 5)).toEqual([]);
});

test("a box takes the rows whose place lies in it and no others", () => {
  const box = { westM: 40, eastM: 50, southM: -1, northM: 1 };
  expect(refsWithin(picture, box)).toEqual(["pole/pole-2", "terminal/terminal-1", "slack/coil-1"]);
});

test("a box in the middle of a span does not take what hangs at its ends", () => {
  const box = { westM: 60, eastM: 75, southM: -1, northM: 1 };
  expect(refsWithin(picture, box)).toEqual([]);
});
