import { type BondPlace, bondsOfRoute } from "../plant/bondPlaces.ts";
import { defineQuery, type Plant } from "../plant/plant.ts";
import { carriesStrand } from "../plant/separation.ts";
import { byName } from "../plant/sorting.ts";
import { type SpanRun, spanRuns } from "../plant/spanRuns.ts";
import { portsOf, terminalHang } from "../plant/terminalView.ts";
import { type Subject, subjectOf } from "./subject.ts";

/**
 * A stretch of the route: a terminal and all that is built since the terminal before it, poles, spans, bonds and closures on the way.
 * Every thing of the route that has a place is in exactly one.
 */
export type Stretch = {
  readonly id: string;
  /** Null for what comes after the last terminal of a run. */
  readonly terminalId: string | null;
  /** The cable along whose way it lies; null where no cable comes by. */
  readonly cableId: string | null;
  /** Pole of the terminal, or the last pole of the stretch. */
  readonly poleId: string;
  readonly things: readonly Subject[];
};

/** The stretches of the route in the order its spans are walked. */
export const stretches = defineQuery("stretches", (plant): readonly Stretch[] => {
  const bonds = bondsOfRoute(plant, "");
  const shown = new Set<string>();
  return spanRuns(plant).flatMap((run, index) => stretchesOf(plant, { run, index, bonds, shown }));
});

/** What has no place of its own: strand and cable, by name. */
export function longThings(plant: Plant): readonly Subject[] {
  const named = (table: "strandSection" | "cable") =>
    plant
      .all(table)
      .map((id) => plant.rowOf(table, id))
      .sort((a, b) => byName(a.name, b.name))
      .map(({ id }) => subjectOf(table, id));
  return [...named("strandSection"), ...named("cable")];
}

type Walk = {
  readonly run: SpanRun;
  readonly index: number;
  readonly bonds: readonly BondPlace[];
  /** Poles that an earlier run has shown. */
  readonly shown: Set<string>;
};

function stretchesOf(plant: Plant, { run, index, bonds, shown }: Walk): readonly Stretch[] {
  const done: Stretch[] = [];
  let things: Subject[] = [];
  const atPole = (poleId: string): void => {
    if (shown.has(poleId)) return;
    shown.add(poleId);
    if (carriesStrand(plant, poleId)) things.push(subjectOf("pole", poleId));
    const bonded = bonds.filter((one) => one.poleId === poleId).map((one) => one.sectionId);
    for (const sectionId of new Set(bonded)) things.push(subjectOf("bond", poleId, 0, sectionId));
    for (const id of closuresAt(plant, poleId)) things.push(subjectOf("closure", id));
    for (const terminalId of terminalsAt(plant, poleId)) {
      things.push(...terminalThings(plant, terminalId));
      done.push({ id: terminalId, terminalId, cableId: run.cableId, poleId, things });
      things = [];
    }
  };
  for (const { spanId, fromPoleId, toPoleId } of run.steps) {
    atPole(fromPoleId);
    if (plant.rowOf("span", spanId).strandSectionId !== null) things.push(subjectOf("span", spanId));
    atPole(toPoleId);
  }
  const last = run.steps.at(-1);
  if (last && things.length > 0)
    done.push({ id: `after ${index}`, terminalId: null, cableId: run.cableId, poleId: last.toPoleId, things });
  return done;
}

/** A terminal with its ports and drops. */
function terminalThings(plant: Plant, terminalId: string): readonly Subject[] {
  const ports = portsOf(plant, terminalId);
  return [
    subjectOf("terminal", terminalId),
    ...ports.map(({ port }) => subjectOf("port", terminalId, port)),
    ...ports.flatMap(({ dropIds }) => dropIds.map((id) => subjectOf("drop", id))),
  ];
}

const spansAt = (plant: Plant, poleId: string): readonly string[] => [
  ...plant.where("span", "fromPoleId", poleId),
  ...plant.where("span", "toPoleId", poleId),
];

function terminalsAt(plant: Plant, poleId: string): readonly string[] {
  return spansAt(plant, poleId)
    .flatMap((id) => plant.where("terminal", "spanId", id))
    .filter((id) => terminalHang(plant, id).poleId === poleId)
    .sort((a, b) => byName(plant.rowOf("terminal", a).name, plant.rowOf("terminal", b).name));
}

function closuresAt(plant: Plant, poleId: string): readonly string[] {
  return spansAt(plant, poleId).flatMap((spanId) => {
    const { lengthM, fromPoleId, toPoleId } = plant.rowOf("span", spanId);
    return plant
      .where("closure", "spanId", spanId)
      .filter((id) => (plant.rowOf("closure", id).offsetM <= lengthM / 2 ? fromPoleId : toPoleId) === poleId);
  });
}
