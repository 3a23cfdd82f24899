import { describe, expect, test } from "vitest";
import { planImport } from "../../../core/exchange/planImport.ts";
import { settingsOf } from "../../../core/model/route.ts";
import { withRows } from "../../fixtures/route/buildRoute.ts";
import { applied, bareRoute, csv, fixtureText, geojsonFixture, planOf } from "./importRoute.ts";

const line =
  "tag,lon,lat,height-class,line,order\nP1,-71.13,42.39,45-4,Main,1\nP2,-71.1295,42.39,45-4,Main,2\nP3,-71.129,42.39,40-5,Main,3\n";

describe("importing poles", () => {
  test("the first list gives poles, spans in order and the route's origin, as one change", () => {
    const before = bareRoute();
    const plan = planOf(before, { kind: "pole", table: csv(line) });
    const route = applied(before, plan);
    expect(plan).toMatchObject({ addedCount: 3, spanCount: 2, skippedCount: 0, bad: [], refused: false });
    expect([settingsOf(route).originLonDeg, settingsOf(route).originLatDeg]).toEqual([-71.1295, 42.39]);
    expect(route.pole.get("pole-1")).toMatchObject({
      tag: "P1",
      aboveGroundM: 11.7348,
      poleClass: "4",
      line: "Main",
      order: 1,
      northM: 0,
    });
    // 0.0005 degrees along the parallel: a cos(lat) / sqrt(1 - e^2 sin^2(lat)) = 4,717,93x m a radian, by hand
    expect(route.span.get("span-1")).toMatchObject({
      fromPoleId: "pole-1",
      toPoleId: "pole-2",
      lengthM: 41.171,
      origin: "ordered",
    });
  });

  test("a bad row is told by file, line, column and value; the good ones can still be taken", () => {
    const table = csv(
      "tag,lon,lat\nP1,-71.13,42.39\nP2,west,42.39\nP1,-71.131,42.39\n,-71.132,42.39\nP5,-71.133,42.39\n",
      "poles.csv",
    );
    const plan = planOf(bareRoute(), { kind: "pole", table });
    expect(plan.bad.map(({ file, line: at, column, value }) => [file, at, column, value])).toEqual([
      ["poles.csv", 3, "lon", "west"],
      ["poles.csv", 4, "tag", "P1"],
      ["poles.csv", 5, "tag", ""],
    ]);
    expect(plan.addedCount).toBe(2);
  });

  test("a person may refuse the whole file for one bad row: nothing would be changed", () => {
    const table = csv("tag,lon,lat\nP1,-71.13,42.39\nP2,west,42.39\n");
    const plan = planOf(bareRoute(), { kind: "pole", table, onBad: "refuse" });
    expect(plan).toMatchObject({ refused: true, rows: [], addedCount: 1, bad: [{ line: 3 }] });
  });

  test("poles without a tag are numbered in file order where a prefix is given", () => {
    const plan = planOf(bareRoute(), {
      kind: "pole",
      table: geojsonFixture("cartago-poles.geojson"),
      options: { numberUntagged: "P-" },
    });
    expect(plan).toMatchObject({ addedCount: 16, bad: [] });
    expect(plan.rows.find((row) => row.table === "pole")?.after).toMatchObject({ tag: "P-1", note: "power=pole" });
  });

  test("a pole that is already there is skipped, or replaced without losing what the file does not give", () => {
    const first = applied(bareRoute(), planOf(bareRoute(), { kind: "pole", table: csv(line) }));
    const again = csv("tag,lon,lat,owner\nP2,-71.1294,42.39,Town\nP9,-71.1285,42.39,Town\n");
    expect(planOf(first, { kind: "pole", table: again, spans: "none" })).toMatchObject({
      addedCount: 1,
      replacedCount: 0,
      skippedCount: 1,
    });
    const replaced = applied(
      first,
      planOf(first, { kind: "pole", table: again, spans: "none", onExisting: "replace" }),
    );
    expect(replaced.pole.get("pole-2")).toMatchObject({ owner: "Town", poleClass: "4", order: 2 });
    expect(replaced.span.get("span-1")?.lengthM).toBeGreaterThan(49);
    expect(replaced.span.get("span-2")?.lengthM).toBeLessThan(33);
    expect(replaced.pole.get("pole-4")).toMatchObject({ tag: "P9" });
  });

  test("the same file a second time changes nothing", () => {
    const first = applied(bareRoute(), planOf(bareRoute(), { kind: "pole", table: csv(line) }));
    expect(planOf(first, { kind: "pole", table: csv(line) }).rows).toEqual([]);
    expect(
      planOf(first, { kind: "pole", table: csv(line), onExisting: "replace" }).rows.every(
        (row) => row.table === "pole",
      ),
    ).toBe(true);
  });

  test.each([
    ["past the pole of the globe", "P1,42.39,-171.13\n", "swapped"],
    ["near the route only the other way round", "P9,42.39,-71.13\n", "swapped"],
    ["in another country", "P9,10,50\n", "100 km"],
    ["at 0, 0", "P9,0,0\n", "nobody measured"],
  ])("a place %s is a bad row that says so", (_, row, words) => {
    const route = bareRoute({ originLonDeg: -71.13, originLatDeg: 42.39 });
    expect(planOf(route, { kind: "pole", table: csv(`tag,lon,lat\n${row}`) }).bad).toMatchObject([
      { line: 2, what: expect.stringContaining(words) },
    ]);
  });

  test("a local grid in feet is taken into a route without an origin, and the length is the plane's", () => {
    const table = csv("tag,x_ft,y_ft,order\nP1,0,0,1\nP2,300,400,2\n");
    const route = applied(bareRoute(), planOf(bareRoute(), { kind: "pole", table }));
    expect(route.pole.get("pole-2")).toMatchObject({ eastM: 91.44, northM: 121.92 });
    expect(route.span.get("span-1")?.lengthM).toBe(152.4);
    expect(settingsOf(route).originLonDeg).toBeNull();
  });

  test("places on the globe do not mix with a local grid, either way", () => {
    const onGrid = applied(bareRoute(), planOf(bareRoute(), { kind: "pole", table: csv("tag,x,y\nP1,0,0\n") }));
    const globe = csv("tag,lon,lat\nP2,-71.13,42.39\n");
    const choices = { kind: "pole", onBad: "takeGood", onExisting: "skip" } as const;
    expect(planImport(onGrid, { ...choices, table: globe })).toMatchObject({
      ok: false,
      fault: { code: "mixed-grid" },
    });
    const onGlobe = bareRoute({ originLonDeg: -71.13, originLatDeg: 42.39 });
    expect(planImport(onGlobe, { ...choices, table: csv("tag,x,y\nP1,0,0\n") })).toMatchObject({
      ok: false,
      fault: { code: "mixed-grid" },
    });
  });

  test.each([
    ["metres by the heading", "tag,x,y,height_m\nP1,0,0,13.716\n", {}, 11.7348],
    ["feet by the heading", "tag,x,y,height ft\nP1,0,0,45\n", {}, 11.7348],
    ["metres by option", "tag,x,y,height\nP1,0,0,13.716\n", { lengthUnit: "m" }, 11.7348],
    ["above ground by the heading", "tag,x,y,height above ground (ft)\nP1,0,0,38.5\n", {}, 11.7348],
    ["above ground by option", "tag,x,y,height (ft)\nP1,0,0,38.5\n", { heightIs: "aboveGround" }, 11.7348],
    ["unknown as 0", "tag,x,y,height_ft\nP1,0,0,0\n", {}, null],
  ] as const)("a height in %s is read", (_, text, options, aboveGroundM) => {
    const plan = planOf(bareRoute(), { kind: "pole", table: csv(text), options });
    expect(plan.rows[0]?.after).toMatchObject({ aboveGroundM });
  });

  test("a real city's poles come in with inferred spans, every one for review", () => {
    const plan = planOf(bareRoute(), { kind: "pole", table: geojsonFixture("cambridge-poles.geojson") });
    const route = applied(bareRoute(), plan);
    expect(route.pole.size).toBe(304);
    expect(plan.bad).toEqual([]);
    expect(route.span.size).toBeGreaterThan(200);
    expect(plan.spansForReview.length).toBe(route.span.size);
    const joined = new Set([...route.span.values()].flatMap((span) => [span.fromPoleId, span.toPoleId]));
    const onLine = [...route.pole.values()].filter((pole) => pole.order > 0).map((pole) => pole.id);
    expect(new Set(onLine)).toEqual(joined);
  });
});

