import { strengthCases } from "../model/loadRows.ts";
import { passingCost } from "../plant/dropPassing.ts";
import { dropRunM } from "../plant/dropView.ts";
import type { LayoutFigures } from "../plant/layoutCompare.ts";
import { standingRecord } from "../plant/layoutStanding.ts";
import { lightMargin } from "../plant/lightMargin.ts";
import type { Plant } from "../plant/plant.ts";
import { spanSag } from "../plant/spanSag.ts";
import { stateIn } from "../plant/strength.ts";
import { portCounts, terminalHang } from "../plant/terminalView.ts";

/** Figures of a route as it is laid out. */
export function layoutFigures(plant: Plant): LayoutFigures {
  const route = plant.route();
  const record = standingRecord(route);
  const runsM = [...route.drop.keys()].map((id) => dropRunM(plant, id));
  const fills = [...route.terminal.keys()].map((id) => {
    const { used, total } = portCounts(plant, id);
    return used / total;
  });
  return {
    terminalCount: route.terminal.size,
    servedCount: new Set([...route.drop.values()].map((one) => one.livingUnitId)).size,
    unitCount: route.livingUnit.size,
    cost: costOfAll(plant),
    searched: record && record.bound !== null ? { cost: record.cost, bound: record.bound } : null,
    dropM: runsM.reduce((sum, one) => sum + one, 0),
    longestDropM: runsM.reduce((most, one) => Math.max(most, one), 0),
    fillFrac: fills.length === 0 ? null : [least(fills), most(fills)],
    strandFrac: worstStrandFrac(plant),
    lightMarginDb: leastLightDb(plant),
  };
}

function costOfAll(plant: Plant): number {
  const { dropAllowanceM } = plant.settings();
  const route = plant.route();
  let cost = 0;
  for (const { terminalModelId } of route.terminal.values()) cost += plant.rowOf("terminalModel", terminalModelId).cost;
  for (const { id, dropTypeId, terminalId, livingUnitId } of route.drop.values()) {
    const { costPerM, costEach } = plant.rowOf("dropType", dropTypeId);
    cost += costEach + costPerM * (dropRunM(plant, id) + dropAllowanceM);
    cost += passingCost(plant, terminalHang(plant, terminalId), plant.rowOf("livingUnit", livingUnitId));
  }
  return cost;
}

function worstStrandFrac(plant: Plant): number | null {
  const parts = [...plant.route().span.values()].flatMap(({ id, strandSectionId }) => {
    const sag = strandSectionId === null ? null : spanSag(plant, id);
    if (sag?.kind !== "known") return [];
    return strengthCases.flatMap((condition) => {
      const state = stateIn(plant, id, condition);
      return state ? [state.supportN / sag.tension.breakingN] : [];
    });
  });
  return parts.length === 0 ? null : most(parts);
}

function leastLightDb(plant: Plant): number | null {
  const left = [...plant.route().drop.keys()].flatMap((id) => {
    const margin = lightMargin(plant, id);
    return margin.kind === "known" ? [margin.worstDb] : [];
  });
  return left.length === 0 ? null : least(left);
}

function least(values: readonly number[]): number {
  return values.reduce((low, one) => Math.min(low, one), Number.POSITIVE_INFINITY);
}

function most(values: readonly number[]): number {
  return values.reduce((high, one) => Math.max(high, one), Number.NEGATIVE_INFINITY);
}
