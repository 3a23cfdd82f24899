import { describe, expect, test } from "vitest";
import { askedReadings } from "../../../core/closeout/askedReadings.ts";
import { builtThings, closeoutBoard } from "../../../core/closeout/board.ts";
import { furtherReadings } from "../../../core/closeout/furtherReadings.ts";
import { standingOf } from "../../../core/closeout/standing.ts";
import { readingId, subjectKey, subjectOf } from "../../../core/closeout/subject.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { withLateral } from "../../fixtures/route/faultyRoutes.ts";
import { milestoneRow, readingRow } from "../../fixtures/route/readingRow.ts";

const terminal1 = subjectOf("terminal", "terminal-1");
const isRead = (what: "offset" | "slack" | "markBefore" | "markAfter") => readingRow(terminal1, what, 1);

describe("what may be read beside what is asked for", () => {
  const further = (route: ReturnType<typeof smallRoute>, kind: "pole" | "port", id: string, port = 0) =>
    furtherReadings(openPlant(route), subjectOf(kind, id, port)).map(({ id: readId }) => readId);

  test("the mark of every cable at every pole it passes; where the cable ends it is asked for", () => {
    expect(further(smallRoute(), "pole", "pole-2")).toEqual(["pole pole-2 cable-1 mark"]);
    expect(further(smallRoute(), "pole", "pole-1")).toEqual([]);
  });

  test("light read at another wavelength is told though nobody asked for it", () => {
    const port = subjectOf("port", "terminal-1", 1);
    const route = withRows(smallRoute(), "reading", [readingRow(port, "power", -18, 1550)]);
    expect(further(route, "port", "terminal-1", 1)).toEqual(["port terminal-1 1 power 1550"]);
    expect(further(route, "port", "terminal-1", 2)).toEqual([]);
  });
});

describe("what is built along the route", () => {
  test("every pole, span, bond, terminal, port and drop is on the board once, in the row of the next terminal along", () => {
    const { rows, kinds } = closeoutBoard(openPlant(smallRoute()), "");
    expect(rows.map(({ terminalId, poleId }) => [terminalId, poleId])).toEqual([
      ["terminal-1", "pole-2"],
      ["terminal-2", "pole-3"],
      [null, "pole-4"],
    ]);
    expect(rows.map((one) => one.things.filter(({ kind }) => kind === "span").map((span) => span.subjectId))).toEqual([
      ["span-1"],
      ["span-2"],
      ["span-3"],
    ]);
    expect(kinds.map(({ kind, count }) => [kind, count])).toEqual([
      ["pole", 4],
      ["span", 3],
      ["bond", 4],
      ["terminal", 2],
      ["port", 16],
      ["drop", 3],
      ["strandSection", 1],
      ["cable", 1],
    ]);
  });

  test("no thing is told twice, nor lost where a lateral leaves", () => {
    const route = withLateral();
    const keys = builtThings(openPlant(route)).map(({ subject }) => subjectKey(subject));
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys.filter((one) => one.startsWith("pole "))).toHaveLength(route.pole.size);
    expect(keys.filter((one) => one.startsWith("span "))).toHaveLength(route.span.size);
  });

  test("a row stands as far as the least of its things", () => {
    const row = (route: ReturnType<typeof smallRoute>) =>
      closeoutBoard(openPlant(route), "").rows[0]?.kinds.find((one) => one.kind === "port");
    const ports = [1, 2, 3, 4, 5, 6, 7, 8].map((port) => subjectOf("port", "terminal-1", port));
    const built = withRows(
      smallRoute(),
      "milestone",
      ports.map((one) => milestoneRow(one, "built")),
    );
    expect(row(built)).toMatchObject({ least: "built", byState: { built: 8 }, askedCount: 8, missingCount: 8 });
    const tested = withRows(built, "milestone", [milestoneRow(ports[0] ?? terminal1, "tested")]);
    expect(row(tested)).toMatchObject({ least: "built", byState: { built: 7, tested: 1 } });
  });

  test("a terminal asks for offset, coil and the marks at its opening; what is read is missing no longer", () => {
    const plant = openPlant(withRows(smallRoute(), "reading", [isRead("offset"), isRead("markAfter")]));
    expect(askedReadings(plant, terminal1).map((one) => one.what)).toEqual([
      "offset",
      "slack",
      "markBefore",
      "markAfter",
    ]);
    expect(standingOf(plant, terminal1).missing.map((one) => one.what)).toEqual(["slack", "markBefore"]);
  });

  test("a port is read at the wavelength of its class, against its own light", () => {
    const launched = changed(smallRoute(), "opticalClass", "class-b-plus", {
      hubLaunchLeastDbm: 1.5,
      hubLaunchMostDbm: 5,
    });
    const [power] = askedReadings(openPlant(launched), subjectOf("port", "terminal-1", 3));
    expect(power).toMatchObject({ what: "power", wavelengthNm: 1490, drawn: { kind: "range" } });
  });

  test("the mark of a cable is asked where it begins and ends, the strand's height at every pole", () => {
    const asks = (poleId: string) => askedReadings(openPlant(smallRoute()), subjectOf("pole", poleId));
    expect(asks("pole-1").map((one) => one.id)).toEqual(["pole pole-1 height", "pole pole-1 cable-1 mark"]);
    expect(asks("pole-2").map((one) => one.id)).toEqual(["pole pole-2 height"]);
  });

  test("the board keeps up with an edit", () => {
    const route = smallRoute();
    const plant = openPlant(route);
    const missing = () => closeoutBoard(plant, "").kinds.find((one) => one.kind === "terminal")?.missingCount;
    expect(missing()).toBe(8);
    const after = isRead("offset");
    plant.advance(withRows(route, "reading", [after]), [{ table: "reading", id: after.id, before: null, after }]);
    expect(readingId(terminal1, "offset")).toBe(after.id);
    expect(missing()).toBe(7);
  });
});
