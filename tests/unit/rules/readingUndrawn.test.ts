import { describe, expect, it } from "vitest";
import type { Row } from "../../../core/model/tables.ts";
import { without, withRows } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { drop1, pole2, routeRead, terminal1 } from "../../fixtures/route/faultyReadings.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

const rule = "reading-undrawn";
const told = (...rows: readonly Row<"reading">[]) => findingsOf(routeRead(...rows), rule).map((one) => one.message);

describe(rule, () => {
  it("a strand read above the top of its pole is found, and that it stays out of the as-built set", () => {
    expect(findingsOf(faultyRoute(rule), rule)).toMatchObject([
      {
        message:
          "What was read of pole P2 (strand height) stays out of the as-built set: that is above the top of the pole.",
        measured: 30,
        limit: 11,
        unit: "m",
      },
    ]);
  });

  it("a terminal read past the middle of its span, where the other pole is nearer, is found, by this rule alone", () => {
    const route = routeRead(readingRow(terminal1, "offset", 22.5));
    expect(findingsOf(route, rule)).toMatchObject([
      {
        message:
          "What was read of terminal T1 (from the pole) stays out of the as-built set: that is past the middle of its span.",
      },
    ]);
    expect(findingsOf(route, "built-offset")).toEqual([]);
  });

  it("a coil read where none is drawn, a port that another drop is in, and one the terminal lacks are found", () => {
    const coilless = withRows(without(routeRead(), "slack", "coil-1"), "reading", [readingRow(terminal1, "slack", 7)]);
    expect(findingsOf(coilless, rule)[0]?.message).toContain("no coil is drawn there");
    expect(told(readingRow(drop1, "portOfDrop", 2))).toEqual([
      "What was read of drop of 1 Test Rd (port of the drop) stays out of the as-built set: the drop of 2 Test Rd is in that port.",
    ]);
    expect(told(readingRow(drop1, "portOfDrop", 9))[0]).toContain("the terminal has no such port");
  });

  it("two drops found in each other's ports are quiet", () => {
    const drop2 = { ...drop1, subjectId: "drop-2" };
    expect(told(readingRow(drop1, "portOfDrop", 2), readingRow(drop2, "portOfDrop", 1))).toEqual([]);
  });

  it("what can be drawn is quiet", () => {
    expect(told(readingRow(pole2, "height", 10.9), readingRow(terminal1, "offset", 22.4))).toEqual([]);
  });
});
