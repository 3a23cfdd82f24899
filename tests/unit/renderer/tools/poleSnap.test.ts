import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { nearestPoleSnap } from "../../../../renderer/tools/poleSnap.ts";
import { changed, smallRoute } from "../../../fixtures/route/buildRoute.ts";

// poles 45 m apart to the east, the third 4 m north of the line
const plant = openPlant(changed(smallRoute({ poleCount: 5 }), "pole", "pole-3", { northM: 4 }));

test("between two poles it is drawn to their line, to equal spans, and to both at once", () => {
  expect(nearestPoleSnap(plant, "pole-3", { eastM: 100, northM: 0.4 }, 4)).toMatchObject({
    eastM: 100,
    northM: 0,
    words: "in line with P2 and P4",
  });
  expect(nearestPoleSnap(plant, "pole-3", { eastM: 90.5, northM: 8 }, 4)).toMatchObject({
    eastM: 90,
    northM: 8,
    words: "equal spans to P2 and P4",
  });
  expect(nearestPoleSnap(plant, "pole-3", { eastM: 90.9, northM: 0.8 }, 4)).toMatchObject({
    eastM: 90,
    northM: 0,
    words: "midway between P2 and P4",
  });
});

test("the last pole of a line is drawn straight on from the two before it", () => {
  expect(nearestPoleSnap(plant, "pole-1", { eastM: -3, northM: -4.1 }, 4)).toMatchObject({
    words: "in line with P3 and P2",
  });
});

test("the reach is pixels on screen, not metres on the ground", () => {
  expect(nearestPoleSnap(plant, "pole-3", { eastM: 100, northM: 1 }, 4)).not.toBeNull();
  expect(nearestPoleSnap(plant, "pole-3", { eastM: 100, northM: 1 }, 40)).toBeNull();
});
