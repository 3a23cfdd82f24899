import { nearestPole, type Profile } from "../../core/plant/profile.ts";
import { openProfilePlaces } from "../../core/plant/profilePlace.ts";
import type { OpenRoute, WindowFinding } from "../app/routeStore.ts";
import { type FindingMark, findingMarks } from "../canvas/findingMarks.ts";
import { elevationY, type Frame, stationX } from "./frame.ts";

/** How far above its place a finding's mark stands, px. */
const liftPx = 16;

/** An open finding about something along a profile. */
export type FindingOnProfile = {
  readonly finding: WindowFinding;
  readonly stationM: number;
  readonly elevationM: number;
};

/** Findings that share a place on a profile, in m from its beginning. */
export type ProfileFindingMark = Omit<FindingMark, "eastM" | "northM"> & {
  readonly stationM: number;
  readonly elevationM: number;
};

/** Open findings about what stands along a profile, where it stands. */
export function findingsOnProfile({ plant, findings }: OpenRoute, profile: Profile): readonly FindingOnProfile[] {
  const placeOf = openProfilePlaces(plant, profile);
  return [...findings.values()].flatMap((finding): FindingOnProfile[] => {
    if (finding.waiverId !== null) return [];
    const place = finding.subjects.map(placeOf).find((one) => one !== null);
    if (!place) return [];
    const elevationM = place.elevationM ?? besideFootM(profile, place.stationM);
    return [{ finding, stationM: place.stationM, elevationM }];
  });
}

/** Findings of a profile gathered where their marks would lie on each other; marks keep together while the view only moves. */
export function profileFindingMarks(
  found: readonly FindingOnProfile[],
  { pxPerM, upPxPerM }: Pick<Frame, "pxPerM" | "upPxPerM">,
): readonly ProfileFindingMark[] {
  const placed = found.map(({ finding, stationM, elevationM }) => ({
    ...finding,
    at: { eastM: stationM * pxPerM, northM: elevationM * upPxPerM },
  }));
  return findingMarks(placed, 1).map(({ eastM, northM, severity, keys }) => ({
    severity,
    keys,
    stationM: eastM / pxPerM,
    elevationM: northM / upPxPerM,
  }));
}

/** Pixel of a mark. */
export function findingMarkPoint(
  frame: Frame,
  { stationM, elevationM }: ProfileFindingMark,
): readonly [number, number] {
  return [stationX(frame, stationM), elevationY(frame, elevationM) - liftPx];
}

/** Where a line nobody can tell is looked for: about as high as a communication line. */
function besideFootM(profile: Profile, stationM: number): number {
  return (nearestPole(profile, stationM)?.footM ?? 0) + 5;
}
