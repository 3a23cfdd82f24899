import { describe, expect, it } from "vitest";
import { makeReady } from "../../../core/jointpole/makeReady.ts";
import type { Route } from "../../../core/model/route.ts";
import type { Attachment } from "../../../core/model/tables.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { metresPerFoot, metresPerInch } from "../../../core/units/constants.ts";
import { changed, smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";

const feetM = (feet: number, inches = 0) => feet * metresPerFoot + inches * metresPerInch;

/** P2 with a neutral at 23 ft and communication that goes no further than the pole; its neighbours have room. */
function crowdedPole(communicationM: Readonly<Record<string, number>>): Route {
  let route = smallRoute({ settings: { usableFromM: feetM(16) } });
  for (const n of [1, 2, 3, 4]) {
    route = without(route, "attachment", `telephone-${n}`);
    route = changed(route, "attachment", `neutral-${n}`, { heightM: n === 2 ? feetM(23) : feetM(30) });
    route = changed(route, "attachment", `primary-${n}`, { heightM: feetM(34) });
    route = changed(route, "attachment", `strand-${n}`, { heightM: feetM(22) });
  }
  return withRows(
    route,
    "attachment",
    Object.entries(communicationM).map(
      ([owner, heightM]): Attachment => ({
        id: owner,
        poleId: "pole-2",
        owner,
        kind: "communication",
        heightM,
        voltageV: 0,
        note: "",
        bonded: false,
      }),
    ),
  );
}

const readyOf = (route: Route) => makeReady(openPlant(route), "pole-2");

/** Our strand must clear a road beside P2 so high that it has to go in right under the neutral. */
function underTheNeutral(communicationM: Readonly<Record<string, number>>): Route {
  return changed(crowdedPole(communicationM), "settings", "settings", { usableFromM: feetM(20) });
}

describe("what makes a pole ready for our strand", () => {
  it("is nothing where our strand satisfies everything as it is", () => {
    expect(readyOf(smallRoute())).toEqual({ kind: "nothing" });
  });

  it("is a move of ours alone where another height on the pole is free: 30 in under a neutral at 23 ft", () => {
    expect(readyOf(crowdedPole({}))).toEqual({ kind: "oursAlone", ourHeightM: expect.closeTo(feetM(20, 6), 9) });
  });

  it("lowers the telephone from 20 ft to 19 ft 6 in: ours at 20 ft 6 in, 12 in over it", () => {
    expect(readyOf(underTheNeutral({ telephone: feetM(20) }))).toMatchObject({
      kind: "moves",
      best: {
        moves: [{ attachmentId: "telephone", toM: expect.closeTo(feetM(19, 6), 9), ownerOnly: false }],
        ourHeightM: expect.closeTo(feetM(20, 6), 9),
        totalM: expect.closeTo(6 * metresPerInch, 9),
      },
    });
  });

  it("moves one attachment 24 in rather than two of them 6 in each: fewer moves come first", () => {
    expect(readyOf(underTheNeutral({ telephone: feetM(20), television: feetM(19) }))).toMatchObject({
      kind: "moves",
      best: {
        moves: [{ attachmentId: "telephone", toM: expect.closeTo(feetM(18), 9) }],
        totalM: expect.closeTo(24 * metresPerInch, 9),
      },
    });
  });

  it("moves both where neither alone will do, and no further than they must", () => {
    const ready = readyOf(underTheNeutral({ telephone: feetM(20, 2), television: feetM(19, 10) }));
    expect(ready).toMatchObject({
      kind: "moves",
      best: { moves: [{}, {}], ourHeightM: expect.closeTo(feetM(20, 6), 9) },
    });
    if (ready.kind !== "moves") throw new Error(ready.kind);
    // one of them to 19 ft 6 in, the other 12 in further down: 8 + 16 in or 4 + 20 in, 24 in either way
    expect(ready.best.totalM).toBeCloseTo(24 * metresPerInch, 9);
    expect(ready.best.moves.map((one) => one.toM).sort()).toEqual([
      expect.closeTo(feetM(18, 6), 9),
      expect.closeTo(feetM(19, 6), 9),
    ]);
  });

  it("tells the next best plan of as many moves", () => {
    // between cables at 18 ft 9 in and 20 ft 3 in: the lower one 6 in down, or the upper one 30 in down to under it
    const between = changed(crowdedPole({ upper: feetM(20, 3), lower: feetM(18, 9) }), "settings", "settings", {
      usableFromM: feetM(19),
    });
    expect(readyOf(between)).toMatchObject({
      best: { moves: [{ attachmentId: "lower", toM: expect.closeTo(feetM(18, 3), 9) }] },
      next: {
        moves: [{ attachmentId: "upper", toM: expect.closeTo(feetM(17, 9), 9) }],
        totalM: expect.closeTo(30 * metresPerInch, 9),
      },
    });
    expect(readyOf(underTheNeutral({ telephone: feetM(20) }))).toMatchObject({ next: null });
  });

  it("raises the neutral only where no communication can make room, and says that only its owner may", () => {
    const route = changed(crowdedPole({}), "settings", "settings", { usableFromM: feetM(21) });
    expect(readyOf(route)).toMatchObject({
      kind: "moves",
      best: {
        moves: [{ attachmentId: "neutral-2", toM: expect.closeTo(feetM(23, 6), 9), ownerOnly: true }],
        ourHeightM: expect.closeTo(feetM(21), 9),
      },
    });
  });

  it("never raises the neutral up to the primary: 40 in stay between them", () => {
    let route = changed(crowdedPole({}), "settings", "settings", { usableFromM: feetM(22) });
    route = changed(route, "attachment", "primary-2", { heightM: feetM(27, 6) });
    expect(readyOf(route)).toMatchObject({
      best: {
        moves: [
          { attachmentId: "neutral-2", toM: expect.closeTo(feetM(24, 6), 9), ownerOnly: true },
          { attachmentId: "primary-2", toM: expect.closeTo(feetM(27, 10), 9), ownerOnly: true },
        ],
        ourHeightM: expect.closeTo(feetM(22), 9),
      },
    });
  });

  it("says that no move will do where the pole is too short", () => {
    const route = changed(crowdedPole({}), "pole", "pole-2", { aboveGroundM: feetM(19) });
    const high = changed(route, "settings", "settings", { usableFromM: feetM(19) });
    expect(readyOf(high)).toMatchObject({ kind: "none", why: expect.stringContaining("pole P2") });
  });

  it("cannot be told for a pole without strand of ours", () => {
    const bare = changed(smallRoute(), "span", "span-1", { strandSectionId: null });
    expect(makeReady(openPlant(bare), "pole-1")).toMatchObject({ kind: "unknown" });
  });
});
