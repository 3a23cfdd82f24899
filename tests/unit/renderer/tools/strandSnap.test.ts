import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { nearestSnap, strandSnaps } from "../../../../renderer/tools/strandSnap.ts";
import { changed, smallRoute } from "../../../fixtures/route/buildRoute.ts";

const plant = openPlant(smallRoute());

test("a terminal is drawn to the standard distance from either pole and to the middle of the span", () => {
  const snaps = strandSnaps(plant, "terminal-1", "span-2");
  expect(nearestSnap(snaps, 1.2, 20)).toEqual({ offsetM: 0.9144, words: "standard distance" });
  expect(nearestSnap(snaps, 44.0, 20)?.offsetM).toBeCloseTo(45 - 0.9144, 9);
  expect(nearestSnap(snaps, 22.3, 20)).toEqual({ offsetM: 22.5, words: "middle of the span" });
});

test("the reach of a snap is pixels on screen, not metres on the ground", () => {
  const snaps = strandSnaps(plant, "terminal-1", "span-2");
  expect(nearestSnap(snaps, 20.5, 4)?.offsetM).toBe(22.5);
  expect(nearestSnap(snaps, 20.5, 40)).toBeNull();
});

test("beside another terminal it is drawn to where the two hang clear by the company's gap", () => {
  const both = changed(smallRoute(), "terminal", "terminal-2", { spanId: "span-2", offsetM: 10 });
  const crowded = openPlant(both);
  const lengthM = crowded.rowOf("terminalModel", "terminal-8").lengthM;
  const clear = strandSnaps(crowded, "terminal-1", "span-2").find((one) => one.words === "clear of terminal T2");
  expect(clear?.offsetM).toBeCloseTo(10 - lengthM - crowded.settings().hangingGapM, 9);
});

test("it is not drawn to itself or its own coil", () => {
  expect(strandSnaps(plant, "terminal-1", "span-2").filter((one) => one.words.startsWith("clear of"))).toEqual([]);
});

test("it is drawn to where it hangs as far from the terminal before it as from the one after", () => {
  const along = openPlant(changed(smallRoute({ poleCount: 6 }), "terminal", "terminal-3", { offsetM: 11 }));
  const snaps = strandSnaps(along, "terminal-2", "span-3");
  const midway = snaps.find((one) => one.words === "midway between T1 and T3");
  // terminal 1 hangs 45.9144 m from the first pole, terminal 3 at 146 m
  expect(midway?.offsetM).toBeCloseTo((45 + 0.9144 + 146) / 2 - 90, 9);
});
