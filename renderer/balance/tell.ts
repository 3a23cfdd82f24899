import type { FillChange, LeastLight, MoveTrial } from "../../core/edits/moveTrial.ts";
import { terminalBalance } from "../../core/plant/balance.ts";
import { dropRunM, runToM } from "../../core/plant/dropView.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { portCounts } from "../../core/plant/terminalView.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import { formatLossDb } from "../../core/units/formatLossDb.ts";
import { moneyText } from "../../core/units/moneyText.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import type { BalanceSpot } from "./balanceView.ts";
import { portStateWords, balanceWords as words } from "./words.ts";

/** A port in words: whose it is, or what it is kept for. */
export function portWords(plant: Plant, { terminalId, port }: BalanceSpot, units: UnitSystem): string {
  const view = terminalBalance(plant, terminalId).ports[port - 1];
  if (!view) return "";
  const served = view.dropIds.map((id) => {
    const { livingUnitId, pinned } = plant.rowOf("drop", id);
    const run = formatLength(dropRunM(plant, id), units, "drop");
    return `${plant.rowOf("livingUnit", livingUnitId).address}, ${run}${pinned ? ", pinned" : ""}`;
  });
  const { reservedFor } = plant.rowOf("terminal", terminalId);
  const whom = view.state === "reserved" && reservedFor !== "" ? ` for ${reservedFor}` : "";
  return served.length > 0 ? served.join(" and ") : `${portStateWords[view.state]}${whom}`;
}

/** A port with its terminal, as it is said when one comes to it. */
export function spotWords(plant: Plant, spot: BalanceSpot, units: UnitSystem): string {
  const { name } = plant.rowOf("terminal", spot.terminalId);
  return `Terminal ${name}, port ${spot.port}: ${portWords(plant, spot, units)}`;
}

type Target = { readonly terminalId: string; readonly trial: MoveTrial };

/** What a move would come to, a clause for each of cost, reach, fill and light; the reason alone where it is refused. */
export function trialWords(plant: Plant, { terminalId, trial }: Target, units: UnitSystem): readonly string[] {
  const { dropReachM } = plant.settings();
  if (trial.kind === "refused") {
    if (trial.beyondM === null) return [trial.what];
    const lengths = [trial.beyondM, dropReachM].map((one) => formatLength(one, units, "drop"));
    return [trial.what, words.beyondReach(lengths[0] ?? "", lengths[1] ?? "")];
  }
  const reach = words.longestOf(
    formatLength(trial.longestRunM, units, "drop"),
    formatLength(dropReachM, units, "drop"),
  );
  return [
    words.to(plant.rowOf("terminal", terminalId).name),
    costWords(trial.costChange, trial.runChangeM, units),
    reach,
    ...[trial.to, ...trial.from].map((one) => fillWords(plant, one)),
    spareWords(trial.to.spareAfter, plant.settings().sparePortCount),
    lightWords(trial.lightAfter, trial.lightBefore),
  ];
}

/** Clauses as they are said: one after the other, a whole sentence by itself. */
export function sentence(clauses: readonly string[]): string {
  return clauses.join("; ").replaceAll(".; ", ". ");
}

function costWords(costChange: number, runChangeM: number, units: UnitSystem): string {
  const length = formatLength(Math.abs(runChangeM), units, "height");
  const run = runChangeM < 0 ? words.shorter(length) : words.longer(length);
  const money = moneyText(Math.abs(costChange));
  if (money === "0.00") return `${run}, ${words.costSame}`;
  return `${run}, ${costChange < 0 ? words.costLess(money) : words.costMore(money)}`;
}

function fillWords(plant: Plant, { terminalId, before, after, total }: FillChange): string {
  return words.fillOf(plant.rowOf("terminal", terminalId).name, before, after, total);
}

function spareWords(spare: number, wanted: number): string {
  return spare < wanted ? words.underSpare(spare, wanted) : words.spareLeft(spare);
}

function lightWords(after: LeastLight, before: LeastLight): string {
  if (!after) return words.noLight;
  if (after.overloadDb < 0) return words.overload(formatLossDb(-after.overloadDb));
  const now = before ? words.lightBefore(formatLossDb(before.marginDb)) : "";
  return `${words.lightOf(formatLossDb(after.marginDb), after.way)}${now}`;
}

/** How far a terminal is from what is in the hand, or why it cannot take it: what a line of the list tells while one carries. */
export function awayWords(
  plant: Plant,
  terminalId: string,
  dropIds: readonly string[],
  units: UnitSystem,
): { readonly isBarred: boolean; readonly told: string } {
  const coming = dropIds.map((id) => plant.rowOf("drop", id)).filter((one) => one.terminalId !== terminalId);
  if (coming.length === 0) return { isBarred: true, told: words.isThere };
  const runM = Math.max(...coming.map((one) => runToM(plant, one.livingUnitId, terminalId)));
  const length = formatLength(runM, units, "drop");
  if (runM > plant.settings().dropReachM) return { isBarred: true, told: words.tooFar(length) };
  const { spare } = portCounts(plant, terminalId);
  if (spare < coming.length) return { isBarred: true, told: words.noPort(spare, coming.length) };
  return { isBarred: false, told: words.away(length) };
}
