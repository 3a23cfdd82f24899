import { dropRunM } from "../../../core/plant/dropView.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { refKey } from "../../app/ref.ts";
import { Facts } from "../Facts.tsx";
import { RefButton } from "../RefButton.tsx";
import { cutWords, titleOf } from "../words.ts";
import type { Told } from "./told.ts";

const kindWords = { home: "home", business: "business", lot: "lot without a building" } as const;

/** A living unit: what it is and which port serves it; the other units of its building. */
export function UnitTold({ plant, id, units }: Told) {
  const unit = plant.rowOf("livingUnit", id);
  const drops = plant.where("drop", "livingUnitId", id).map((one) => plant.rowOf("drop", one));
  const others =
    unit.building === "" ? [] : plant.where("livingUnit", "building", unit.building).filter((one) => one !== id);
  return (
    <>
      <Facts
        facts={[
          ["Kind", kindWords[unit.kind]],
          ["Building", unit.building],
          [
            "Drop attaches at",
            unit.attachHeightM === null ? "height not known" : formatLength(unit.attachHeightM, units, "height"),
          ],
          ["Note", unit.note],
        ]}
      />
      <h3>Served by</h3>
      {drops.length === 0 && <p className="quiet">No port yet.</p>}
      {drops.map((drop) => (
        <Facts
          key={drop.id}
          facts={[
            [
              "Terminal",
              <RefButton key="terminal" to={refKey("terminal", drop.terminalId)}>
                {plant.rowOf("terminal", drop.terminalId).name}
              </RefButton>,
            ],
            ["Port", `${drop.port}${drop.pinned ? ", chosen by a person" : ""}`],
            ["Distance", formatLength(dropRunM(plant, drop.id), units, "drop")],
            ["Drop to cut", cutWords(plant, drop.id, units)],
          ]}
        />
      ))}
      {others.length > 0 && <h3>In the same building</h3>}
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
