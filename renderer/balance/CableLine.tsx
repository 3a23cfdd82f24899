import { terminalBalance } from "../../core/plant/balance.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { GridPart } from "../tables/GridPart.tsx";
import type { BalanceRow } from "./balanceRows.ts";
import { balanceWords as words } from "./words.ts";

type Props = {
  readonly plant: Plant;
  readonly row: Extract<BalanceRow, { kind: "cable" }>;
  readonly index: number;
  readonly topPx: number;
  /** Changes with every edit, so that the sums are made anew. */
  readonly version: object;
};

/** The heading of a cable over its terminals, with their sums. */
export function CableLine({ plant, row, index, topPx }: Props) {
  const { name, cableTypeId } = plant.rowOf("cable", row.cableId);
  const balances = row.terminalIds.map((id) => terminalBalance(plant, id));
  const sum = (state: "used" | "reserved" | "growth") => balances.reduce((total, one) => total + one[state], 0);
  const portCount = balances.reduce((total, one) => total + one.ports.length, 0);
  return (
    <GridPart
      role="row"
      aria-rowindex={index + 2}
      className="ports-row ports-cable"
      style={{ transform: `translateY(${topPx}px)` }}
    >
      <GridPart role="gridcell" aria-colspan={9}>
        <b>{words.cable(name, plant.rowOf("cableType", cableTypeId).name)}</b>
        <span>{words.cableSums(sum("used"), portCount, sum("reserved"), sum("growth"))}</span>
      </GridPart>
    </GridPart>
  );
}
