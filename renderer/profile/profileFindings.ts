import { nearestPole, type Profile, placeOnProfile } from "../../core/plant/profile.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { type FindingMark, findingMarks } from "../canvas/findingMarks.ts";
import type { ProfilePicture } from "./drawLine.ts";
import { elevationY, stationX } from "./frame.ts";

/** How far above its place a finding's mark stands, px. */
const liftPx = 16;

/** Open findings about what stands along the profile, where they are in pixels; those that share a place together. */
export function profileFindings(
  { plant, findings }: OpenRoute,
  { profile, frame }: ProfilePicture,
): readonly (FindingMark & { readonly x: number; readonly y: number })[] {
  const placed = [...findings.values()].flatMap((finding) => {
    if (finding.waiverId !== null) return [];
    const place = finding.subjects.map((row) => placeOnProfile(plant, profile, row)).find((one) => one !== null);
    if (!place) return [];
    // told from the beginning of the path, so that marks keep together while the view moves
    const at = {
      eastM: place.stationM * frame.pxPerM,
      northM: (place.elevationM ?? besideFootM(profile, place.stationM)) * frame.upPxPerM,
    };
    return [{ ...finding, at }];
  });
  return findingMarks(placed, 1).map((mark) => ({
    ...mark,
    x: stationX(frame, mark.eastM / frame.pxPerM),
    y: elevationY(frame, mark.northM / frame.upPxPerM) - liftPx,
  }));
}

/** Where a line nobody can tell is looked for: about as high as a communication line. */
function besideFootM(profile: Profile, stationM: number): number {
  return (nearestPole(profile, stationM)?.footM ?? 0) + 5;
}
