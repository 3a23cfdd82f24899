import type { Plant } from "../../core/plant/plant.ts";
import type { Profile, ProfileStep, StandingPole } from "../../core/plant/profile.ts";
import { type SpanClearance, spanClearance } from "../../core/plant/spanClearance.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import type { Ink } from "../canvas/ink.ts";
import type { Measure } from "../canvas/labelWishes.ts";
import { elevationY, type Frame, stationAt, stationX } from "./frame.ts";

/** How a profile is looked at. */
export type ProfileLook = { readonly frame: Frame; readonly ink: Ink; readonly units: UnitSystem };

/** A pole where it is drawn. */
export type PoleMark = {
  readonly pole: StandingPole;
  readonly x: number;
  /** To the next pole, px. */
  readonly roomPx: number;
  /** Upper edge of its tag, below the ground that falls away beside the pole; null where the tags before it leave no room. */
  readonly tagY: number | null;
};

/** The spans and poles in sight, ready to be drawn. */
export type ProfileScene = {
  readonly steps: readonly ProfileStep[];
  readonly poles: readonly PoleMark[];
  /** Elevation of the foot of every pole of the path, m. */
  readonly footOf: (poleId: string) => number;
  /** The clearance of a span with the least to spare; null where nobody can tell. */
  readonly leastOf: (spanId: string) => SpanClearance | null;
  /** Whether spans are wide enough for dashes, cases and attachments to be told apart. */
  readonly isRoomy: boolean;
};

/** Mean width of a span from which its lines can be told apart, px. */
const roomyPx = 12;

/** Size of a pole's tag, px at the usual size of letters. */
export const tagLetterPx = 12;

/** From a pole's foot to its tag, px. */
const underFootPx = 5;

/** How far beyond the page a pole is still drawn, for the words at its right, px. */
const reserve = { leftPx: 240, rightPx: 20 } as const;

/** A profile ready to be drawn; the plant is asked for clearances where they are dimensioned. */
export function profileScene(
  plant: Plant,
  profile: Profile,
  { frame, ink }: ProfileLook,
  measure: Measure,
): ProfileScene {
  const [fromM, toM] = [stationAt(frame, -reserve.leftPx), stationAt(frame, frame.widthPx + reserve.rightPx)];
  const steps = profile.steps.filter((step) => step.startM <= toM && step.startM + step.span.lengthM >= fromM);
  let tagsToX = Number.NEGATIVE_INFINITY;
  const poles = profile.poles.flatMap((pole, index): PoleMark[] => {
    if (pole.stationM < fromM || pole.stationM > toM) return [];
    const x = stationX(frame, pole.stationM);
    const [before, after] = [profile.poles[index - 1], profile.poles[index + 1]];
    // a tag whose middle lies under another's needs no measuring
    const halfPx = x > tagsToX ? measure(pole.tag, tagLetterPx * ink.letterFrac, 600) / 2 : 0;
    const isTagged = x - halfPx > tagsToX;
    if (isTagged) tagsToX = x + halfPx + 8;
    const fallPx = Math.max(...[before, after].map((one) => (one ? groundFallPx(frame, pole, one, halfPx) : 0)));
    return [
      {
        pole,
        x,
        roomPx: Math.abs(stationX(frame, (after ?? before)?.stationM ?? 0) - x),
        tagY: isTagged ? elevationY(frame, pole.footM) + fallPx + underFootPx : null,
      },
    ];
  });
  return {
    steps,
    poles,
    footOf: (poleId) => profile.poles.find((pole) => pole.poleId === poleId)?.footM ?? 0,
    leastOf: (spanId) => spanClearance(plant, spanId),
    isRoomy: frame.pxPerM * profile.lengthM >= roomyPx * profile.steps.length,
  };
}

/** How far the ground falls from a pole's foot towards the next pole within half a tag, px. */
function groundFallPx(frame: Frame, from: StandingPole, to: StandingPole, halfPx: number): number {
  const apartPx = Math.abs(to.stationM - from.stationM) * frame.pxPerM;
  const fallPx = (from.footM - to.footM) * frame.upPxPerM;
  return Math.max(0, fallPx * Math.min(1, halfPx / Math.max(apartPx, 1)));
}

/** A scene in two: what stands still while an attachment of a pole moves, and that pole with its spans and the poles at their far ends. */
export function partedScene(
  scene: ProfileScene,
  poleId: string,
): { readonly still: ProfileScene; readonly moving: ProfileScene } {
  const { steps, poles } = scene;
  const isAt = (step: ProfileStep): boolean => step.inPoleId === poleId || step.outPoleId === poleId;
  const ends = new Set([poleId, ...steps.filter(isAt).flatMap((step) => [step.inPoleId, step.outPoleId])]);
  return {
    still: {
      ...scene,
      steps: steps.filter((step) => !isAt(step)),
      poles: poles.filter((one) => !ends.has(one.pole.poleId)),
    },
    moving: { ...scene, steps: steps.filter(isAt), poles: poles.filter((one) => ends.has(one.pole.poleId)) },
  };
}

/** The marks that stand over the spans of a scene. */
export function marksOver<Mark extends { readonly stationM: number }>(
  { steps }: ProfileScene,
  marks: readonly Mark[],
): readonly Mark[] {
  return marks.filter(({ stationM }) =>
    steps.some(({ startM, span }) => stationM >= startM && stationM <= startM + span.lengthM),
  );
}
