import { describe, expect, it } from "vitest";
import { freeId } from "../../../core/plant/freeId.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { rowOf } from "../../fixtures/route/faultyRoutes.ts";

describe("an id for a new row", () => {
  it("is the one wanted while nobody has it", () => {
    expect(freeId(openPlant(smallRoute()), "slack", "coil-9")).toBe("coil-9");
  });

  it("gets the next number where others have it", () => {
    const route = withRows(changed(smallRoute(), "slack", "coil-1", {}), "slack", [
      { ...rowOf(smallRoute(), "slack", "coil-1"), id: "coil-1-2" },
    ]);
    expect(freeId(openPlant(route), "slack", "coil-1")).toBe("coil-1-3");
  });
});
