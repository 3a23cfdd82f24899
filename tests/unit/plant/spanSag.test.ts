import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { spanSag, strandSagM } from "../../../core/plant/spanSag.ts";
import { metresPerFoot, metresPerInch, newtonsPerPoundForce } from "../../../core/units/constants.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

const nPerMOf = (poundsPerFoot: number) => (poundsPerFoot * newtonsPerPoundForce) / metresPerFoot;
const degCOf = (degF: number) => (degF - 32) / 1.8;

/** The reference span of the trade's regression tests: 150 ft, 1 % at 60 degF, 1/4 in strand, 0.202 lb/ft in all. */
function referenceRoute() {
  let route = smallRoute({
    spanM: 150 * metresPerFoot,
    settings: { lashingNPerM: nPerMOf(0.006), stringingDegC: degCOf(60) },
  });
  route = changed(route, "strandSection", "section-1", { stringingDegC: degCOf(60) });
  route = changed(route, "strandType", "strand-quarter", {
    diameterM: 0.25 * metresPerInch,
    weightNPerM: nPerMOf(0.121),
    areaM2: 0.0352 * metresPerInch ** 2,
    modulusPa: (24e6 * newtonsPerPoundForce) / metresPerInch ** 2,
    expansionPerC: 6.4e-6 * 1.8,
    breakingN: 6650 * newtonsPerPoundForce,
  });
  route = changed(route, "cableType", "cable-type-48", {
    diameterM: 0.43 * metresPerInch,
    weightNPerM: nPerMOf(0.075),
  });
  return changed(route, "loadingDistrict", "district-heavy", {
    iceM: 0.5 * metresPerInch,
    iceDensityKgPerM3: 913.0524,
    windPa: 191.521,
    temperatureDegC: degCOf(0),
    constantNPerM: nPerMOf(0.3),
    hotDegC: degCOf(120),
    icedDegC: degCOf(32),
  });
}

describe("how a span hangs", () => {
  it("agrees with the reference span worked out in feet and pounds", () => {
    const sag = spanSag(openPlant(referenceRoute()), "span-1");
    if (sag.kind === "unknown") throw new Error(sag.why);
    const inPounds = (forceN: number) => forceN / newtonsPerPoundForce;
    const inFeet = (lengthM: number) => lengthM / metresPerFoot;
    expect(inPounds(sag.stringing.horizontalN)).toBeCloseTo(378.75, 2);
    expect(inFeet(sag.stringing.sagM)).toBeCloseTo(1.5, 6);
    expect(inPounds(sag.hot.horizontalN)).toBeCloseTo(270.55, 1);
    expect(inFeet(sag.hot.sagM)).toBeCloseTo(2.0999, 3);
    expect(inPounds(sag.iced.horizontalN)).toBeCloseTo(999.3, 0);
    expect(inFeet(sag.iced.sagM)).toBeCloseTo(2.6335, 3);
    expect(inPounds(sag.tension.horizontalN)).toBeCloseTo(1335.9, 0);
    expect(inFeet(sag.tension.sagM)).toBeCloseTo(2.927, 2);
  });

  it("pulls at the supports by the horizontal tension and half its weight, squared and summed", () => {
    const sag = spanSag(openPlant(smallRoute()), "span-1");
    if (sag.kind === "unknown") throw new Error(sag.why);
    const { horizontalN, loadNPerM, supportN } = sag.tension;
    expect(supportN).toBeCloseTo(Math.hypot(horizontalN, (loadNPerM * 45) / 2), 6);
  });

  it("is pulled a little harder, and sags a little less at midspan, where a terminal and its coil hang near a pole", () => {
    const plant = openPlant(smallRoute());
    const [bare, hung] = [spanSag(plant, "span-1"), spanSag(plant, "span-2")];
    if (bare.kind === "unknown" || hung.kind === "unknown") throw new Error("the small route has no sag");
    expect(hung.stringing).toEqual(bare.stringing);
    expect(hung.hot.horizontalN / bare.hot.horizontalN - 1).toBeGreaterThan(0.001);
    expect(hung.hot.horizontalN / bare.hot.horizontalN - 1).toBeLessThan(0.05);
    const midspanM = (sag: typeof bare) => strandSagM(45, sag.hot, 22.5);
    expect(midspanM(hung)).toBeLessThan(midspanM(bare));
    expect(strandSagM(45, hung.hot, 0.9144)).toBeGreaterThan(strandSagM(45, bare.hot, 0.9144));
  });

  it("has the hot sag as its largest where no ice is expected", () => {
    const route = changed(smallRoute(), "loadingDistrict", "district-heavy", { iceM: 0 });
    const sag = spanSag(openPlant(route), "span-1");
    if (sag.kind === "unknown") throw new Error(sag.why);
    expect(sag.hot.sagM).toBeGreaterThan(sag.stringing.sagM);
    expect(sag.iced.sagM).toBeLessThan(sag.stringing.sagM);
  });

  it("pulls harder on a slope, hardest at the upper pole, and hangs below its chord as it was strung", () => {
    const hill = changed(smallRoute(), "pole", "pole-2", { groundM: 109 });
    const [level, sloping] = [smallRoute(), hill].map((route) => spanSag(openPlant(route), "span-1"));
    if (level?.kind !== "known" || sloping?.kind !== "known") throw new Error("the small route has no sag");
    const chordFrac = Math.hypot(45, 9) / 45;
    expect(sloping.stringing.sagM).toBeCloseTo(0.45, 12);
    expect(sloping.stringing.horizontalN / level.stringing.horizontalN).toBeCloseTo(chordFrac, 12);
    const { horizontalN, alongNPerM, supportN } = sloping.stringing;
    const upperN = (alongNPerM * 45 * chordFrac) / 2 + horizontalN * (9 / 45);
    expect(supportN).toBeCloseTo(Math.hypot(horizontalN, upperN), 6);
  });

  it("shares one tension from dead end to dead end where the strand slips, and sags as the square of the span", () => {
    const slipping = changed(smallRoute(), "strandSection", "section-1", { atPoles: "slipping" });
    const plant = openPlant(changed(slipping, "span", "span-1", { lengthM: 30 }));
    const [short, long] = [spanSag(plant, "span-1"), spanSag(plant, "span-2")];
    if (short.kind === "unknown" || long.kind === "unknown") throw new Error("the small route has no sag");
    expect(short.rowCount).toBe(3);
    for (const part of ["stringing", "hot", "iced", "tension"] as const)
      expect(short[part].horizontalN).toBe(long[part].horizontalN);
    expect(short.stringing.sagM / long.stringing.sagM).toBeCloseTo((30 / 45) ** 2, 12);
    const rulingM = Math.sqrt((30 ** 3 + 2 * 45 ** 3) / 120);
    expect(short.stringing.horizontalN).toBeCloseTo((short.stringing.loadNPerM * rulingM) / (8 * 0.01), 8);
  });

  it("is unknown without strand, and says of which span", () => {
    const route = changed(smallRoute(), "span", "span-1", { strandSectionId: null });
    expect(spanSag(openPlant(route), "span-1")).toEqual({
      kind: "unknown",
      why: "Span P1 to P2 carries no strand of ours.",
    });
  });

  it("is unknown without a stringing sag", () => {
    const route = changed(smallRoute(), "strandSection", "section-1", { stringingSagFrac: 0 });
    expect(spanSag(openPlant(route), "span-1")).toEqual({
      kind: "unknown",
      why: "Strand section Section 1 has no stringing sag.",
    });
  });
});
