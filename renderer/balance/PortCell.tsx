import type { BalancePort } from "../../core/plant/balance.ts";
import type { Plant } from "../../core/plant/plant.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { GridPart } from "../tables/GridPart.tsx";
import { portWords } from "./tell.ts";
import { balanceWords as words } from "./words.ts";

type Props = {
  readonly plant: Plant;
  readonly terminalId: string;
  readonly port: BalancePort;
  readonly units: UnitSystem;
  readonly isActive: boolean;
  readonly isMarked: boolean;
  /** True where what is in the hand would take it. */
  readonly isComing: boolean;
};

/** One real port: filled, hatched, dashed or hollow by what it is for, its number inside. */
export function PortCell({ plant, terminalId, port, units, isActive, isMarked, isComing }: Props) {
  const { port: number, state } = port;
  const classes = ["port-cell", `is-${state}`];
  if (isActive) classes.push("is-active");
  if (isMarked) classes.push("is-marked");
  if (isComing) classes.push("is-coming");
  const told = `${words.port(number)}: ${portWords(plant, { terminalId, port: number }, units)}`;
  return (
    <GridPart
      role="gridcell"
      id={`port-${terminalId}-${number}`}
      data-port={number}
      className={classes.join(" ")}
      aria-label={told}
      aria-selected={isMarked}
      title={told}
    >
      {String(number)}
    </GridPart>
  );
}
