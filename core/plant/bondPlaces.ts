import { metresPerFoot } from "../units/constants.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { byName, byText } from "./sorting.ts";
import { type Step, spanRuns } from "./spanRuns.ts";
import { terminalHang } from "./terminalView.ts";

/**
 * Farthest apart that strand is bonded, m.
 *
 * @source GO 95 83.4-A1, text before Decision 05-01-030: at most 1320 ft, and at dead ends; seen, historical
 */
export const farthestBondM = 1320 * metresPerFoot;

/**
 * Poles from one bond to the next at most.
 *
 * @source RUS 1751F-815, joint-use practice: first, last and every fourth pole; from memory
 */
export const farthestBondPoles = 4;

/** A pole where the strand of a section is bonded. */
export type BondPlace = {
  readonly poleId: string;
  readonly sectionId: string;
  /** Along the strand from the bond before, m; null at the first of a walk. */
  readonly sinceM: number | null;
  readonly why: readonly string[];
};

/**
 * Where the strand of every section is bonded, as the spans of the route are come by: at its ends, where something hangs on it, and so that no gap
 * grows too long.
 */
export function bondPlaces(plant: Plant, steps: readonly Step[]): readonly BondPlace[] {
  return plant
    .all("strandSection")
    .map((id) => plant.rowOf("strandSection", id))
    .sort((a, b) => byName(a.name, b.name) || byText(a.id, b.id))
    .flatMap(({ id }) => {
      const own = steps.filter((one) => plant.rowOf("span", one.spanId).strandSectionId === id);
      return piecesOf(own).flatMap((piece) => bondsAlong(plant, id, polesOf(piece)));
    });
}

/** The bonds of every section, in the order the route's spans are walked. */
export const bondsOfRoute = defineQuery("bonds-of-route", (plant): readonly BondPlace[] =>
  bondPlaces(
    plant,
    spanRuns(plant).flatMap((run) => run.steps),
  ),
);

/** Steps that follow each other, piece by piece. */
function piecesOf(steps: readonly Step[]): readonly (readonly Step[])[] {
  const pieces: Step[][] = [];
  for (const step of steps) {
    const last = pieces.at(-1);
    if (last?.at(-1)?.toPoleId === step.fromPoleId) last.push(step);
    else pieces.push([step]);
  }
  return pieces;
}

function polesOf(steps: readonly Step[]): readonly WalkedPole[] {
  let alongM = 0;
  return steps.flatMap((step, index) => {
    const first = index === 0 ? [{ poleId: step.fromPoleId, alongM: 0 }] : [];
    alongM += step.lengthM;
    return [...first, { poleId: step.toPoleId, alongM }];
  });
}

type WalkedPole = { readonly poleId: string; readonly alongM: number };

function bondsAlong(plant: Plant, sectionId: string, poles: readonly WalkedPole[]): readonly BondPlace[] {
  const bonds: BondPlace[] = [];
  let last: { readonly index: number; readonly alongM: number } | null = null;
  poles.forEach(({ poleId, alongM }, index) => {
    const isEnd = index === 0 || index === poles.length - 1;
    const next = poles[index + 1];
    const hung = hungAt(plant, sectionId, poleId);
    const reasons = [...(isEnd ? ["strand end"] : []), ...hung];
    if (reasons.length === 0 && last && next) {
      if (next.alongM - last.alongM > farthestBondM) reasons.push("distance");
      else if (index - last.index >= farthestBondPoles) reasons.push("fourth pole");
    }
    if (reasons.length === 0) return;
    bonds.push({ poleId, sectionId, sinceM: last ? alongM - last.alongM : null, why: reasons });
    last = { index, alongM };
  });
  return bonds;
}

/** What hangs beside a pole on this strand, or holds the pole, and is bonded there. */
function hungAt(plant: Plant, sectionId: string, poleId: string): readonly string[] {
  const spans = [...plant.where("span", "fromPoleId", poleId), ...plant.where("span", "toPoleId", poleId)].filter(
    (id) => plant.rowOf("span", id).strandSectionId === sectionId,
  );
  const terminals = spans
    .flatMap((id) => plant.where("terminal", "spanId", id))
    .filter((id) => terminalHang(plant, id).poleId === poleId)
    .map((id) => plant.rowOf("terminal", id).name);
  const closures = spans.flatMap((id) => {
    const span = plant.rowOf("span", id);
    return plant
      .where("closure", "spanId", id)
      .map((one) => plant.rowOf("closure", one))
      .filter((one) => (one.offsetM <= span.lengthM / 2 ? span.fromPoleId : span.toPoleId) === poleId)
      .map((one) => one.name);
  });
  const guys = plant.where("guy", "poleId", poleId).length > 0 ? ["guy"] : [];
  return [...[...terminals, ...closures].sort(byName), ...guys];
}
