import { describe, expect, test } from "vitest";
import { guessColumns } from "../../../core/exchange/guessColumns.ts";
import { csv, fixtureText, geojsonFixture } from "./importRoute.ts";

const headingsOf = (guess: ReturnType<typeof guessColumns>): Record<string, string> =>
  Object.fromEntries(Object.entries(guess).map(([field, { heading }]) => [field, heading]));

describe("guessed columns", () => {
  test.each(["Pole Tag", "pole_number", "PoleID", "POLE-NO.", "Structure ID"])("%s is the tag", (heading) => {
    expect(headingsOf(guessColumns(csv(`${heading},lon,lat\nP1,1,2\n`), "pole"))).toEqual({
      tag: heading,
      lon: "lon",
      lat: "lat",
    });
  });

  test.each(["height_ft", "Height (m)", "ht ft", "PoleHeight", "heightft"])("%s is the pole's length", (heading) => {
    expect(headingsOf(guessColumns(csv(`tag,${heading}\nP1,45\n`), "pole"))).toEqual({
      tag: "tag",
      poleLength: heading,
    });
  });

  test("a column whose cells cannot be read as the field is not taken for it", () => {
    expect(guessColumns(csv("tag,height\nP1,tall\nP2,short\n"), "pole")).not.toHaveProperty("poleLength");
  });

  test("a needed column under its own name is taken though most of its cells cannot be read, so that they are shown", () => {
    const guess = guessColumns(csv("Pole,Kind,Height m\nP1,lamp post,6\nP2,signal,5\n"), "attachment");
    expect(headingsOf(guess)).toMatchObject({ kind: "Kind" });
  });

  test("of two likely tag columns the one whose cells differ is taken", () => {
    const table = csv(`pole num,pole id\n${[1, 2, 3, 4].map((n) => `${n % 2},A${n}`).join("\n")}\n`);
    expect(headingsOf(guessColumns(table, "pole")).tag).toBe("pole id");
  });

  test("a building column that says what kind of building is the kind", () => {
    expect(headingsOf(guessColumns(geojsonFixture("cartago-houses.geojson"), "livingUnit"))).toMatchObject({
      kind: "building",
      address: "name",
    });
  });

  test("the columns of a real island's addresses are found", () => {
    expect(headingsOf(guessColumns(csv(fixtureText("isle-of-man-addresses.csv")), "livingUnit"))).toEqual({
      lon: "lon",
      lat: "lat",
      houseNumber: "addr:housenumber",
      houseName: "addr:housename",
      street: "addr:street",
      unit: "addr:unit",
    });
  });

  test("a guess says how sure it is and why", () => {
    expect(guessColumns(csv("pole tag number,x,y\nP1,1,2\n"), "pole").tag).toEqual({
      heading: "pole tag number",
      confidenceFrac: 0.47,
      why: 'the heading has "pole tag" in it',
    });
  });
});
