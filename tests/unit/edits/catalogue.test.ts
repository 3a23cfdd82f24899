import { expect, test } from "vitest";
import { applyChange } from "../../../core/edits/change.ts";
import { findCommand } from "../../../core/edits/register.ts";
import type { Route } from "../../../core/model/route.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";

function run(route: Route, command: string, input: object): Route {
  const asked = findCommand(command)?.ask(route, input);
  if (!asked?.ok) throw new Error(asked?.fault.what ?? "no such command");
  const done = applyChange(route, asked.value);
  if (!done.ok) throw new Error(done.fault.what);
  return done.value;
}

function faultOf(route: Route, command: string, input: object): string {
  const asked = findCommand(command)?.ask(route, input);
  return asked?.ok === false ? `${asked.fault.code}: ${asked.fault.what}` : "granted";
}

function published(): Route {
  const route = smallRoute();
  const [row] = route.strandType.values();
  if (!row) throw new Error("the small route has no strand");
  const read = { ...row, basisDocument: "ASTM A475", basisClause: "table 1", basisMark: "seen" as const };
  return { ...route, strandType: new Map([[row.id, read]]) };
}

const strandOf = (route: Route) => [...route.strandType.values()][0];

test("a published figure changed without saying where it was read becomes the company's own", () => {
  const route = published();
  const id = strandOf(route)?.id;
  const after = run(route, "catalogue.set", { table: "strandType", id, values: { breakingN: 30_000 } });
  expect(strandOf(after)).toMatchObject({
    breakingN: 30_000,
    basisMark: "practice",
    basisClause: "table 1; changed by the company, no longer as published",
  });
});

test("a figure changed together with where it was read keeps the mark the person gives", () => {
  const route = published();
  const values = { breakingN: 30_000, basisClause: "table 3", basisMark: "seen" };
  const after = run(route, "catalogue.set", { table: "strandType", id: strandOf(route)?.id, values });
  expect(strandOf(after)).toMatchObject({ basisMark: "seen", basisClause: "table 3" });
});

test("another name leaves the basis as it was", () => {
  const route = published();
  const after = run(route, "catalogue.set", { table: "strandType", id: strandOf(route)?.id, values: { name: "6M" } });
  expect(strandOf(after)).toMatchObject({ name: "6M", basisMark: "seen", basisClause: "table 1" });
});

test("a row in use is not removed, and the refusal says by what", () => {
  const route = smallRoute();
  const id = strandOf(route)?.id;
  expect(faultOf(route, "catalogue.remove", { table: "strandType", id })).toMatch(
    /^in-use: .+ is in use by the company standards; guy .+; strand section /,
  );
});

test("a copy of a clearance set brings its limits along, and goes with them", () => {
  const route = smallRoute();
  const [set] = route.clearanceSet.values();
  const limitCount = [...route.clearanceLimit.values()].filter((limit) => limit.clearanceSetId === set?.id).length;
  expect(limitCount).toBeGreaterThan(0);
  const copied = run(route, "catalogue.copy", { table: "clearanceSet", id: set?.id, newId: "ours", name: "Ours" });
  expect([...copied.clearanceLimit.values()].filter((limit) => limit.clearanceSetId === "ours")).toHaveLength(
    limitCount,
  );
  const removed = run(copied, "catalogue.remove", { table: "clearanceSet", id: "ours" });
  expect([...removed.clearanceLimit.keys()]).toEqual([...route.clearanceLimit.keys()]);
});

test("a copy of a strength set brings its limits and load factors along, and they go with it", () => {
  const factor = {
    ...basisOfTest,
    id: "factor-wind",
    strengthSetId: "strength-test",
    load: "wind",
    factor: 2.5,
  } as const;
  const route = withRows(smallRoute(), "loadFactor", [{ ...factor, condition: "loaded" }]);
  const set = { table: "strengthSet", id: "strength-test", newId: "ours", name: "Ours" };
  const copied = run(route, "catalogue.copy", set);
  const ofOurs = (rows: ReadonlyMap<string, { readonly strengthSetId: string }>) =>
    [...rows.values()].filter((row) => row.strengthSetId === "ours");
  expect(ofOurs(copied.strengthLimit)).toHaveLength(route.strengthLimit.size);
  expect(ofOurs(copied.loadFactor)).toMatchObject([{ load: "wind", factor: 2.5 }]);
  const removed = run(copied, "catalogue.remove", { table: "strengthSet", id: "ours" });
  expect([...removed.loadFactor.keys()]).toEqual(["factor-wind"]);
  expect([...removed.strengthLimit.keys()]).toEqual([...route.strengthLimit.keys()]);
});

const basisOfTest = { basisDocument: "test", basisClause: "", basisEdition: "", basisMark: "practice" } as const;

test("a figure the catalogue cannot hold is refused by its column", () => {
  const route = smallRoute();
  const input = { table: "strandType", id: strandOf(route)?.id, values: { diameterM: -1 } };
  expect(faultOf(route, "catalogue.set", input)).toMatch(/^bad-row: /);
});
