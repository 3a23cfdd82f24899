import { describe, expect, it } from "vitest";
import { subjectOf } from "../../../core/closeout/subject.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { bond1, drop1, markAtPole, pole2, port1, routeRead, terminal1 } from "../../fixtures/route/faultyReadings.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

describe("reading-astray", () => {
  it("the offset of a terminal that is drawn no longer is found, with the edit that removes it", () => {
    expect(findingsOf(faultyRoute("reading-astray"), "reading-astray")).toMatchObject([
      {
        message: "What Crew 1 read of a terminal (from the pole) belongs to nothing that is drawn now.",
        fixes: [{ command: "reading.remove", input: { readingId: "terminal terminal-9 offset" } }],
      },
    ]);
  });

  it("light of a port beyond the face, and a bond of strand that does not come by, are found", () => {
    const route = routeRead(
      readingRow(subjectOf("port", "terminal-1", 9), "power", -20, 1490),
      readingRow(subjectOf("bond", "pole-1", 0, "section-9"), "resistance", 5),
    );
    expect(findingsOf(route, "reading-astray")).toHaveLength(2);
  });

  it("readings of what is drawn are quiet", () => {
    const route = routeRead(
      readingRow(terminal1, "offset", 0.9),
      readingRow(drop1, "houseTag", "T1-1"),
      readingRow(bond1, "resistance", 5),
      readingRow(port1, "power", -20, 1490),
      readingRow(pole2, "height", 6.3),
      markAtPole(2, 1148),
    );
    expect(findingsOf(route, "reading-astray")).toEqual([]);
  });
});
