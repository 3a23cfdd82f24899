import { type TerminalBalance, terminalBalance } from "../../core/plant/balance.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { terminalPlace } from "../../core/plant/terminalView.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import { formatStation } from "../../core/units/station.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { ColourChip } from "../panels/ColourChip.tsx";
import { GridPart } from "../tables/GridPart.tsx";
import type { BalanceHand } from "./balanceView.ts";
import { PortCell } from "./PortCell.tsx";
import { awayWords } from "./tell.ts";
import { balanceWords as words } from "./words.ts";

type Props = {
  readonly plant: Plant;
  readonly terminalId: string;
  readonly index: number;
  readonly topPx: number;
  readonly units: UnitSystem;
  /** Port under the hand; 0 where it is in another row. */
  readonly activePort: number;
  readonly marked: readonly string[];
  readonly hand: BalanceHand | null;
};

/** One terminal: its ports a cell each, their counts, the longest drop, the tube it opens. */
export function TerminalLine({ plant, terminalId, index, topPx, units, activePort, marked, hand }: Props) {
  const { name } = plant.rowOf("terminal", terminalId);
  const place = terminalPlace(plant, terminalId);
  const balance = terminalBalance(plant, terminalId);
  const target = hand?.target?.terminalId === terminalId ? hand.target : null;
  const coming = target?.trial.kind === "possible" ? new Set(target.trial.drops.map((one) => one.port)) : null;
  const away = hand && awayWords(plant, terminalId, hand.dropIds, units);
  const classes = ["ports-row"];
  if (away?.isBarred) classes.push("is-barred");
  if (activePort > 0) classes.push("is-active");
  if (target) classes.push(coming ? "is-target" : "is-refused");
  return (
    <GridPart
      role="row"
      aria-rowindex={index + 2}
      data-terminal={terminalId}
      className={classes.join(" ")}
      style={{ transform: `translateY(${topPx}px)` }}
    >
      <GridPart role="rowheader">
        <b>{name}</b> <span className="quiet">{words.atPole(plant.rowOf("pole", place.poleId).tag)}</span>
      </GridPart>
      <GridPart role="gridcell" className="figure">
        {place.stationM === null ? "" : formatStation(place.stationM, units)}
      </GridPart>
      <GridPart role="none" className="ports-cells">
        {balance.ports.map((port) => (
          <PortCell
            key={port.port}
            plant={plant}
            terminalId={terminalId}
            port={port}
            units={units}
            isActive={port.port === activePort}
            isMarked={port.dropIds.length > 0 && port.dropIds.every((id) => marked.includes(id))}
            isComing={coming?.has(port.port) ?? false}
          />
        ))}
      </GridPart>
      <Counts balance={balance} />
      <GridPart role="gridcell" className="figure">
        {balance.longestRunM === null ? "" : formatLength(balance.longestRunM, units, "drop")}
      </GridPart>
      <GridPart role="gridcell" className="ports-tubes">
        {away?.told}
        {!away &&
          balance.tubes.map(({ tube, places }) => (
            <span key={tube}>
              <ColourChip kind="tube" position={tube} />
              {places.map((one) => (
                <ColourChip key={one} kind="fiber" position={one} />
              ))}
            </span>
          ))}
      </GridPart>
    </GridPart>
  );
}

function Counts({ balance }: { readonly balance: TerminalBalance }) {
  return (["used", "reserved", "kept", "growth"] as const).map((state) => (
    <GridPart key={state} role="gridcell" className={balance[state] === 0 ? "figure quiet" : "figure"}>
      {String(balance[state])}
    </GridPart>
  ));
}
