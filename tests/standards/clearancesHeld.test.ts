import { describe, expect, it } from "vitest";
import type { Row } from "../../core/model/tables.ts";
import { clearanceLimitFor } from "../../core/plant/clearance.ts";
import { dropPassage, dropSurface } from "../../core/plant/dropClearance.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { metresPerFoot, metresPerInch } from "../../core/units/constants.ts";
import { changed, smallRoute, withRows } from "../fixtures/route/buildRoute.ts";
import { findingsOf } from "../fixtures/route/checkRoute.ts";
import { withStructure } from "../fixtures/route/oneMore.ts";
import { underSet } from "./catalogueFigure.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const graded: Source = {
  document:
    "California PUC General Order 95, 54.8-B1: a drop over a public street may grade from 18 ft at 12 ft out from the curb down to 16 ft at the curb, never under 18 ft at the centre line",
  edition: "web text for drops of 0-750 V; 84.8-A2 of General Order 64-A for communication, superseded",
  mark: "seen",
  tolerance: "half the last digit",
};

/** What is asked of the drop to unit 1 so far in from the edge of a street of a width, ft. */
function askedFt(widthFt: number, inFt: number): number {
  const widthM = widthFt * metresPerFoot;
  const street: Row<"dropCrossing"> = { ...way, surface: "road", fromUnitM: 1 + widthM / 2, widthM };
  const route = changed(withRows(smallRoute(), "dropCrossing", [street]), "livingUnit", "unit-1", { groundM: 100 });
  const plant = openPlant(underSet(route, "clearance-go95"));
  const passage = dropPassage(plant, "drop-1", street.id);
  const limitM = clearanceLimitFor(plant, "dropRoad", "stringing")?.limitM ?? Number.NaN;
  if (passage.kind === "unknown") throw new Error(passage.why);
  return (limitM - (passage.over.easedM?.(1 + inFt * metresPerFoot, "stringing") ?? 0)) / metresPerFoot;
}

const way = { id: "way", livingUnitId: "unit-1", name: "", surfaceM: 100 };

describe(sourceTitle(graded), () => {
  it.each([
    [40, 0, "16.0"],
    [40, 6, "17.0"],
    [40, 12, "18.0"],
    [40, 20, "18.0"],
    [40, 34, "17.0"],
    [16, 8, "18.0"],
    [16, 4, "17.0"],
  ])("a street %s ft wide asks %s ft in from its curb for %s ft", (widthFt, inFt, printedFt) => {
    expectPrinted(askedFt(widthFt, inFt), printedFt);
  });
});

const oregon: Source = {
  document: "Oregon Administrative Rules 734-055-0090, 18 ft over the roadway of a state highway",
  edition: "as read",
  mark: "seen",
  tolerance: "half the last digit",
};

describe(sourceTitle(oregon), () => {
  it("a state highway takes 18 ft, every other surface what the NESC set asks", () => {
    const plant = openPlant(underSet(smallRoute(), "clearance-oregon"));
    expect(clearanceLimitFor(plant, "stateHighway")).toMatchObject({ id: "oregon-stateHighway", basisMark: "seen" });
    expectPrinted((clearanceLimitFor(plant, "stateHighway")?.limitM ?? 0) / metresPerFoot, "18.0");
    expect(clearanceLimitFor(plant, "road")?.id).toBe("nesc-road");
    expect(clearanceLimitFor(plant, "supplyAtPole")?.id).toBe("nesc-supplyAtPole");
  });
});

const roof: Source = {
  document: "National Electrical Code (NFPA 70), 800.44, communication drop 8 ft over a roof",
  edition: "2017 numbering",
  mark: "memory",
  tolerance: "1 mm",
};

