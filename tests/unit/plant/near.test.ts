import { describe, expect, it } from "vitest";
import { terminalsNear, unitsNear } from "../../../core/plant/near.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

describe("what is near a point", () => {
  it("is living units, nearest first", () => {
    const near = unitsNear(openPlant(smallRoute()), { eastM: 55, northM: 0 }, 60);
    expect(near.map((one) => one.id)).toEqual(["unit-2", "unit-1", "unit-3"]);
    expect(near[0]?.distanceM).toBe(30);
  });

  it("is terminals, nearest first", () => {
    const near = terminalsNear(openPlant(smallRoute()), { eastM: 80, northM: 0 }, 91.44);
    expect(near.map((one) => one.id)).toEqual(["terminal-2", "terminal-1"]);
  });

  it("is no terminal beyond the distance, though its poles are looked at", () => {
    expect(terminalsNear(openPlant(smallRoute()), { eastM: 45, northM: 40 }, 39)).toEqual([]);
  });

  it("is a terminal in the middle of a span as well", () => {
    const plant = openPlant(changed(smallRoute(), "terminal", "terminal-1", { offsetM: 22 }));
    expect(terminalsNear(plant, { eastM: 67, northM: 0 }, 1).map((one) => one.id)).toEqual(["terminal-1"]);
  });
});
