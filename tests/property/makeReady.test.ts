import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeReady } from "../../core/jointpole/makeReady.ts";
import type { Route } from "../../core/model/route.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { changed, smallRoute, without, withRows } from "../fixtures/route/buildRoute.ts";
import { foundAt, jointPole } from "./jointPole.ts";

const inchM = 0.0254;

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A joint pole with a low neutral, and a telephone cable that goes no further right under it. */
const fullPole = fc
  .tuple(jointPole, between(6.9, 7.4), between(6, 6.5), between(5.7, 6.1))
  .map(([route, neutralM, telephoneM, usableFromM]) => {
    let full = changed(route, "attachment", "neutral-2", { heightM: neutralM });
    full = changed(full, "attachment", "telephone-2", { heightM: telephoneM });
    full = changed(full, "settings", "settings", { usableFromM });
    return ["telephone-1", "telephone-3"].reduce((one, id) => without(one, "attachment", id), full);
  });

describe("the moves that make a joint pole ready", () => {
  it("leave nothing that a rule finds at the pole, and keep the moved ones under supply and off each other", () => {
    let movedCount = 0;
    fc.assert(
      fc.property(fullPole, (route) => {
        const ready = makeReady(openPlant(route), "pole-2");
        if (ready.kind !== "moves") return;
        movedCount += 1;
        const after = ready.best.moves.reduce(
          (one, { attachmentId, toM }) => changed(one, "attachment", attachmentId, { heightM: toM }),
          route,
        );
        expect(foundAt(after, ready.best.ourHeightM).map((one) => one.message)).toEqual([]);
        const gapM = (on: Route, upper: string, lower: string) =>
          (on.attachment.get(upper)?.heightM ?? Number.NaN) - (on.attachment.get(lower)?.heightM ?? Number.NaN);
        expect(gapM(after, "neutral-2", "telephone-2")).toBeGreaterThan(0.762 - 1e-9);
        const keptM = Math.min(1.016, gapM(route, "primary-2", "neutral-2"));
        expect(gapM(after, "primary-2", "neutral-2")).toBeGreaterThan(keptM - 1e-9);
      }),
      { numRuns: 120 },
    );
    expect(movedCount).toBeGreaterThan(10);
  });

  it("are as few and as short as trying every whole inch of every one and of every two finds them", () => {
    const counts = fc.array(fc.integer({ min: 180, max: 246 }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(counts, fc.integer({ min: 216, max: 240 }), (cables, usableFrom) => {
        const ready = makeReady(openPlant(cablesAt(cables, usableFrom)), "pole-2");
        const tried = leastTried(cables, usableFrom);
        if (ready.kind === "moves" && ready.best.moves.length <= 2)
          expect([ready.best.moves.length, Math.round(ready.best.totalM / inchM)]).toEqual(tried);
        else if (ready.kind === "moves" || ready.kind === "none") expect(tried).toBeNull();
        else expect(tried).toEqual([0, 0]);
      }),
      { numRuns: 60 },
    );
  });
});

/** Our strand must not be over this, 30 in under a neutral at 23 ft, in. */
const highest = 276 - 30;
/** Lower than this no cable is tried, in; where nothing is below, nobody has to go further. */
const lowest = 130;

/** P2 under a neutral at 23 ft, crowded with cables that go no further than the pole. */
function cablesAt(counts: readonly number[], usableFrom: number): Route {
  let route = smallRoute({ settings: { usableFromM: usableFrom * inchM } });
  for (const n of [1, 2, 3, 4]) {
    route = without(route, "attachment", `telephone-${n}`);
    route = changed(route, "attachment", `neutral-${n}`, { heightM: (n === 2 ? 276 : 360) * inchM });
    route = changed(route, "attachment", `primary-${n}`, { heightM: 408 * inchM });
    route = changed(route, "attachment", `strand-${n}`, { heightM: (n === 2 ? 200 : 264) * inchM });
  }
  const cable = { poleId: "pole-2", kind: "communication" as const, voltageV: 0, note: "", bonded: false };
  return withRows(
    route,
    "attachment",
    counts.map((count, index) => ({ id: `cable-${index}`, owner: `Owner ${index}`, heightM: count * inchM, ...cable })),
  );
}

/** Fewest moves and least inches in all by trying everything; null where two moves do not do. */
function leastTried(cables: readonly number[], usableFrom: number): readonly [number, number] | null {
  const isApart = (count: number, others: readonly number[]) => others.every((one) => Math.abs(one - count) >= 12);
  const hasRoom = (others: readonly number[]) => {
    for (let ours = usableFrom; ours <= highest; ours += 1) if (isApart(ours, others)) return true;
    return false;
  };
  if (hasRoom(cables)) return [0, 0];
  let [one, two] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const [index, cable] of cables.entries()) {
    const others = cables.toSpliced(index, 1);
    for (let there = lowest; there <= highest; there += 1) {
      if (isApart(there, others) && hasRoom([...others, there])) one = Math.min(one, Math.abs(there - cable));
      for (const [next, second] of others.entries()) {
        const held = others.toSpliced(next, 1);
        if (!isApart(there, held)) continue;
        for (let place = lowest; place <= highest; place += 1) {
          const inches = Math.abs(there - cable) + Math.abs(place - second);
          if (inches < two && isApart(place, [...held, there]) && hasRoom([...held, there, place])) two = inches;
        }
      }
    }
  }
  return Number.isFinite(one) ? [1, one] : Number.isFinite(two) ? [2, two] : null;
}
