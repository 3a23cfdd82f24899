import { expect, test } from "vitest";
import { findCommand } from "../../../../core/edits/register.ts";
import { openPlant } from "../../../../core/plant/plant.ts";
import { anotherLike } from "../../../../renderer/tools/duplicate.ts";
import { changed, smallRoute, withRows } from "../../../fixtures/route/buildRoute.ts";

const sign = { id: "sign-1", spanId: "span-2", name: "", kind: "sign" as const, side: "left" as const };
const route = withRows(smallRoute(), "structure", [
  { ...sign, offsetM: 30, lengthM: 4, besideM: 3, heightM: 5, bottomM: null },
]);

test("another terminal goes to the other pole of the span", () => {
  expect(anotherLike(openPlant(route), "terminal/terminal-1")).toMatchObject({
    command: "terminal.hang",
    input: { spanId: "span-2", poleId: "pole-3" },
  });
});

test("another structure stands beside the first, as long as it is, and the route takes it", () => {
  const another = anotherLike(openPlant(route), "structure/sign-1");
  expect(another?.input).toMatchObject({ lengthM: 4, heightM: 5 });
  const { lengthM = 0 } = route.span.get("span-2") ?? {};
  expect(another?.input).toMatchObject({ offsetM: 30 <= lengthM / 2 ? 34 : 26 });
  expect(findCommand(another?.command ?? "")?.ask(route, another?.input)).toMatchObject({ ok: true });
});

test("another crossing goes where there is more room; none where it would lie past its pole", () => {
  const { widthM = 0, offsetM = 0 } = route.crossing.get("crossing-1") ?? {};
  const another = anotherLike(openPlant(route), "crossing/crossing-1");
  expect(Math.abs(Number(Reflect.get(Object(another?.input), "offsetM")) - offsetM)).toBeCloseTo(widthM, 9);
  const wide = changed(route, "crossing", "crossing-1", { widthM: 500 });
  expect(anotherLike(openPlant(wide), "crossing/crossing-1")).toBeNull();
});

test("there is none of a pole, or of a terminal's own coil", () => {
  const plant = openPlant(route);
  expect([anotherLike(plant, "pole/pole-2"), anotherLike(plant, "slack/coil-1")]).toEqual([null, null]);
});
