import { dropRunM } from "../../../core/plant/dropView.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { portLight } from "../../../core/plant/portLight.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { formatLossDb } from "../../../core/units/formatLossDb.ts";
import { refKey } from "../../app/ref.ts";
import { Figure } from "../../explain/Figure.tsx";
import { type Fact, Facts } from "../Facts.tsx";
import { RefButton } from "../RefButton.tsx";
import { cutWords, titleOf } from "../words.ts";
import type { Told } from "./told.ts";
import { unitWords as words } from "./words.ts";

/** A living unit: what it is and which port serves it; the other units of its building. */
export function UnitTold({ plant, id, units }: Told) {
  const unit = plant.rowOf("livingUnit", id);
  const drops = plant.where("drop", "livingUnitId", id).map((one) => plant.rowOf("drop", one));
  const others =
    unit.building === "" ? [] : plant.where("livingUnit", "building", unit.building).filter((one) => one !== id);
  return (
    <>
      <h3>{words.servedBy}</h3>
      {drops.length === 0 && <p className="quiet">{words.noPort(plant.row("unservedUnit", id)?.reason ?? "")}</p>}
      {drops.map((drop) => (
        <Facts
          key={drop.id}
          facts={[
            [
              words.terminal,
              <RefButton key="terminal" to={refKey("terminal", drop.terminalId)}>
                {plant.rowOf("terminal", drop.terminalId).name}
              </RefButton>,
            ],
            [words.port, words.portOf(drop.port, drop.pinned)],
            [
              words.distance,
              <Figure key="run" of={{ figure: "dropRun", id: drop.id }}>
                {formatLength(dropRunM(plant, drop.id), units, "drop")}
              </Figure>,
            ],
            [
              words.cut,
              <Figure key="cut" of={{ figure: "dropCut", id: drop.id }}>
                {cutWords(plant, drop.id, units)}
              </Figure>,
            ],
            ...lightFacts(plant, drop.id),
          ]}
        />
      ))}
      {others.length > 0 && <h3>{words.sameBuilding}</h3>}
      <ul className="lines">
        {others.map((one) => (
          <li key={one}>
            <RefButton to={refKey("livingUnit", one)}>{titleOf(plant, refKey("livingUnit", one))}</RefButton>
          </li>
        ))}
      </ul>
    </>
  );
}

function lightFacts(plant: Plant, dropId: string): readonly Fact[] {
  const light = portLight(plant, dropId);
  if (light.kind === "unknown") return [[words.light, light.why]];
  return [
    [
      words.lossUp,
      <Figure key="up" of={{ figure: "lightUp", id: dropId }}>
        {formatLossDb(light.upDb)}
      </Figure>,
    ],
    [
      words.lossDown,
      <Figure key="down" of={{ figure: "lightDown", id: dropId }}>
        {formatLossDb(light.downDb)}
      </Figure>,
    ],
  ];
}
