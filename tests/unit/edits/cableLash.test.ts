import { describe, expect, test } from "vitest";
import { routeWith } from "../../../core/layout/rowSet.ts";
import { runLayout } from "../../../core/layout/runLayout.ts";
import { cablePath, cablesInSpan } from "../../../core/plant/cablePath.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { spanBundle } from "../../../core/plant/spanLoad.ts";
import { granted, refusal } from "../../fixtures/layout/asking.ts";
import { strungTown } from "../../fixtures/layout/townRoute.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";

const asked = { cableId: "cable-9", name: "C9", cableTypeId: "cable-type-48", alongCableId: "cable-1" };

describe("a second cable on the strand", () => {
  test("goes the way of the first, in its direction, and weighs on every span of it", () => {
    const route = granted(smallRoute(), "cable.lash", asked);
    const [before, after] = [openPlant(smallRoute()), openPlant(route)];
    expect(cablePath(after, "cable-9").steps).toEqual(cablePath(after, "cable-1").steps);
    expect(cablesInSpan(after, "span-1")).toEqual(["cable-1", "cable-9"]);
    expect(spanBundle(after, "span-1")?.weightNPerM).toBeGreaterThan(
      spanBundle(before, "span-1")?.weightNPerM ?? Number.NaN,
    );
    expect(findingsOf(route).filter((one) => one.severity === "error")).toEqual([]);
  });

  test("takes part in a layout, each side of a pole once and no fiber twice", () => {
    const town = strungTown({ poleCount: 5, unitsPerSpan: 5 });
    const [first] = town.cable.values();
    if (!first) throw new Error("the town has no cable");
    const { id: alongCableId, cableTypeId } = first;
    const two = granted(town, "cable.lash", { ...asked, cableTypeId, alongCableId });
    const layout = runLayout(two);
    if (!layout.ok) throw new Error(layout.fault.what);
    const errors = findingsOf(routeWith(two, layout.value.rows)).filter((one) => one.severity === "error");
    expect(errors.map((one) => one.ruleId).filter((id) => !id.includes("clearance"))).toEqual([]);
    expect(layout.value.unserved).toEqual([]);
  });

  test("needs a cable to go along, a type, and an id of its own", () => {
    const code = (change: object) => refusal(smallRoute(), "cable.lash", { ...asked, ...change }).code;
    expect([code({ alongCableId: "gone" }), code({ cableTypeId: "gone" }), code({ cableId: "cable-1" })]).toEqual([
      "missing-row",
      "missing-row",
      "taken-id",
    ]);
  });
});
