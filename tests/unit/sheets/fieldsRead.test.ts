import { describe, expect, test } from "vitest";
import { subjectOf } from "../../../core/closeout/subject.ts";
import { asBuiltRows } from "../../../core/edits/asBuiltRows.ts";
import { routeWith } from "../../../core/layout/rowSet.ts";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import type { Mark } from "../../../core/sheets/paper/displayList.ts";
import { overlaps } from "../../../core/sheets/paper/overlaps.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

const terminal = subjectOf("terminal", "terminal-1");
const bond = (n: number) => subjectOf("bond", `pole-${n}`, 0, "section-1");
const kinds = ["terminal", "bonding", "schedule"] as const;
const designed = changed(smallRoute(), "opticalClass", "class-b-plus", { hubLaunchLeastDbm: 1.5, hubLaunchMostDbm: 5 });
const wavelengthNm = designed.opticalClass.get("class-b-plus")?.downNm ?? 0;
const readings = [
  readingRow(terminal, "offset", 1.1176),
  readingRow(terminal, "slack", 9.2964),
  readingRow(terminal, "markBefore", 12004),
  readingRow(terminal, "markAfter", 12014),
  readingRow(subjectOf("port", "terminal-1", 1), "power", -18.43, wavelengthNm),
  readingRow(subjectOf("drop", "drop-1"), "portOfDrop", 1),
  readingRow(bond(1), "continuity", 1),
  readingRow(bond(1), "resistance", 17.25),
  readingRow(bond(2), "continuity", 0),
];
const read = withRows(designed, "reading", readings);

function asBuilt(route: Route) {
  const rows = asBuiltRows(route);
  const revised = { revisionId: null, since: { letter: "", before: openPlant(route), rows }, isAsBuilt: true };
  return composeSet(openPlant(routeWith(route, rows)), [], { kinds, revised }).sheets;
}

type Sheets = ReturnType<typeof asBuilt>;

function marksOn(sheets: Sheets, kind: string): readonly Mark[] {
  return sheets.filter((one) => one.kind === kind).flatMap(({ marks }) => marks);
}

function textsOn(sheets: Sheets, kind: string): readonly string[] {
  return marksOn(sheets, kind).flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
}

function tally(texts: readonly string[], wanted: string): number {
  return texts.filter((one) => one === wanted).length;
}

describe("the fields of a set drawn as built", () => {
  const sheets = asBuilt(read);
  const empty = asBuilt(designed);

  test("of a job card hold offset, marks, coil and light as they were read, in the route's units", () => {
    const texts = textsOn(sheets, "terminal");
    for (const figure of ["44", "12004", "12014", "30.5", "-18.43"]) expect(tally(texts, figure)).toBe(1);
    for (const figure of ["44", "12004", "12014", "30.5", "-18.43"])
      expect(tally(textsOn(empty, "terminal"), figure)).toBe(0);
  });

  test("of a metric route hold millimetres and metres", () => {
    const metric = [...read.settings.keys()].reduce(
      (route, id) => changed(route, "settings", id, { unitSystem: "metric" }),
      read,
    );
    const texts = textsOn(asBuilt(metric), "terminal");
    for (const figure of ["1118", "9.3"]) expect(tally(texts, figure)).toBe(1);
  });

  test("tick the drop whose port was read, and no other", () => {
    expect(tally(textsOn(sheets, "terminal"), "☑")).toBe(1);
    expect(tally(textsOn(empty, "terminal"), "☑")).toBe(0);
  });

  test("tick a step where all its fields were read: hung, opened, coiled", () => {
    const ticks = (of: Sheets) =>
      marksOn(of, "terminal").filter(
        (mark) => mark.kind === "line" && mark.pen === "bold" && mark.layer === "tables" && mark.pointsMm.length === 3,
      ).length;
    expect(ticks(sheets) - ticks(empty)).toBe(3);
    const half = withRows(designed, "reading", [readingRow(terminal, "markBefore", 12004)]);
    expect(ticks(asBuilt(half)) - ticks(empty)).toBe(0);
  });

  test("of the bonding schedule hold the ground's resistance; a bond that does not conduct says no", () => {
    const texts = textsOn(sheets, "bonding");
    for (const told of ["17.25", "☑", "no"]) expect(tally(texts, told)).toBe(1);
    expect(tally(texts, "□")).toBe(tally(textsOn(empty, "bonding"), "□") - 2);
  });

  test("of the port schedule hold the light measured", () => {
    expect(tally(textsOn(sheets, "schedule"), "-18.43")).toBe(1);
  });

  test("stay empty where crews read otherwise and nobody has decided", () => {
    const ohm = readingRow(bond(1), "resistance", 17.25);
    const one = withRows(designed, "reading", [ohm]);
    const disputed = withRows(one, "rivalReading", [
      { ...ohm, id: "rival-1", readingId: ohm.id, value: 30, packetId: "packet-1", madeOn: "" },
    ]);
    expect([one, disputed].map((route) => tally(textsOn(asBuilt(route), "bonding"), "17.25"))).toEqual([1, 0]);
  });

  test("no figure lies on other text", () => {
    expect(sheets.flatMap((sheet) => overlaps(sheet).map((pair) => [sheet.number, pair]))).toEqual([]);
  });

  test("stay empty in the set that is built by, whatever was read", () => {
    const drawn = (route: Route) => composeSet(openPlant(route), [], { kinds }).sheets;
    expect(drawn(read)).toEqual(drawn(designed));
  });
});
