import { describe, expect, it } from "vitest";
import { subjectOf } from "../../../core/closeout/subject.ts";
import type { Drop } from "../../../core/model/tables.ts";
import { granted } from "../../fixtures/layout/asking.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { drop1, routeRead } from "../../fixtures/route/faultyReadings.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

const drop2 = subjectOf("drop", "drop-2");

describe("built-port", () => {
  it("a drop in port 3 that was drawn on port 1 is found, with the edit that draws it there", () => {
    expect(findingsOf(faultyRoute("built-port"), "built-port")).toMatchObject([
      {
        message: "The drop of 1 Test Rd is in port 3 of terminal T1; it was drawn on port 1.",
        fixes: [{ command: "drop.move", input: { dropId: "drop-1", terminalId: "terminal-1", port: 3 } }],
      },
    ]);
  });

  it("a drop in a port drawn for another is found, and cannot be drawn there", () => {
    expect(findingsOf(routeRead(readingRow(drop1, "portOfDrop", 2)), "built-port")).toMatchObject([{ fixes: [] }]);
  });

  it("two drops in each other's ports are found, each with the one edit that draws both; quiet after it", () => {
    const swapped = routeRead(readingRow(drop1, "portOfDrop", 2), readingRow(drop2, "portOfDrop", 1));
    const found = findingsOf(swapped, "built-port");
    expect(found.map((one) => one.fixes.map((fix) => fix.label))).toEqual([
      ["Draw both as built"],
      ["Draw both as built"],
    ]);
    const [fix] = found[1]?.fixes ?? [];
    const drawn = granted(swapped, fix?.command ?? "", fix?.input);
    expect(["drop-1", "drop-2"].map((id) => drawn.drop.get(id)?.port)).toEqual([2, 1]);
    expect(findingsOf(drawn, "built-port")).toEqual([]);
  });

  it("three drops found round in each other's ports are drawn by one edit", () => {
    const third = { ...smallRoute().drop.get("drop-2"), id: "drop-9", port: 3, livingUnitId: "unit-3" };
    const three = withRows(
      routeRead(
        readingRow(drop1, "portOfDrop", 2),
        readingRow(drop2, "portOfDrop", 3),
        readingRow(subjectOf("drop", "drop-9"), "portOfDrop", 1),
      ),
      "drop",
      [third as Drop],
    );
    const found = findingsOf(three, "built-port");
    expect(found.map((one) => one.fixes.map((fix) => fix.label))).toEqual(Array(3).fill(["Draw all 3 as built"]));
    const fix = found[0]?.fixes[0];
    expect(findingsOf(granted(three, fix?.command ?? "", fix?.input), "built-port")).toEqual([]);
  });

  it("where two drops were found in one port neither is drawn there", () => {
    const route = routeRead(readingRow(drop1, "portOfDrop", 2), readingRow(drop2, "portOfDrop", 2));
    expect(findingsOf(route, "built-port")).toMatchObject([{ fixes: [] }]);
  });

  it("a drop in its own port is quiet", () => {
    expect(findingsOf(routeRead(readingRow(drop1, "portOfDrop", 1)), "built-port")).toEqual([]);
  });
});
