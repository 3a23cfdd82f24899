import { routeWith } from "../layout/rowSet.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { Drop } from "../model/tables.ts";
import { runToM } from "../plant/dropView.ts";
import { lightMargin } from "../plant/lightMargin.ts";
import { openPlant, type Plant } from "../plant/plant.ts";
import { portCounts } from "../plant/terminalView.ts";
import { invert } from "./change.ts";
import { movedDrops } from "./commands/dropsMove.ts";

/** How full a terminal is before and after. */
export type FillChange = {
  readonly terminalId: string;
  readonly before: number;
  readonly after: number;
  readonly total: number;
  /** Ports left after: neither used nor reserved. */
  readonly spareAfter: number;
};

/** Least margins of light over some drops, dB, and the way of the weaker; null where one of them has no light. */
export type LeastLight = { readonly marginDb: number; readonly way: "up" | "down"; readonly overloadDb: number } | null;

/** What moving drops to a terminal would come to. */
export type MoveTrial =
  | {
      readonly kind: "refused";
      readonly what: string;
      /** Run of the longest moved drop where that is why, m. */
      readonly beyondM: number | null;
    }
  | {
      readonly kind: "possible";
      /** The drops as they would be. */
      readonly drops: readonly Drop[];
      readonly to: FillChange;
      readonly from: readonly FillChange[];
      /** Price of drop cable, more or less than now. */
      readonly costChange: number;
      /** All moved drops together, m, longer or shorter than now. */
      readonly runChangeM: number;
      readonly longestRunM: number;
      readonly lightBefore: LeastLight;
      readonly lightAfter: LeastLight;
    };

/**
 * Tries where drops could go, before any goes: what a move would cost, reach, fill and leave of light. What is beyond reach is refused
 * here, though the edit itself would take it.
 *
 * @returns what moving all of them to a terminal would come to; those that are there already stay as they are
 */
export function openMoveTrials(route: Route, dropIds: readonly string[]): (terminalId: string) => MoveTrial {
  const plant = openPlant(route);
  const lightBefore = leastLight(plant, dropIds);
  return (terminalId) => {
    const coming = dropIds.map((id) => plant.rowOf("drop", id)).filter((one) => one.terminalId !== terminalId);
    const { name } = plant.rowOf("terminal", terminalId);
    if (coming.length === 0) return refused(`Terminal ${name} serves them already.`);
    const { dropReachM } = plant.settings();
    const runsM = coming.map((one) => runToM(plant, one.livingUnitId, terminalId));
    const beyond = coming[runsM.findIndex((one) => one > dropReachM)];
    if (beyond) {
      const { address } = plant.rowOf("livingUnit", beyond.livingUnitId);
      return refused(`Terminal ${name} is beyond the drop reach of ${address}.`, Math.max(...runsM));
    }
    const asked = movedDrops(plant, dropIds, terminalId);
    if (!asked.ok) return refused(asked.fault.what);
    const changesM = coming.map((one, index) => (runsM[index] ?? 0) - runToM(plant, one.livingUnitId, one.terminalId));
    const prices = coming.map((one) => plant.rowOf("dropType", one.dropTypeId).costPerM);
    const ids = [...new Set([terminalId, ...coming.map((one) => one.terminalId)])];
    const before = new Map(ids.map((id) => [id, portCounts(plant, id).used]));
    return tried(plant, route, asked.value, () => {
      const [to, ...from] = ids.map((id): FillChange => {
        const { used, total, spare } = portCounts(plant, id);
        return { terminalId: id, before: before.get(id) ?? 0, after: used, total, spareAfter: spare };
      });
      if (!to) throw new Error("the terminal asked about is the first of them");
      return {
        kind: "possible",
        drops: coming.map((one) => plant.rowOf("drop", one.id)),
        to,
        from,
        costChange: changesM.reduce((sum, one, index) => sum + one * (prices[index] ?? 0), 0),
        runChangeM: changesM.reduce((sum, one) => sum + one, 0),
        longestRunM: Math.max(...runsM),
        lightBefore,
        lightAfter: leastLight(plant, dropIds),
      };
    });
  };
}

/** Looks at the route as edits would make it; the plant is as it was after. */
function tried<T>(plant: Plant, route: Route, rows: readonly RowChange[], look: () => T): T {
  plant.advance(routeWith(route, rows), rows);
  try {
    return look();
  } finally {
    plant.advance(route, invert({ label: "", author: "", atIso: "", rows }).rows);
  }
}

/** The least margins over drops; null where one has no light. */
function leastLight(plant: Plant, dropIds: readonly string[]): LeastLight {
  const known = dropIds.map((id) => lightMargin(plant, id)).filter((one) => one.kind === "known");
  const worst = known.toSorted((a, b) => a.worstDb - b.worstDb)[0];
  if (!worst || known.length < dropIds.length) return null;
  const overloadDb = Math.min(...known.map((one) => one.overloadDb));
  return { marginDb: worst.worstDb, way: worst.way, overloadDb };
}

function refused(what: string, beyondM: number | null = null): MoveTrial {
  return { kind: "refused", what, beyondM };
}
