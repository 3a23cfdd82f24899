import { describe, expect, test } from "vitest";
import { mapColumns } from "../../../core/exchange/mapColumns.ts";
import { csv, fixtureText } from "./importRoute.ts";

describe("mapped columns", () => {
  const table = csv("tag,label,lon,lat\nP1,A,1,2\n");

  test("what the person names goes before the guess", () => {
    expect(mapColumns(table, "pole", { tag: "label" })).toMatchObject({
      ok: true,
      value: { tag: "label", lon: "lon", lat: "lat" },
    });
  });

  test("a field named with nothing is left out", () => {
    expect(mapColumns(table, "pole", { tag: "" })).toEqual({ ok: true, value: { lon: "lon", lat: "lat" } });
  });

  test.each([
    ["a heading the file does not have", { tag: "Tag No" }, "unknown-column"],
    ["a field the import does not have", { colour: "tag" }, "unknown-field"],
    ["no place", { lon: "" }, "missing-column"],
  ])("%s is a fault that lists what there is", (_, explicit, code) => {
    expect(mapColumns(table, "pole", explicit)).toMatchObject({ ok: false, fault: { code } });
  });

  test("an address list without coordinates is refused with its columns", () => {
    const result = mapColumns(csv(fixtureText("cambridge-address-list.csv")), "livingUnit");
    expect(result).toMatchObject({
      ok: false,
      fault: { code: "missing-column", mend: expect.stringContaining("full_address") },
    });
  });
});
