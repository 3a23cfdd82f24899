import { expect, test } from "vitest";
import { poleJoins } from "../../../core/exchange/poleJoins.ts";
import { readGeojson } from "../../../core/exchange/readGeojson.ts";
import { writeCsv } from "../../../core/exchange/writeCsv.ts";
import { writeGeojson } from "../../../core/exchange/writeGeojson.ts";
import type { Route } from "../../../core/model/route.ts";
import { applied, bareRoute, csv, planOf, valueIn } from "./importRoute.ts";

const list = [
  "tag,lon,lat,line,order,from pole",
  "A1,-71.1,42.1,A,1,",
  "A2,-71.1,42.1003,A,2,",
  "A3,-71.1,42.1006,A,3,",
  "B1,-71.1004,42.1003,B,1,A2",
  "B2,-71.1008,42.1003,B,2,",
].join("\n");

const globe = { originLonDeg: -71.1, originLatDeg: 42.1 };
const withLateral = () => applied(bareRoute(globe), planOf(bareRoute(globe), { kind: "pole", table: csv(list) }));

function joinedTags(route: Route): string[] {
  const tag = (id: string) => route.pole.get(id)?.tag ?? id;
  return [...route.span.values()].map((span) => [tag(span.fromPoleId), tag(span.toPoleId)].sort().join("-")).sort();
}

test("only the span that line and order do not tell is named, at the lateral's first pole", () => {
  const route = withLateral();
  const byTag = [...poleJoins(route)].map(([id, from]) => [route.pole.get(id)?.tag, from]);
  expect(byTag).toEqual([["B1", "A2"]]);
});

test("poles written as CSV or GeoJSON read back with the lateral still joined to its line", () => {
  const route = withLateral();
  const spans = ["A1-A2", "A2-A3", "A2-B1", "B1-B2"];
  expect(joinedTags(route)).toEqual(spans);
  const texts = [csv(writeCsv(route, "pole")), valueIn(readGeojson("r.geojson", valueIn(writeGeojson(route))))];
  for (const table of texts) {
    expect(joinedTags(applied(bareRoute(globe), planOf(bareRoute(globe), { kind: "pole", table })))).toEqual(spans);
  }
});

test("spans are read from our own GeoJSON without its other features being called bad", () => {
  const route = withLateral();
  const table = valueIn(readGeojson("r.geojson", valueIn(writeGeojson(route))));
  const plan = planOf(route, { kind: "spanPair", table });
  expect(plan.bad).toEqual([]);
  expect(plan.notes.join(" ")).toContain("features of other tables");
});