describe("importing living units", () => {
  test("a real street's doors come in under their address and building", () => {
    const plan = planOf(bareRoute(), { kind: "livingUnit", table: geojsonFixture("cambridge-addresses.geojson") });
    expect(plan).toMatchObject({ addedCount: 42, bad: [] });
    expect(applied(bareRoute(), plan).livingUnit.get("livingUnit-1")).toMatchObject({
      address: "27 Pemberton St",
      building: "77-18",
      kind: "home",
    });
  });

  test("units of one building share it where the file names none", () => {
    const table = csv("address,unit,x,y\n12 Elm St,1,0,0\n12 Elm St,2,0,0\n14 Elm St,1,9,9\n");
    const route = applied(bareRoute(), planOf(bareRoute(), { kind: "livingUnit", table }));
    expect([...route.livingUnit.values()].map(({ address, building }) => [address, building])).toEqual([
      ["12 Elm St Unit 1", "12 Elm St"],
      ["12 Elm St Unit 2", "12 Elm St"],
      ["14 Elm St Unit 1", ""],
    ]);
  });

  test("a house number that repeats in a real estate is reported with both places", () => {
    const plan = planOf(bareRoute(), { kind: "livingUnit", table: geojsonFixture("cartago-houses.geojson") });
    expect([plan.addedCount, plan.bad.length]).toEqual([103, 10]);
    expect(plan.bad[0]).toMatchObject({ line: 2, column: "name", value: "1A", what: "1A is already on feature 1." });
  });

  test("an address without a house is reported, the rest of a real island's list is taken", () => {
    const plan = planOf(bareRoute(), { kind: "livingUnit", table: csv(fixtureText("isle-of-man-addresses.csv")) });
    expect(plan.addedCount + plan.bad.length).toBe(200);
    expect(plan.bad[0]).toMatchObject({ line: 3, what: "The row has no address: nothing tells the house." });
  });

  test("a kind nobody knows is reported where the person named the column", () => {
    const table = csv("address,x,y,sort\n1 Elm St,0,0,home\n2 Elm St,5,5,castle\n");
    expect(planOf(bareRoute(), { kind: "livingUnit", table, columns: { kind: "sort" } }).bad).toMatchObject([
      { line: 3, column: "sort", value: "castle" },
    ]);
  });
});

