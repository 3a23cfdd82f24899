import { expect, test } from "vitest";
import { spotAfter } from "../../../../renderer/tables/gridSpot.ts";
import { continueSeries } from "../../../../renderer/tables/series.ts";
import { totalsOf } from "../../../../renderer/tables/totals.ts";

test("two figures carry on by their step, a name by its number, anything else is written again", () => {
  expect(continueSeries(["10", "12.5"], 2)).toEqual(["15", "17.5"]);
  expect(continueSeries(["P-09"], 3)).toEqual(["P-10", "P-11", "P-12"]);
  expect(continueSeries(["road", "rail"], 3)).toEqual(["road", "rail", "road"]);
  expect(continueSeries(["35"], 2)).toEqual(["35", "35"]);
});

test("totals are count, sum, least, most and mean, and none of nothing", () => {
  expect(totalsOf([2, 4, -3])).toEqual({ count: 3, sum: 3, least: -3, most: 4, mean: 1 });
  expect(totalsOf([])).toBeNull();
});

test("arrows stop at the edges, a page goes a page, far keys go to the ends", () => {
  const size = { rowCount: 100, colCount: 5, pageCount: 20 };
  expect(spotAfter({ row: 0, col: 0 }, "ArrowUp", false, size)).toEqual({ row: -1, col: 0 });
  expect(spotAfter({ row: 95, col: 4 }, "PageDown", false, size)).toEqual({ row: 99, col: 4 });
  expect(spotAfter({ row: 50, col: 2 }, "End", true, size)).toEqual({ row: 99, col: 4 });
  expect(spotAfter({ row: 50, col: 2 }, "x", false, size)).toBeNull();
});
