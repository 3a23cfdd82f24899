import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { typedOffset } from "../../../../renderer/tools/exact.ts";
import { smallRoute } from "../../../fixtures/route/buildRoute.ts";

const plant = openPlant(smallRoute());

function typed(text: string, poleId = "pole-2") {
  return typedOffset(plant, { terminalId: "terminal-1", spanId: "span-2", poleId, text }, "us");
}

test("36 in, 3 feet and 0.9144 m are the same place", () => {
  for (const text of ["36 in", "3'", "3 ft", "0.9144 m"]) expect(typed(text)).toEqual({ ok: true, offsetM: 0.9144 });
});

test("a distance from the far pole is counted back from the end of the span", () => {
  expect(typed("1 m", "pole-3")).toEqual({ ok: true, offsetM: 44 });
});

test("nonsense, nothing and what is past the far pole are refused with the reason", () => {
  expect(typed("a bit")).toMatchObject({ ok: false, what: expect.stringContaining("cannot be read") });
  expect(typed("0")).toEqual({ ok: false, what: "Write a distance greater than nothing." });
  expect(typed("45 m")).toEqual({ ok: false, what: "That is past the far pole." });
});
