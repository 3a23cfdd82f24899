import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { portReading } from "../../../core/plant/portReading.ts";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { port1, routeRead } from "../../fixtures/route/faultyReadings.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { readingRow } from "../../fixtures/route/readingRow.ts";

/** What port 1 should show. */
function expectedDbm(): { readonly leastDbm: number; readonly mostDbm: number } {
  const reading = portReading(openPlant(routeRead()), "terminal-1", 1);
  if (reading.kind === "unknown" || !reading.arrives) throw new Error("nobody can tell");
  return reading.arrives;
}

describe("built-light", () => {
  it("a port at -40 dBm is found, against its own least light less the tolerance", () => {
    expect(findingsOf(faultyRoute("built-light"), "built-light")).toMatchObject([
      {
        message: "Port 1 of terminal T1 shows less light than is expected there.",
        measured: -40,
        limit: expectedDbm().leastDbm - 1.5,
        unit: "dBm",
      },
    ]);
  });

  it("a port that shows far more than can arrive is found", () => {
    const strong = routeRead(readingRow(port1, "power", expectedDbm().mostDbm + 2, 1490));
    expect(findingsOf(strong, "built-light").map((one) => one.message)).toEqual([
      "Port 1 of terminal T1 shows more light than is expected there.",
    ]);
  });

  it("one and the same reading is found at the port that is near the hub and is not at the one behind a lossy feed", () => {
    const { leastDbm } = expectedDbm();
    const weak = routeRead(readingRow(port1, "power", leastDbm - 3, 1490));
    expect(findingsOf(weak, "built-light")).toHaveLength(1);
    expect(findingsOf(changed(weak, "feed", "feed-1", { upstreamLossDb: 10 }), "built-light")).toEqual([]);
  });

  it("a port one dB under what it should show is quiet", () => {
    expect(findingsOf(routeRead(readingRow(port1, "power", expectedDbm().leastDbm - 1, 1490)), "built-light")).toEqual(
      [],
    );
  });

  it("a reading at another wavelength than the class's is quiet", () => {
    expect(findingsOf(routeRead(readingRow(port1, "power", -40, 1550)), "built-light")).toEqual([]);
  });
});
