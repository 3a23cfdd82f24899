import newtonRaphson from "newton-raphson-method";
import type { Route } from "../../core/model/route.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { spanBundle } from "../../core/plant/spanLoad.ts";
import { type ChangeOfState, changeOfState } from "../../core/strand/changeOfState.ts";
import { shearSquaredN2M } from "../../core/strand/equivalentBeam.ts";
import { lineLoad } from "../../core/strand/lineLoad.ts";
import type { PointLoad } from "../../core/strand/pointLoad.ts";
import { stringingHorizontalN } from "../../core/strand/stringing.ts";
import { type Figures, median } from "./measure.ts";

const terminalN = 60;
const workerN = 890;
const casesPerTurn = 100;

/** Every span of a route strung, and hung hot, iced, under the district load with its terminals, and with a worker at midspan. */
function allCases(route: Route): ChangeOfState[] {
  const plant = openPlant(route);
  const district = plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId);
  return [...route.span.values()].flatMap((span) => {
    const bundle = spanBundle(plant, span.id);
    if (bundle === null || span.strandSectionId === null) throw new Error("the route has a span without strand");
    const section = plant.rowOf("strandSection", span.strandSectionId);
    const strand = plant.rowOf("strandType", section.strandTypeId);
    const weather = { ...district, diameterM: bundle.diameterM, weightNPerM: bundle.weightNPerM };
    const pointLoads = plant
      .where("terminal", "spanId", span.id)
      .map((id): PointLoad => ({ atM: plant.rowOf("terminal", id).offsetM, weightN: terminalN }));
    const strung = { weightNPerM: bundle.weightNPerM, temperatureDegC: section.stringingDegC };
    const cases = [
      { weightNPerM: bundle.weightNPerM, temperatureDegC: district.hotDegC, pointLoads },
      { weightNPerM: lineLoad(weather).verticalNPerM, temperatureDegC: district.icedDegC, pointLoads },
      { weightNPerM: lineLoad(weather).totalNPerM, temperatureDegC: district.temperatureDegC, pointLoads },
      { ...strung, pointLoads: [...pointLoads, { atM: span.lengthM / 2, weightN: workerN }] },
    ];
    const from = {
      ...strung,
      horizontalN: stringingHorizontalN(span.lengthM, bundle.weightNPerM, section.stringingSagFrac),
    };
    const axialStiffnessN = strand.areaM2 * strand.modulusPa;
    return cases.map((to) => ({
      spanM: span.lengthM,
      axialStiffnessN,
      expansionPerDegC: strand.expansionPerC,
      from,
      to,
    }));
  });
}

/** The same level span by a root finder that knows nothing of strand: the length the strand has against the one it must have. */
function solveByLibrary({ spanM, axialStiffnessN, expansionPerDegC, from, to }: ChangeOfState): number | false {
  const halfShear = ({ weightNPerM, pointLoads = [] }: ChangeOfState["to"]) =>
    shearSquaredN2M({ spanM, runNPerM: weightNPerM, pointLoads }) / (2 * spanM);
  const fromSlack = halfShear(from) / from.horizontalN ** 2;
  const toShear = halfShear(to);
  const warmth = expansionPerDegC * (to.temperatureDegC - from.temperatureDegC);
  const excess = (horizontalN: number) =>
    fromSlack + warmth + (horizontalN - from.horizontalN) / axialStiffnessN - toShear / horizontalN ** 2;
  const options = { tolerance: 1e-10, maxIterations: 100, h: 0.1 };
  return newtonRaphson(excess, from.horizontalN, options);
}

/** Change-of-state solves of every case of every span, against the same by a general root finder. */
export function benchStatics(route: Route): Figures {
  const cases = allCases(route);
  const compared = cases.map((one) => {
    const ours = changeOfState(one);
    if (!ours.ok) throw new Error(ours.fault.what);
    const theirs = solveByLibrary(one);
    return theirs === false ? null : Math.abs(theirs / ours.value.horizontalN - 1);
  });
  const rounds = Array.from({ length: 7 }, () => roundMs(cases));
  const ourMs = median(rounds.map(([ours]) => ours));
  return {
    staticsSolves: cases.length,
    staticsSolvesPerSecond: (1000 * cases.length) / ourMs,
    staticsOverRootFinder: median(rounds.map(([ours, theirs]) => ours / theirs)),
    staticsRootFinderUnsettled: compared.filter((one) => one === null).length,
    staticsLargestDifference: Math.max(...compared.map((one) => one ?? 0)),
  };
}

/**
 * Time of all cases by the kernel and by the library. They take turns at so few cases that these stay in the processor's cache, as they
 * do where each is made and solved at once: over all of them both would mostly wait for memory.
 */
function roundMs(cases: readonly ChangeOfState[]): readonly [number, number] {
  let ourMs = 0;
  let theirMs = 0;
  for (let from = 0; from < cases.length; from += casesPerTurn) {
    const turn = cases.slice(from, from + casesPerTurn);
    turn.forEach(changeOfState);
    const start = performance.now();
    turn.forEach(changeOfState);
    const middle = performance.now();
    turn.forEach(solveByLibrary);
    ourMs += middle - start;
    theirMs += performance.now() - middle;
  }
  return [ourMs, theirMs];
}