describe("importing what belongs to poles and spans", () => {
  const poles = csv("tag,x_ft,y_ft\nP1,0,0\nP2,100,0\nP3,200,0\n");
  const stood = applied(bareRoute(), planOf(bareRoute(), { kind: "pole", table: poles, spans: "none" }));
  const joined = applied(
    stood,
    planOf(stood, { kind: "spanPair", table: csv("from,to,length ft\nP1,P2,\nP2,P3,101\n") }),
  );

  test("span pairs join poles by tag, and a repeated or unknown pair is reported", () => {
    expect([...joined.span.values()].map(({ lengthM, origin }) => [lengthM, origin])).toEqual([
      [30.48, "surveyed"],
      [30.785, "surveyed"],
    ]);
    const bad = planOf(joined, { kind: "spanPair", table: csv("from,to\nP1,P3\nP3,P1\nP1,P8\nP2,P2\n") }).bad;
    expect(bad.map((row) => row.line)).toEqual([3, 4, 5]);
  });

  test("a crossing told from the far pole lies the same distance from it", () => {
    const table = csv(
      "from_pole,to_pole,distance_ft,surface,width_ft,name\nP2,P1,30,road,24,Elm St\nP1,P2,400,road,24,\nP1,P3,5,rail,10,\n",
    );
    const plan = planOf(joined, { kind: "crossing", table });
    expect(plan.rows.map((row) => row.after)).toMatchObject([
      { spanId: "span-1", offsetM: 21.336, widthM: 7.3152, surface: "road", surfaceM: null },
    ]);
    expect(plan.bad.map((row) => [row.line, row.what])).toEqual([
      [3, "The crossing lies past the far pole."],
      [4, "There is no span between these poles in the route."],
    ]);
  });

  test("attachments hang on poles by tag; a supply wire must say its voltage", () => {
    const table = csv(
      "pole,owner,type,height,voltage\nP1,Power Co,primary,34 ft,7.2 kV\nP1,Power Co,neutral,29 ft 6 in,\nP2,Power Co,secondary,27,\nP7,Tel Co,telephone,22,\n",
    );
    const plan = planOf(joined, { kind: "attachment", table });
    expect(plan.rows.map((row) => row.after)).toMatchObject([
      { poleId: "pole-1", kind: "primary", heightM: 10.3632, voltageV: 7200 },
      { poleId: "pole-1", kind: "neutral", heightM: 8.9916, voltageV: 0 },
    ]);
    expect(plan.bad.map((row) => [row.line, row.column])).toEqual([
      [4, "voltage"],
      [5, "pole"],
    ]);
  });

  test("new ids go on after the greatest in use", () => {
    const row = { ...(joined.pole.get("pole-1") ?? fail()), id: "pole-41", tag: "X" };
    const plan = planOf(withRows(joined, "pole", [row]), {
      kind: "pole",
      table: csv("tag,x,y\nN1,0,50\n"),
      spans: "none",
    });
    expect(plan.rows[0]?.id).toBe("pole-42");
  });
});

function fail(): never {
  throw new Error("the pole is missing");
}
