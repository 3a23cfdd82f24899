import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { passesThrough, refsEnclosed, refsTouched } from "../../../../renderer/tools/touching.ts";
import { smallRoute } from "../../../fixtures/route/buildRoute.ts";
import { pictureOf } from "../pictureOf.ts";

const picture = pictureOf(openPlant(smallRoute()), 4);
const midSpan = { westM: 20, eastM: 25, southM: -1, northM: 1 };

test("a box over the middle of a span encloses nothing and touches the span", () => {
  expect(refsEnclosed(picture, midSpan)).toEqual([]);
  expect(refsTouched(picture, midSpan)).toEqual(["span/span-1"]);
});

test("a box round both poles encloses the span between them", () => {
  const refs = refsEnclosed(picture, { westM: -1, eastM: 46, southM: -1, northM: 1 });
  expect(refs).toEqual(expect.arrayContaining(["pole/pole-1", "pole/pole-2", "span/span-1"]));
  expect(refs).not.toContain("span/span-2");
});

test("a segment passes through a box although both ends lie outside, and passes by one beside it", () => {
  const box = { westM: 0, eastM: 2, southM: 0, northM: 2 };
  expect(passesThrough(box, [-1, 1], [3, 1])).toBe(true);
  expect(passesThrough(box, [-1, 2], [1, 4])).toBe(false);
  expect(passesThrough(box, [1, 1], [1, 1])).toBe(true);
});
