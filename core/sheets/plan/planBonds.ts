import { bondPlaces } from "../../plant/bondPlaces.ts";
import { spanRuns } from "../../plant/spanRuns.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import { stroke } from "../paper/marks.ts";
import { bondMm, bondSymbol, poleRingMm } from "../paper/symbols.ts";
import { type PlanDesk, shifted } from "./planDesk.ts";
import { polesShown } from "./planLine.ts";
import { toPaper } from "./view.ts";

/** Places of a bond's sign round its pole: below first, where nothing else hangs. */
const turnsRad = [-3, -1, -2.5, -1.5, -3.5, -0.5, 1, 3].map((quarter) => (quarter * Math.PI) / 4);

/** The sign of a bond beside every pole where the strand is bonded. */
export function drawBonds(desk: PlanDesk, bonded: ReadonlySet<string>): void {
  for (const poleId of polesShown(desk).filter((id) => bonded.has(id))) {
    const at = toPaper(desk.strip.view, desk.plant.rowOf("pole", poleId));
    const candidates = [2.6, 3.8, 5].flatMap((outMm, ring) =>
      turnsRad.map((turn, rank) => ({
        centre: [
          at[0] + (poleRingMm + outMm) * Math.cos(turn),
          at[1] + (poleRingMm + outMm) * Math.sin(turn),
        ] as PaperPoint,
        turnRad: 0,
        cost: ring * 3 + rank * 0.3,
      })),
    );
    const placed = desk.placer.place({ width: bondMm.width, height: bondMm.height, anchor: at, candidates });
    if (!placed || placed.leader) continue;
    const [x, y] = placed.box.centre;
    const top: PaperPoint = [x, y + bondMm.height / 2];
    const turn = Math.atan2(top[1] - at[1], top[0] - at[0]);
    desk.draw([stroke("poles", "fine", [shifted(at, turn, poleRingMm, 0), top]), ...bondSymbol([x, y])]);
  }
}

/** Ids of the poles where the strand of a route is bonded. */
export function bondedPoles(plant: PlanDesk["plant"]): ReadonlySet<string> {
  const steps = spanRuns(plant).flatMap((run) => run.steps);
  return new Set(bondPlaces(plant, steps).map((one) => one.poleId));
}
