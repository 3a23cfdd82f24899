import { colourAt } from "../../core/fiber/colourCode.ts";
import { cablesFromHub } from "../../core/layout/cableOrder.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { type TubeFiber, type TubeUse, tubesOfCable } from "../../core/plant/tubeUse.ts";
import { formatStation } from "../../core/units/station.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { refKey } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { ColourChip } from "../panels/ColourChip.tsx";
import { RefButton } from "../panels/RefButton.tsx";
import { fiberStateWords, balanceWords as words } from "./words.ts";

/** Every cable tube by tube: its fibers a cell each, and which terminal opens it down the cable. */
export function FiberTubes({ open }: { readonly open: OpenRoute }) {
  const { plant } = open;
  return (
    <div className="balance-list">
      <ul className="balance-key" aria-label={words.key}>
        {(["terminal", "lateral", "reserved", "dead", "kept", "free"] as const).map((state) => (
          <li key={state}>
            <i className={`fiber-cell is-${state}`} aria-hidden="true" />
            {fiberStateWords[state]}
          </li>
        ))}
      </ul>
      {cablesFromHub(plant).map((cableId) => (
        <CableTubes key={cableId} plant={plant} cableId={cableId} units={unitsOf(open)} />
      ))}
    </div>
  );
}

type CableProps = { readonly plant: Plant; readonly cableId: string; readonly units: UnitSystem };

function CableTubes({ plant, cableId, units }: CableProps) {
  const { name, cableTypeId } = plant.rowOf("cable", cableId);
  const type = plant.rowOf("cableType", cableTypeId);
  const tubes = tubesOfCable(plant, cableId);
  const used = tubes.flatMap((one) => one.fibers).filter((one) => one.useIds.length > 0).length;
  return (
    <section aria-label={words.cable(name, type.name)}>
      <h3>
        {words.cable(name, type.name)} <span className="quiet">{words.fibersOf(used, type.fiberCount)}</span>
      </h3>
      <ul className="tube-list">
        {tubes.map((tube) => (
          <TubeLine key={tube.tube} tube={tube} units={units} />
        ))}
      </ul>
    </section>
  );
}

function TubeLine({ tube, units }: { readonly tube: TubeUse; readonly units: UnitSystem }) {
  return (
    <li>
      <span className="tube-name">
        <ColourChip kind="tube" position={tube.tube} />
        <span>{colourAt(tube.tube).name}</span>
      </span>
      <ul className="fiber-cells">
        {tube.fibers.map((fiber) => (
          <FiberCell key={fiber.fiber} fiber={fiber} />
        ))}
      </ul>
      <span className="tube-openings">
        {tube.openings.length === 0 && <span className="quiet">{words.notOpened}</span>}
        {tube.openings.map(({ table, id, name, stationM, places }) => (
          <span key={id}>
            <RefButton to={refKey(table, id)}>{name}</RefButton>{" "}
            <span className="quiet">
              {formatStation(stationM, units)}, {places.map((one) => colourAt(one).abbreviation).join(" ")}
            </span>
          </span>
        ))}
      </span>
    </li>
  );
}

function FiberCell({ fiber: { fiber, place, state } }: { readonly fiber: TubeFiber }) {
  const { name, abbreviation } = colourAt(place);
  const told = `Fiber ${fiber}, ${name}: ${fiberStateWords[state]}`;
  return (
    <li className={`fiber-cell is-${state}`} title={told}>
      <i className={`swatch swatch-${abbreviation}`} aria-hidden="true" />
      <span aria-hidden="true">{abbreviation}</span>
      <span className="only-heard">{told}</span>
    </li>
  );
}
