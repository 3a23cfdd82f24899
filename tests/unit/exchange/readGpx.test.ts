import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readGpx } from "../../../core/exchange/readGpx.ts";
import { bareRoute, fixtureText, planOf, valueIn } from "./importRoute.ts";

const fixture = (name: string) => readGpx(name, fixtureText(`kml-gpx/${name}`));

describe("GPX", () => {
  test("a waypoint becomes a row: its place, what it says of itself, and what stands in its extensions", () => {
    const text = `<gpx><wpt lat="42.4" lon="-71.1"><ele>30.5</ele><name>P-1</name><desc>by the gate</desc>
      <link href="x"><text>y</text></link><extensions><a:pole><a:class>4</a:class></a:pole></extensions></wpt></gpx>`;
    expect(valueIn(readGpx("a.gpx", text))).toEqual({
      name: "a.gpx",
      lineWord: "waypoint",
      headings: ["lon", "lat", "ele_m", "name", "description", "class"],
      rows: [{ line: 1, cells: ["-71.1", "42.4", "30.5", "P-1", "by the gate", "4"] }],
      bad: [],
      notes: ["Elevations (ele_m) are a receiver's; match them to the ground only where they are good enough."],
    });
  });

  test("a receiver's elevation is not taken for the ground by itself, and in metres where a person says so", () => {
    const text = '<gpx><wpt lat="42.4" lon="-71.1"><ele>30.5</ele><name>P-1</name></wpt></gpx>';
    const table = valueIn(readGpx("a.gpx", text));
    const route = bareRoute({ unitSystem: "us" });
    expect(planOf(route, { kind: "pole", table }).columns).toEqual({ lon: "lon", lat: "lat", tag: "name" });
    const plan = planOf(route, { kind: "pole", table, columns: { ground: "ele_m" } });
    expect(plan.rows).toContainEqual(expect.objectContaining({ after: expect.objectContaining({ groundM: 30.5 }) }));
  });

  test("tracks and routes beside waypoints are passed over, and that is said", () => {
    expect(valueIn(fixture("garmin_extensions.gpx"))).toMatchObject({
      rows: [
        {
          cells: [
            "1",
            "0",
            "2",
            "waypoint name",
            "waypoint comment",
            "waypoint description",
            "waypoint source",
            "2007-11-25T17:58:00+01:00",
          ],
        },
        { cells: ["4", "3", "", "", "", "", "", ""] },
      ],
      notes: ["5 tracks or routes are passed over: only waypoints are read.", expect.stringContaining("ele_m")],
    });
  });

  test("a file of tracks alone is refused with what to do", () => {
    expect(fixture("osm.gpx")).toMatchObject({
      ok: false,
      fault: { code: "empty-table", what: "The file has no waypoints; its tracks and routes are not read." },
    });
  });

  test.each([
    ["undefined", "undefined, undefined"],
    ["", ", "],
    ["0x2", "0x2, 0x2"],
  ])('a waypoint at "%s" is reported by number and the others are kept', (degrees, value) => {
    const text = `<gpx><wpt lat="1" lon="2"/><wpt lat="${degrees}" lon="${degrees}"/></gpx>`;
    expect(valueIn(readGpx("a.gpx", text))).toMatchObject({
      rows: [{ line: 1, cells: ["2", "1"] }],
      bad: [{ line: 2, column: "lat, lon", value, what: "A coordinate is not a number." }],
    });
  });

  test("every waypoint of an open file is read", () => {
    expect(valueIn(fixture("wpt.gpx")).rows).toHaveLength(40);
  });

  test.each(
    readdirSync(new URL("../../fixtures/exchange/kml-gpx", import.meta.url)).filter((name) => name.endsWith(".gpx")),
  )("the open file %s is read or refused, never a crash", (name) => {
    const read = fixture(name);
    if (read.ok) expect(read.value.rows.length).toBeGreaterThan(0);
    else expect([read.fault.what, read.fault.where, read.fault.mend].every((words) => words !== "")).toBe(true);
  });
});
