import { compareNatural } from "../../core/layout/order.ts";
import { tubeOf } from "../../core/plant/fiberView.ts";
import { type HubLeg, hubLegs } from "../../core/plant/hubLegs.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { refKey } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { ColourChip } from "../panels/ColourChip.tsx";
import { RefButton } from "../panels/RefButton.tsx";
import { balanceWords as words } from "./words.ts";

/** Every hub output: its splitter's legs a cell each, and what each leg lights. */
export function HubOutputs({ open }: { readonly open: OpenRoute }) {
  const { plant, route } = open;
  const ids = [...route.feed.keys()].sort(compareNatural);
  return (
    <div className="balance-list">
      {ids.length === 0 && <p className="empty">{words.noFeed}</p>}
      {ids.map((id) => (
        <Output key={id} plant={plant} feedId={id} />
      ))}
    </div>
  );
}

function Output({ plant, feedId }: { readonly plant: Plant; readonly feedId: string }) {
  const { name, hubSplitCount, opticalClassId } = plant.rowOf("feed", feedId);
  const { system, name: className } = plant.rowOf("opticalClass", opticalClassId);
  const legs = hubLegs(plant, feedId);
  const sum = (of: (leg: HubLeg) => number) => legs.reduce((total, one) => total + of(one), 0);
  const title = words.hubOutput(name, hubSplitCount, `${system} ${className}`);
  const all = Array.from({ length: Math.max(hubSplitCount, legs.length) }, (_, index) => index + 1);
  return (
    <section aria-label={title}>
      <h3>
        {title}{" "}
        <span className="quiet">
          {words.legsLit(legs.length, hubSplitCount)};{" "}
          {words.unitsServed(
            sum((one) => one.usedCount),
            sum((one) => one.portCount),
          )}
        </span>
      </h3>
      <ol className="leg-list">
        {all.map((number) => (
          <LegLine key={number} plant={plant} number={number} leg={legs.find((one) => one.leg === number)} />
        ))}
      </ol>
    </section>
  );
}

type LegProps = { readonly plant: Plant; readonly number: number; readonly leg: HubLeg | undefined };

function LegLine({ plant, number, leg }: LegProps) {
  if (!leg)
    return (
      <li>
        <span className="port-cell is-growth">{number}</span>
        <span className="quiet">{words.legSpare}</span>
      </li>
    );
  const { tube, place } = tubeOf(plant, leg.cableId, leg.fiber);
  return (
    <li>
      <span className="port-cell is-used">{number}</span>
      <span>
        {plant.rowOf("cable", leg.cableId).name} <ColourChip kind="tube" position={tube} />
        <ColourChip kind="fiber" position={place} />
      </span>
      <span>
        {leg.terminalIds.map((id) => (
          <RefButton key={id} to={refKey("terminal", id)}>
            {plant.rowOf("terminal", id).name}
          </RefButton>
        ))}{" "}
        <span className="quiet">{words.unitsServed(leg.usedCount, leg.portCount)}</span>
      </span>
    </li>
  );
}