describe(sourceTitle(roof), () => {
  it("a drop 1 mm lower over a roof is found, and the finding names clause, edition and mark", () => {
    const over = (surfaceM: number | null) => {
      const shed: Row<"dropCrossing"> = { ...way, surface: "roof", fromUnitM: 4, widthM: 0.001, surfaceM };
      const route = changed(withRows(smallRoute(), "dropCrossing", [shed]), "livingUnit", "unit-1", { groundM: 100 });
      return underSet(route, "clearance-nesc");
    };
    const passage = dropPassage(openPlant(over(100)), "drop-1", "way");
    if (passage.kind === "unknown") throw new Error(passage.why);
    const lowestM = Math.min(...(["stringing", "hot", "iced"] as const).map((one) => passage.hung.undersideM(4, one)));
    const roofM = lowestM - 8 * metresPerFoot;
    expect(findingsOf(over(roofM - 0.001), "drop-clearance")).toEqual([]);
    expect(findingsOf(over(roofM + 0.001), "drop-clearance")).toMatchObject([
      { basis: { clause: expect.stringMatching(/^800\.44/), edition: "2017 numbering", mark: "memory" } },
    ]);
    expect(findingsOf(over(null), "drop-clearance-unknown")).toMatchObject([
      { message: expect.stringMatching(/Nobody measured the roof\.$/) },
    ]);
  });
});

const signs: Source = {
  document: "California PUC General Order 95, Table 2-A and note (c): under and beside signs",
  edition: "current web text",
  mark: "seen",
  tolerance: "1 mm",
};

describe(sourceTitle(signs), () => {
  const found = (columns: Parameters<typeof withStructure>[0]) =>
    findingsOf(underSet(withStructure(columns), "clearance-go95"), "structure-clearance").length;
  /** Height of our strand over the ground where it is highest under the sign, m: at the edge of it nearer to a pole, strung. */
  const sign = (bottomM: number, kind: "sign" | "litSign") => found({ besideM: 0, heightM: 12, bottomM, kind });
  const leastBottomM = (kind: "sign" | "litSign") => {
    let [low, high] = [5, 9];
    while (high - low > 1e-6) {
      const middle = (low + high) / 2;
      if (sign(middle, kind) > 0) low = middle;
      else high = middle;
    }
    return high;
  };

  it("under a lit sign 2 ft remain and under a plain one 6 in: 18 in less", () => {
    expect((leastBottomM("litSign") - leastBottomM("sign")) / metresPerInch).toBeCloseTo(18, 3);
  });

  it("beside a lit sign 3 ft remain, 6 in where it is grounded", () => {
    const beside = (besideM: number, kind: "litSign" | "groundedLitSign") => found({ besideM, kind, heightM: 7 });
    const [threeFeetM, sixInchesM] = [3 * metresPerFoot, 6 * metresPerInch];
    expect([beside(threeFeetM - 0.001, "litSign"), beside(threeFeetM, "litSign")]).toEqual([1, 0]);
    expect([beside(sixInchesM - 0.001, "groundedLitSign"), beside(sixInchesM, "groundedLitSign")]).toEqual([1, 0]);
  });
});

const driveways: Source = {
  document:
    "NESC Table 232-1 and its footnote: a service drop over a residential driveway, 11.5 ft where the building is too low for 15.5 ft; California General Order 64-A, 84.8-A2, 10 ft",
  edition: "2017/2023 numbering; superseded",
  mark: "memory",
  tolerance: "half the last digit",
};

describe(sourceTitle(driveways), () => {
  it.each([
    ["clearance-nesc", "homeDriveway", 3.6, "11.5"],
    ["clearance-nesc", "homeDriveway", 4.8, "15.5"],
    ["clearance-nesc", "driveway", 3.6, "15.5"],
    ["clearance-go95", "homeDriveway", 4.8, "10.0"],
    ["clearance-go95", "driveway", 3.6, "15.0"],
  ] as const)(
    "under %s a drop over a %s to a building at %s m keeps %s ft",
    (set, surface, attachHeightM, printedFt) => {
      const lane: Row<"dropCrossing"> = { ...way, surface, fromUnitM: 4, widthM: 3 };
      const route = changed(withRows(smallRoute(), "dropCrossing", [lane]), "livingUnit", "unit-1", { attachHeightM });
      const plant = openPlant(underSet(route, set));
      const limit = clearanceLimitFor(plant, dropSurface(plant, "way"), "stringing");
      expectPrinted((limit?.limitM ?? 0) / metresPerFoot, printedFt);
    },
  );
});
