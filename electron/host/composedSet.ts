import { openPlant } from "../../core/plant/plant.ts";
import { openChecker } from "../../core/rules/checker.ts";
import { composeSet } from "../../core/sheets/composeSet.ts";
import type { DrawingSet } from "../../core/sheets/paper/displayList.ts";
import type { Revised } from "../../core/sheets/revised/revised.ts";
import type { drawingProgress } from "./drawingProgress.ts";
import { type DrawnState, routeBefore, type SetWanted } from "./drawnState.ts";
import { pictureOpener } from "./keptPhotos.ts";

/** The drawing set of a state of the route, or some of its sheets, with what changed since the revision before it. */
export async function composedSet(
  { route, findings, only, paper, logo, kinds, photos = new Map() }: SetWanted,
  revised: Revised,
  { onKind, onSheet }: Pick<ReturnType<typeof drawingProgress>, "onKind" | "onSheet">,
): Promise<DrawingSet> {
  const plant = openPlant(route);
  return composeSet(plant, findings ?? openChecker(plant).findings(), {
    revised,
    only,
    logo,
    pictureOf: await pictureOpener(photos),
    onKind,
    onSheet,
    ...(paper === null ? {} : { paper }),
    ...(kinds ? { kinds } : {}),
  });
}

/** How a state of the route stands to its revisions. */
export function revisedOf({ route, revisionId, since, isAsBuilt = false }: DrawnState): Revised {
  return { revisionId, isAsBuilt, since: since && { ...since, before: openPlant(routeBefore(route, since.rows)) } };
}
