import { describe, expect, test } from "vitest";
import { hangingPoints } from "../../../core/layout/hangingPoints.ts";
import type { Route } from "../../../core/model/route.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";

function judged(route: Route, stays = false) {
  return hangingPoints(openPlant(route), "cable-1", () => stays);
}

function reasons(route: Route, stays = false): string[] {
  return judged(route, stays).refused.map((one) => `${one.spanId} ${one.poleId}: ${one.reason}`);
}

test("a terminal may hang on both sides of every pole, three feet from it, in order from the feed end", () => {
  const { usable, refused } = judged(smallRoute());
  expect(refused).toEqual([]);
  expect(usable.map((one) => one.poleId)).toEqual(["pole-1", "pole-2", "pole-2", "pole-3", "pole-3", "pole-4"]);
  expect(usable[1]).toMatchObject({ spanId: "span-1", offsetM: 45 - 0.9144, stationM: 45 - 0.9144, northM: 0 });
});

test("a terminal of 12 in, and nothing longer, fits at 36 in from a pole with 30 in of climbing space", () => {
  expect(judged(smallRoute()).usable[0]?.roomM).toBeGreaterThanOrEqual(0.3048);
  expect(judged(smallRoute()).usable[0]?.roomM).toBeCloseTo(0.3048, 6);
});

describe("a side is refused, with the reason,", () => {
  test("where the pole allows no terminal", () => {
    const route = changed(smallRoute(), "pole", "pole-2", { terminalAllowed: false });
    expect(reasons(route)).toEqual([
      "span-1 pole-2: no terminal may hang beside pole P2",
      "span-2 pole-2: no terminal may hang beside pole P2",
    ]);
  });

  test("where there is no strand", () => {
    const route = changed(smallRoute(), "span", "span-3", { strandSectionId: null });
    expect(reasons(route)).toHaveLength(2);
    expect(reasons(route)[0]).toContain("no strand");
  });

  test("where the span is too short", () => {
    const route = changed(smallRoute(), "span", "span-3", { lengthM: 3 });
    expect(reasons(route)[0]).toBe("span-3 pole-3: the span from pole P3 to pole P4 is too short");
  });

  test("where the climbing space leaves too little", () => {
    expect(reasons(smallRoute({ settings: { climbingSpaceM: 0.85 } }))[0]).toBe(
      "span-1 pole-1: a terminal would reach into the climbing space of pole P1",
    );
  });

  test("where a coil waits for repairs", () => {
    const coil = { id: "storage-1", cableId: "cable-1", spanId: "span-1", offsetM: 1.2, storedM: 30 };
    const route = withRows(smallRoute(), "slack", [{ ...coil, kind: "storage", terminalId: null }]);
    expect(reasons(route)).toEqual(["span-1 pole-1: a coil of cable C1 hangs there"]);
  });

  test("where a terminal hangs that stays", () => {
    expect(reasons(smallRoute(), true)[0]).toBe("span-2 pole-2: terminal T1 hangs there");
  });

  test("at the second end of a span that has room for one", () => {
    const settings = { minSpanM: 1, standoffM: 1, climbingSpaceM: 0.7 };
    expect(reasons(smallRoute({ spanM: 2.3, settings }))[0]).toBe(
      "span-1 pole-2: the span is too short for a terminal at each end",
    );
  });
});
