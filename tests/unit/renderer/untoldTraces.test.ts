import { expect, test } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import {
  fiberCount,
  givingSteps,
  numberedOn,
  type Told,
  toldOf,
  untoldTraces,
} from "../../../renderer/trace/untold.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { spareTrace } from "../../fixtures/route/tracedRoute.ts";

const told = { cableId: "cable-1", fiber: "5", fromEnd: "feed" } as const;

/** The small route with traces of no fiber: their files in the order they were brought, with a wavelength each. */
function routeOf(...files: (readonly [fileName: string, wavelengthNm: number])[]): Route {
  const traces = files.map(([fileName, wavelengthNm]) => ({
    ...spareTrace,
    id: `${fileName} ${wavelengthNm}`,
    fileName,
    wavelengthNm,
    cableId: null,
    fiber: null,
  }));
  return withRows(smallRoute(), "trace", traces);
}

/** The fibers told when the first is of fiber `fiber` and those below are numbered on. */
function fibersOn(route: Route, fiber: number): readonly string[] {
  const traces = untoldTraces(route);
  const [first] = traces;
  if (!first) throw new Error("a trace");
  const from = new Map([[first.id, { ...told, fiber: String(fiber) }]]);
  const numbered = numberedOn(route, traces, from, first);
  return traces.map((one) => toldOf(numbered, one).fiber);
}

test("traces of no fiber stand by wavelength and as their files are numbered; those told are not among them", () => {
  const route = withRows(routeOf(["f10", 1310], ["f2", 1550], ["f2", 1310]), "trace", [spareTrace]);
  expect(untoldTraces(route).map((one) => one.id)).toEqual(["f2 1310", "f10 1310", "f2 1550"]);
});

test("numbering on counts through one wavelength, and leaves the other to its own first fiber", () => {
  expect(fibersOn(routeOf(["f1", 1310], ["f1", 1550], ["f2", 1310], ["f3", 1310]), 5)).toEqual(["5", "6", "7", ""]);
});

test("numbering on ends with the cable's last fiber", () => {
  const route = routeOf(["f1", 1310], ["f2", 1310], ["f3", 1310]);
  const last = fiberCount(route, told.cableId);
  expect(last).toBeGreaterThan(1);
  expect(fibersOn(route, last - 1)).toEqual([String(last - 1), String(last), ""]);
});

test("only a trace of which cable, fiber and end are said is given to its fiber", () => {
  const traces = untoldTraces(routeOf(["f1", 1310], ["f2", 1310]));
  const said = new Map<string, Told>([
    ["f1 1310", told],
    ["f2 1310", { ...told, fromEnd: "" }],
  ]);
  expect(givingSteps(traces, said)).toEqual([
    { command: "trace.give", input: { traceIds: ["f1 1310"], cableId: "cable-1", fiber: 5, fromEnd: "feed" } },
  ]);
});
