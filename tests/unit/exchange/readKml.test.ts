import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readKml } from "../../../core/exchange/readKml.ts";
import { tableLimits } from "../../../core/exchange/table.ts";
import { bareRoute, fixtureText, planOf, valueIn } from "./importRoute.ts";

const kml = (inside: string): string =>
  `<?xml version="1.0"?>\n<kml xmlns="http://www.opengis.net/kml/2.2"><Document>\n${inside}</Document></kml>`;
const tableOf = (inside: string) => valueIn(readKml("a.kml", kml(inside)));
const placed = (geometry: string) => tableOf(`<Placemark><name>A</name>${geometry}</Placemark>`);
const fixture = (name: string) => readKml(name, fixtureText(`kml-gpx/${name}`));

describe("KML", () => {
  test("a placemark becomes a row: its place, what it is called, its folders, its id, its extended data", () => {
    const table = tableOf(`<Folder><name>Feeder 12</name><Folder><name>Poles</name>
      <Placemark id="p-1"><name>P-1</name><description>by the gate</description>
        <ExtendedData><Data name="height"><displayName>Height</displayName><value>40 ft</value></Data></ExtendedData>
        <Point><coordinates>-71.1,42.4,30</coordinates></Point></Placemark></Folder>
      <Placemark><name>P-2</name><ExtendedData><SchemaData><SimpleData name="class">4</SimpleData></SchemaData></ExtendedData>
        <Point><coordinates> -71.2, 42.5 </coordinates></Point></Placemark></Folder>`);
    expect(table).toEqual({
      name: "a.kml",
      lineWord: "placemark",
      headings: ["lon", "lat", "name", "description", "folder", "id", "height", "class"],
      rows: [
        { line: 1, cells: ["-71.1", "42.4", "P-1", "by the gate", "Feeder 12 / Poles", "p-1", "40 ft", ""] },
        { line: 2, cells: ["-71.2", "42.5", "P-2", "", "Feeder 12", "", "", "4"] },
      ],
      bad: [],
      notes: [],
    });
  });

  test("what the extended data says under a name counts before the placemark's own", () => {
    const data = '<ExtendedData><Data name="name"><value>told</value></Data></ExtendedData>';
    expect(placed(data).rows).toMatchObject([{ cells: ["", "", "told"] }]);
  });

  test("a description in HTML is read as its words, line by line", () => {
    const html =
      "<![CDATA[<table><tr><td>Class</td> <td>4</td></tr><tr><td>Owner</td><td>Hill &amp; Co</td></tr></table>]]>";
    expect(placed(`<description>${html}</description>`).rows).toMatchObject([
      { cells: ["", "", "A", "Class 4\nOwner Hill & Co"] },
    ]);
  });

  test("letters written by number come as they are", () => {
    expect(
      tableOf("<Placemark><name>&#x1F600; &#233; &lt;b&gt; &amp;amp; &nbsp; &#xD800;</name></Placemark>").rows,
    ).toEqual([{ line: 1, cells: ["", "", "😀 é <b> &amp; &nbsp; \uFFFD"] }]);
  });

  test.each([
    ["the middle of a line", "<LineString><coordinates>0,1 2,1</coordinates></LineString>", [1, 1]],
    [
      "the centre of a polygon, its hole before its outside",
      `<Polygon><innerBoundaryIs><LinearRing><coordinates>4,4 5,4 5,5 4,4</coordinates></LinearRing></innerBoundaryIs>
        <outerBoundaryIs><LinearRing><coordinates>0,0 4,0 4,2 0,2 0,0</coordinates></LinearRing></outerBoundaryIs></Polygon>`,
      [2, 1],
    ],
    ["the centre of a ring", "<LinearRing><coordinates>0,0 4,0 4,2 0,2 0,0</coordinates></LinearRing>", [2, 1]],
    [
      "the longest of several lines",
      `<MultiGeometry><LineString><coordinates>0,0 1,0</coordinates></LineString>
        <MultiGeometry><LineString><coordinates>0,5 4,5</coordinates></LineString></MultiGeometry></MultiGeometry>`,
      [2, 5],
    ],
    [
      "the first of a mixed group",
      `<MultiGeometry><Point><coordinates>7,8</coordinates></Point>
        <LineString><coordinates>0,5 4,5</coordinates></LineString></MultiGeometry>`,
      [7, 8],
    ],
  ])("%s is its place, and that is said", (_, geometry, place) => {
    const { rows, notes } = placed(geometry);
    expect(rows[0]?.cells.slice(0, 2).map(Number)).toEqual(place);
    expect(notes).toEqual(["1 lines, polygons or groups are read as one place each: their middle."]);
  });

  test.each([
    ["letters", "<Point><coordinates>no,no</coordinates></Point>", "A coordinate is not a number."],
    ["a blank", "<Point><coordinates>-71,,42</coordinates></Point>", "A coordinate is not a number."],
    ["a figure of another base", "<Point><coordinates>0x10,42</coordinates></Point>", "A coordinate is not a number."],
    ["no comma", "<Point><coordinates>-71 42</coordinates></Point>", "A position needs a longitude and a latitude."],
    [
      "an open ring",
      "<LinearRing><coordinates>0,0 4,0 4,2 0,2</coordinates></LinearRing>",
      "A polygon's ring does not end where it starts.",
    ],
    ["an empty polygon", "<Polygon/>", "The list of positions is missing or empty."],
  ])("a placemark with %s for a place is reported by number and name, and the others are kept", (_, geometry, what) => {
    const good = "<Placemark><Point><coordinates>1,2</coordinates></Point></Placemark>";
    const table = tableOf(`${good}<Placemark><name>P-7</name>${geometry}</Placemark>`);
    expect(table.rows).toHaveLength(1);
    expect(table.bad).toMatchObject([{ line: 2, value: "P-7", what }]);
  });

  test("a placemark without a place stays, without one; a track is told", () => {
    expect(valueIn(fixture("nogeomplacemark.kml")).rows).toMatchObject([
      { cells: ["", "", "With all inline styles", "Inline style test"] },
    ]);
    expect(valueIn(fixture("gxmultitrack.kml"))).toMatchObject({
      rows: { length: 3 },
      notes: ["1 tracks or models give no place."],
    });
  });

  test.each([
    ["nothing placed", kml(""), "The file has no placemarks."],
    [
      "a link to elsewhere",
      kml("<NetworkLink/>"),
      "The file has no placemarks of its own; it only links to others, which are not fetched.",
    ],
  ])("a file with %s is refused with that reason", (_, text, what) => {
    expect(readKml("a.kml", text)).toMatchObject({ ok: false, fault: { code: "empty-table", what, where: "a.kml" } });
  });

  test("more placemarks than a table may have are counted and refused, none of them held", () => {
    const text = kml("<Placemark/>".repeat(tableLimits.rowCount + 1));
    expect(readKml("a.kml", text)).toMatchObject({ ok: false, fault: { code: "too-many-rows" } });
  });

  test("more positions than anybody surveys are refused, not held", () => {
    const line = `<LineString><coordinates>${"1,2 ".repeat(1_000_001)}</coordinates></LineString>`;
    expect(readKml("a.kml", kml(`<Placemark>${line}</Placemark>`))).toMatchObject({
      ok: false,
      fault: { code: "no-good-row", what: expect.stringContaining("more positions than can be read") },
    });
  });

  test.each(
    readdirSync(new URL("../../fixtures/exchange/kml-gpx", import.meta.url)).filter((name) => name.endsWith(".kml")),
  )("the open file %s is read or refused, never a crash", (name) => {
    const read = fixture(name);
    if (read.ok) expect(read.value.rows.length).toBeGreaterThan(0);
    else expect([read.fault.what, read.fault.where, read.fault.mend].every((words) => words !== "")).toBe(true);
  });

  test("trailheads of an open file come in as poles by their own words", () => {
    const table = valueIn(fixture("simpledata.kml"));
    expect(table.headings).toEqual(["lon", "lat", "name", "TrailHeadName", "TrailLength", "ElevationGain"]);
    const plan = planOf(bareRoute(), { kind: "pole", table });
    expect(plan).toMatchObject({ addedCount: 2, columns: { lon: "lon", lat: "lat", tag: "name" } });
  });
});
