import type { PaperBox } from "../paper/paper.ts";
import { drawnKey, type PlanDesk } from "../plan/planDesk.ts";
import { toPaper } from "../plan/view.ts";
import type { PlacedChange } from "./changePlaces.ts";
import { cloudBox, drawCloudsRound, pointsRound } from "./clouds.ts";

/** Clouds round what changed on a strip. */
export function drawClouds(desk: PlanDesk, changes: readonly PlacedChange[], letter: string): void {
  drawCloudsRound(
    desk,
    changes.flatMap((one) => boxOf(desk, one) ?? []),
    letter,
  );
}

function boxOf(desk: PlanDesk, change: PlacedChange): PaperBox | null {
  if (!change.at) return null;
  const points = change.isGone ? undefined : desk.drawnAt.get(drawnKeyOf(desk, change));
  return cloudBox(points ?? pointsRound(toPaper(desk.strip.view, change.at)), desk.box);
}

/** A drop shows at its house. */
function drawnKeyOf({ plant }: PlanDesk, { table, id }: PlacedChange): string {
  const drop = table === "drop" ? plant.row("drop", id) : undefined;
  return drop ? drawnKey("livingUnit", drop.livingUnitId) : drawnKey(table, id);
}
