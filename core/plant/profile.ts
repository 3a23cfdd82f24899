import { bareStrandSteps } from "./bareStrand.ts";
import { type CableStep, cablePath } from "./cablePath.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { type ProfilePole, profilePole } from "./profilePole.ts";
import { type ProfileSpan, profileSpan } from "./profileSpan.ts";

/** A pole of a profile where it stands along the path. */
export type StandingPole = ProfilePole & {
  readonly stationM: number;
  /** Elevation its foot is drawn at, m: measured, else that of the nearest measured pole before or after it. */
  readonly footM: number;
};

/** A pole of unknown height is drawn this much over its highest attachment, m: common practice, no source. */
const overHighestM = 0.6;

/** Where a pole of unknown height has no attachment either, one is taken at this height, m: common practice, no source. */
const usualAttachmentM = 6;

/** Elevation a pole's top is drawn at, m: its own where its height is known, else over its highest attachment. */
export function poleTopM({ footM, aboveGroundM, attachments }: StandingPole): number {
  return footM + (aboveGroundM ?? (attachments.at(-1)?.heightM ?? usualAttachmentM) + overHighestM);
}

/** A span of a profile where it lies along the path. */
export type ProfileStep = {
  /** Distance of the end it is entered at from the cable's feed end, m. */
  readonly startM: number;
  /** True where the path runs against the span's offsets. */
  readonly reversed: boolean;
  readonly inPoleId: string;
  readonly outPoleId: string;
  readonly span: ProfileSpan;
};

/** What a profile runs along: a cable's path, or the spans of a strand section where no cable is lashed yet. */
export type ProfileWay = { readonly table: "cable" | "strandSection"; readonly id: string };

/** The line along a cable's path from its feed end, or along bare strand, seen from the side. */
export type Profile = {
  readonly way: ProfileWay;
  readonly lengthM: number;
  readonly poles: readonly StandingPole[];
  readonly steps: readonly ProfileStep[];
};

/** The profile along a cable or along bare strand; without a step where there is none. */
export function profileAlong(plant: Plant, { table, id }: ProfileWay): Profile {
  return table === "cable" ? profileOf(plant, id) : strandProfile(plant, id);
}

/** The profile along a cable. */
export const profileOf = defineQuery("profile", (plant, cableId) =>
  profileBy(plant, { table: "cable", id: cableId }, cablePath(plant, cableId).steps),
);

/** The profile along the spans of a strand section where no cable is lashed yet. */
const strandProfile = defineQuery("strand-profile", (plant, sectionId) =>
  profileBy(plant, { table: "strandSection", id: sectionId }, bareStrandSteps(plant, sectionId)),
);

function profileBy(plant: Plant, way: ProfileWay, steps: readonly CableStep[]): Profile {
  const last = steps.at(-1);
  return {
    way,
    lengthM: last ? last.startM + last.lengthM : 0,
    poles: standing(
      steps.flatMap(({ inPoleId, outPoleId, startM, lengthM: spanM }, index) => {
        const isJoined = steps[index + 1]?.inPoleId === outPoleId;
        const entered = { stationM: startM, pole: profilePole(plant, inPoleId) };
        return isJoined ? [entered] : [entered, { stationM: startM + spanM, pole: profilePole(plant, outPoleId) }];
      }),
    ),
    steps: steps.map(({ startM, reversed, inPoleId, outPoleId, spanId }) => ({
      startM,
      reversed,
      inPoleId,
      outPoleId,
      span: profileSpan(plant, spanId),
    })),
  };
}

/** The profile with one pole and the spans at it as another plant has them: what a drag changes, and no more. */
export function profileWith(profile: Profile, plant: Plant, poleId: string): Profile {
  const isThere = (step: ProfileStep): boolean => step.inPoleId === poleId || step.outPoleId === poleId;
  return {
    ...profile,
    poles: profile.poles.map((one) => (one.poleId === poleId ? { ...one, ...profilePole(plant, poleId) } : one)),
    steps: profile.steps.map((step) =>
      isThere(step) ? { ...step, span: profileSpan(plant, step.span.spanId) } : step,
    ),
  };
}

/** Station of a place in a step's span, m. */
export function stepStationM({ startM, reversed, span }: ProfileStep, offsetM: number): number {
  return startM + (reversed ? span.lengthM - offsetM : offsetM);
}

/** The step at a station, the nearest one beyond both ends; undefined where the way is empty. */
export function stepAt({ steps }: Profile, stationM: number): ProfileStep | undefined {
  return steps.findLast((step) => step.startM <= stationM) ?? steps[0];
}

/** The pole nearest to a station; undefined where the way is empty. */
export function nearestPole({ poles }: Profile, stationM: number): StandingPole | undefined {
  return nearestTo(poles, stationM);
}

/** The first of those nearest to a station. */
function nearestTo<T extends { readonly stationM: number }>(all: readonly T[], stationM: number): T | undefined {
  let nearest: T | undefined;
  let leastM = Number.POSITIVE_INFINITY;
  for (const one of all) {
    const awayM = Math.abs(one.stationM - stationM);
    if (awayM < leastM) [nearest, leastM] = [one, awayM];
  }
  return nearest;
}

/** Feet of the poles: an unmeasured one takes the ground of the nearest measured pole along the path, 0 where none is. */
function standing(
  poles: readonly { readonly stationM: number; readonly pole: ProfilePole }[],
): readonly StandingPole[] {
  const measured = poles.filter(({ pole }) => pole.groundM !== null);
  return poles.map(({ stationM, pole }) => {
    const nearest = pole.groundM === null ? nearestTo(measured, stationM)?.pole : pole;
    return { ...pole, stationM, footM: nearest?.groundM ?? 0 };
  });
}
