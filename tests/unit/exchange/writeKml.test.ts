import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { placedTables } from "../../../core/exchange/placedContent.ts";
import { writeKml } from "../../../core/exchange/writeKml.ts";
import { distanceM } from "../../../core/geodesy/distance.ts";
import { elementsCalled, readXml } from "../../fixtures/exchange/readXml.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { valueIn } from "./importRoute.ts";

const origin = { originLonDeg: -71.13, originLatDeg: 42.39 };
const route = changed(smallRoute(), "settings", "settings", origin);

describe("a route written as KML, read by a parser that is not ours", () => {
  const document = readXml(valueIn(writeKml(route)));
  const placemarks = elementsCalled("Placemark", document);
  const placemark = (id: string) => placemarks.find((one) => one.attributes.id === id);
  const placesOf = (id: string) =>
    placemark(id)
      ?.children.flatMap((one) => elementsCalled("coordinates", one))
      .flatMap((one) => one.text.split(" ").map((pair) => pair.split(",").map(Number)));

  test("every row that has a place is there once, in the folder of its table", () => {
    expect(placemarks.map((one) => one.attributes.id)).toEqual(
      placedTables.flatMap((table) => [...route[table].keys()].sort()),
    );
    const [poles] = elementsCalled("Folder", document);
    expect(poles?.children.map((one) => one.text || one.attributes.id)).toEqual(["Poles", ...route.pole.keys()]);
  });

  test("places are longitude first, and as far apart as on the ground", () => {
    expect(placesOf("pole-1")).toEqual([[-71.13, 42.39]]);
    const [[lonA = 0, latA = 0] = [], [lonB = 0, latB = 0] = []] = placesOf("span-1") ?? [];
    expect(distanceM([lonA, latA], [lonB, latB])).toBeCloseTo(45, 1);
  });

  test("a placemark is called what its row is called and carries its figures", () => {
    const unit = placemark("unit-1");
    expect(unit?.children.find((one) => one.name === "name")?.text).toBe(route.livingUnit.get("unit-1")?.address);
    const data = unit ? elementsCalled("Data", unit).map((one) => [one.attributes.name, one.children[0]?.text]) : [];
    expect(data).toContainEqual(["address", route.livingUnit.get("unit-1")?.address]);
  });
});

test("whatever is typed into a name, the file is well formed and tells the same name", () => {
  fc.assert(
    fc.property(
      fc.string({ unit: "grapheme" }).filter((one) => one.trim() !== "" && !/\p{Cc}/u.test(one)),
      (tag) => {
        const document = readXml(valueIn(writeKml(changed(route, "pole", "pole-1", { tag }))));
        const pole = elementsCalled("Placemark", document).find((one) => one.attributes.id === "pole-1");
        expect(pole?.children.find((one) => one.name === "name")?.text).toBe(tag);
      },
    ),
    { numRuns: 40 },
  );
});

test("a route on a local grid has no place on the globe and is refused", () => {
  expect(writeKml(smallRoute())).toMatchObject({ ok: false, fault: { code: "no-origin" } });
});
