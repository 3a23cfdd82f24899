import { expect, test } from "vitest";
import type { WindowFinding } from "../../../renderer/app/routeStore.ts";
import { sorted } from "../../../renderer/panels/findings/sorting.ts";

const plain: WindowFinding = {
  key: "a",
  ruleId: "terminal-standoff",
  title: "",
  severity: "warning",
  basis: { document: "", clause: "", edition: "", mark: "practice" },
  subjects: [],
  message: "",
  measured: null,
  limit: null,
  unit: "m",
  fixes: [],
  at: null,
  waiverId: null,
};
const west = { ...plain, key: "west", at: { eastM: -5, northM: 0 }, measured: 1.1, limit: 1 };
const error = { ...plain, key: "error", severity: "error" as const, at: { eastM: 2, northM: 0 } };
const far = { ...plain, key: "far", at: { eastM: 9, northM: 0 }, measured: 3, limit: 1 };
const none = { ...plain, key: "none", measured: 0, limit: 0 };

const keys = (by: Parameters<typeof sorted>[1]) => sorted([none, far, error, west], by).map((one) => one.key);

test("worst first puts errors before warnings, then goes from west to east", () => {
  expect(keys("worst").slice(0, 1)).toEqual(["error"]);
  expect(keys("worst").indexOf("west")).toBeLessThan(keys("worst").indexOf("far"));
});

test("from west to east, a finding without a place comes last", () => {
  expect(keys("place")).toEqual(["west", "error", "far", "none"]);
});

test("furthest past the limit is told as a part of the limit; findings without figures come last", () => {
  expect(keys("excess")).toEqual(["far", "west", "none", "error"]);
});
