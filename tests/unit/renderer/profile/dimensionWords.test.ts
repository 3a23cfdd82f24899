import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { spanClearance } from "../../../../core/plant/spanClearance.ts";
import { structureBeside } from "../../../../core/plant/structureClearance.ts";
import { besideText, leastText } from "../../../../renderer/profile/dimensionWords.ts";
import { changed, smallRoute, withRows } from "../../../fixtures/route/buildRoute.ts";

const limitOf = (surface: string) =>
  [...smallRoute().clearanceLimit.values()].find((one) => one.surface === surface)?.limitM ?? Number.NaN;

function leastOf(heightM: number) {
  const route = ["strand-2", "strand-3"].reduce((low, id) => changed(low, "attachment", id, { heightM }), smallRoute());
  const least = spanClearance(openPlant(route), "span-2");
  if (!least) throw new Error("the small route is measured");
  return leastText(least, "metric").map(({ text }) => text);
}

function besideOf(besideM: number, heightM: number) {
  const barn = { id: "barn", spanId: "span-1", name: "Barn", kind: "building", offsetM: 20, lengthM: 4 } as const;
  const route = withRows(smallRoute(), "structure", [{ ...barn, side: "left", besideM, heightM, bottomM: null }]);
  const beside = structureBeside(openPlant(route), "barn");
  if (!beside) throw new Error("the barn stands beside the line");
  return besideText(beside, "metric").map(({ text }) => text);
}

test("the least clearance of a span is dimensioned with its case, its limit and what it lacks", () => {
  expect(leastOf(9)).toEqual([
    expect.stringMatching(/^\d\.\d\d m (hot|iced)$/),
    `limit ${limitOf("road").toFixed(2)} m`,
  ]);
  expect(leastOf(4).at(-1)).toMatch(/^◆ \d\.\d\d m short$/);
});

test("a distance beside a building is dimensioned with its limit, what it lacks, or that the line passes over it instead", () => {
  const limit = `limit ${limitOf("buildingBeside").toFixed(2)} m`;
  expect(besideOf(3, 8)).toEqual(["3.00 m beside", limit]);
  expect(besideOf(1, 8)).toEqual(["1.00 m beside", limit, `◆ ${(limitOf("buildingBeside") - 1).toFixed(2)} m short`]);
  expect(besideOf(1, 0.3)).toEqual(["1.00 m beside", limit, "the line passes over it"]);
});
