import { describe, expect, it } from "vitest";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";
import { withOnPole } from "../../fixtures/route/oneMore.ts";

const found = (columns: Parameters<typeof withOnPole>[0]) => findingsOf(withOnPole(columns), "street-light-separation");

describe("street-light-separation", () => {
  it("a bracket 30 cm over our strand is found, with the mend that moves our strand away", () => {
    expect(findingsOf(faultyRoute("street-light-separation"), "street-light-separation")).toMatchObject([
      {
        severity: "error",
        message:
          "At pole P2 our strand is too close to the street-light bracket of Power company, which is not told to be grounded.",
        measured: expect.closeTo(0.3, 6),
        limit: 0.508,
        fixes: [{ command: "attachment.set", input: { attachmentId: "strand-2" } }],
      },
    ]);
  });

  it("a bracket 30 cm under our strand and a drip loop 20 cm over it are found", () => {
    expect(found({ kind: "streetLight", heightM: 6 })).toMatchObject([{ measured: expect.closeTo(0.3, 6) }]);
    expect(found({ kind: "dripLoop", heightM: 6.5 })).toMatchObject([
      {
        message: "At pole P2 our strand is not far enough below the street-light drip loop of Power company.",
        measured: expect.closeTo(0.2, 6),
        limit: 0.3048,
      },
    ]);
  });

  it("a drip loop below our strand is found, however far", () => {
    expect(found({ kind: "dripLoop", heightM: 4 })).toMatchObject([{ measured: expect.closeTo(-2.3, 6) }]);
  });

  it("a grounded bracket 30 cm away, one far below, and a drip loop 12 in over our strand are quiet", () => {
    expect(found({ kind: "streetLight", heightM: 6.6, bonded: true })).toEqual([]);
    expect(found({ kind: "streetLight", heightM: 5 })).toEqual([]);
    expect(found({ kind: "dripLoop", heightM: 6.3 + 0.3048 })).toEqual([]);
  });

  it("a set that has no row for grounded brackets asks for what it asks of others", () => {
    const route = withOnPole({ kind: "streetLight", heightM: 6.6, bonded: true });
    const other = changed(route, "clearanceLimit", "limit-bondedStreetLightAtPole", { surface: "field" });
    expect(findingsOf(other, "street-light-separation")).toMatchObject([{ limit: 0.508 }]);
  });
});
