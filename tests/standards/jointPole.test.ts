import { describe, expect, it } from "vitest";
import { attachmentRange } from "../../core/jointpole/attachmentRange.ts";
import type { Route } from "../../core/model/route.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { metresPerFoot, metresPerInch } from "../../core/units/constants.ts";
import { changed, smallRoute, withRows } from "../fixtures/route/buildRoute.ts";
import { catalogueFigure } from "./catalogueFigure.ts";
import { type Source, sourceTitle } from "./source.ts";

const nesc: Source = {
  document:
    "NESC T235-5 (40 in under supply up to 8.7 kV, 30 in under a neutral bonded to the messenger) and 235H (12 in between messengers), worked by hand",
  edition: "2017/2023 numbering",
  mark: "memory",
  tolerance: "a hundredth of an inch",
};

const feetM = (feet: number, inches = 0) => feet * metresPerFoot + inches * metresPerInch;

/**
 * The small route with the catalogue's limits at the pole, telephone at 20 ft on every pole, sagging more than ours ever does, and ours
 * at 22 ft: what is left is a matter of the pole alone.
 */
function jointPoles(neutralM: number): Route {
  let route = smallRoute();
  for (const surface of ["supplyAtPole", "neutralAtPole", "communicationAtPole"])
    route = changed(route, "clearanceLimit", `limit-${surface}`, {
      limitM: catalogueFigure("clearanceLimit", `nesc-${surface}`, "limitM"),
    });
  route = withRows(
    route,
    "wireSag",
    ["span-1", "span-2"].map((spanId) => ({
      id: `sag-${spanId}`,
      spanId,
      owner: "Telephone",
      kind: "communication" as const,
      sagM: 0.9,
    })),
  );
  for (const n of [1, 2, 3, 4]) {
    route = changed(route, "attachment", `neutral-${n}`, { heightM: neutralM });
    route = changed(route, "attachment", `telephone-${n}`, { heightM: feetM(20) });
    route = changed(route, "attachment", `strand-${n}`, { heightM: feetM(22) });
    route = changed(route, "attachment", `primary-${n}`, { heightM: feetM(33) });
  }
  return route;
}

function rangeIn(route: Route): readonly (readonly [number, number])[] {
  const range = attachmentRange(openPlant(route), "pole-2");
  if (range.kind === "unknown") throw new Error(range.why);
  return range.free.map(({ fromM, toM }) => [fromM / metresPerInch, toM / metresPerInch]);
}

describe(sourceTitle(nesc), () => {
  it("telephone at 20 ft and a bonded neutral at 26 ft leave 21 ft 0 in to 23 ft 6 in", () => {
    expect(rangeIn(jointPoles(feetM(26)))).toEqual([[expect.closeTo(21 * 12, 2), expect.closeTo(23 * 12 + 6, 2)]]);
  });

  it("a secondary at 26 ft in the neutral's stead leaves no more than 22 ft 8 in", () => {
    const route = changed(jointPoles(feetM(30)), "attachment", "neutral-2", {
      kind: "secondary",
      voltageV: 120,
      heightM: feetM(26),
    });
    expect(rangeIn(route)[0]?.[1]).toBeCloseTo(22 * 12 + 8, 2);
  });

  it("a neutral at 23 ft leaves no room over telephone at 20 ft: 20 ft 6 in is less than 21 ft", () => {
    expect(rangeIn(jointPoles(feetM(23)))).toEqual([]);
  });
});
