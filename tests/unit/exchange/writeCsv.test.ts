import { describe, expect, test } from "vitest";
import { csvLists, writeCsv } from "../../../core/exchange/writeCsv.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { csv } from "./importRoute.ts";

const rowsOf = (text: string): Record<string, string | undefined>[] => {
  const table = csv(text);
  return table.rows.map((row) =>
    Object.fromEntries(table.headings.map((heading, index) => [heading, row.cells[index]])),
  );
};

describe("lists written as CSV", () => {
  const route = smallRoute();

  test("poles carry their unit in the heading, by the route's settings", () => {
    expect(rowsOf(writeCsv(route, "pole"))[1]).toMatchObject({
      tag: "P2",
      east_ft: "147.6378",
      north_ft: "0",
      terminal_allowed: "true",
    });
    const metric = changed(route, "settings", "settings", { unitSystem: "metric" });
    expect(rowsOf(writeCsv(metric, "pole"))[1]).toMatchObject({ tag: "P2", east_m: "45", north_m: "0" });
  });

  test("a route with an origin writes longitude and latitude instead of its grid", () => {
    const placed = changed(route, "settings", "settings", { originLonDeg: -71.13, originLatDeg: 42.39 });
    const first = rowsOf(writeCsv(placed, "pole"))[0];
    expect(first).toMatchObject({ lon: "-71.13", lat: "42.39" });
    expect(first).not.toHaveProperty("east_ft");
  });

  test("the port schedule has a row for every port, spare ones without an address", () => {
    const rows = rowsOf(writeCsv(route, "port"));
    expect(rows.length).toBe(16);
    expect(rows.filter((row) => row.address !== "").length).toBe(route.drop.size);
    const served = rows.find((row) => row.address !== "");
    expect(Number(served?.drop_to_cut_ft) - Number(served?.drop_run_ft)).toBeCloseTo(20, 3);
  });

  test("the port schedule tells of every port, spare ones too, what a meter is expected to show there", () => {
    const powered = changed(route, "opticalClass", "class-b-plus", { hubLaunchLeastDbm: 1.5, hubLaunchMostDbm: 5 });
    for (const row of rowsOf(writeCsv(powered, "port"))) {
      expect(Number(row.port_loss_down_most_db)).toBeGreaterThan(Number(row.port_loss_down_least_db) - 1e-9);
      expect(Number(row.port_power_least_dbm)).toBeCloseTo(1.5 - Number(row.port_loss_down_most_db), 2);
      expect(Number(row.port_power_most_dbm)).toBeCloseTo(5 - Number(row.port_loss_down_least_db), 2);
    }
    expect(rowsOf(writeCsv(route, "port"))[0]?.port_power_least_dbm).toBe("");
  });

  test("terminals and fiber uses name what they belong to", () => {
    expect(rowsOf(writeCsv(route, "terminal"))[0]).toMatchObject({
      pole: "P2",
      from_pole_ft: "3",
      port_count: "8",
      used_port_count: "2",
    });
    expect(rowsOf(writeCsv(route, "fiberUse"))[0]).toMatchObject({ tube: "1", purpose: "terminal" });
  });

  test("text that a spreadsheet would run is guarded, a negative number is not", () => {
    const risky = changed(changed(route, "pole", "pole-1", { note: "=1+1", tag: "-7" }), "pole", "pole-2", {
      eastM: -3.048,
    });
    const text = writeCsv(risky, "pole");
    expect(text).toContain(`"'=1+1"`);
    expect(text).toContain(`"'-7"`);
    expect(text).toMatch(/^-10,0,P2/m);
  });

  test("the same route gives the same bytes, in every list", () => {
    for (const list of csvLists) expect(writeCsv(smallRoute(), list)).toBe(writeCsv(route, list));
  });
});

test("a fiber goes out with its tube and its colour in words", () => {
  const [first] = rowsOf(writeCsv(smallRoute(), "fiberUse"));
  expect(first).toMatchObject({ fiber: "1", tube: "1", tube_colour: "blue", fiber_in_tube: "1", fiber_colour: "blue" });
});

test("a height of 42.1 ft goes out as it was written", () => {
  const route = changed(smallRoute(), "pole", "pole-1", { aboveGroundM: 12.8321 });
  expect(rowsOf(writeCsv(route, "pole"))[0]).toMatchObject({ height_above_ground_ft: "42.1" });
});
