import { dropRunM } from "../../../core/plant/dropView.ts";
import { tubeOf, usesOfTerminal } from "../../../core/plant/fiberView.ts";
import { portCounts, portsOf, terminalPlace } from "../../../core/plant/terminalView.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { refKey } from "../../app/ref.ts";
import { Figure } from "../../explain/Figure.tsx";
import { ColourChip } from "../ColourChip.tsx";
import { Facts } from "../Facts.tsx";
import { PortFace } from "../PortFace.tsx";
import { RefButton } from "../RefButton.tsx";
import { placeWords } from "../words.ts";
import type { Told } from "./told.ts";
import { terminalWords as words } from "./words.ts";

/** A terminal: where it hangs, what feeds it, whom its ports serve. */
export function TerminalTold({ plant, id, units }: Told) {
  const terminal = plant.rowOf("terminal", id);
  const place = terminalPlace(plant, id);
  const counts = portCounts(plant, id);
  const coilM = plant
    .where("slack", "terminalId", id)
    .reduce((sum, coil) => sum + plant.rowOf("slack", coil).storedM, 0);
  const needM = plant.settings().accessSlackM;
  return (
    <>
      <p className="place">{placeWords(plant, id, units)}</p>
      <Facts
        facts={[
          [
            words.cable,
            <RefButton key="cable" to={refKey("cable", terminal.cableId)}>
              {plant.rowOf("cable", terminal.cableId).name}
            </RefButton>,
          ],
          [
            words.station,
            place.stationM === null ? (
              words.notOnCable
            ) : (
              <Figure key="station" of={{ figure: "terminalStation", id }}>
                {formatLength(place.stationM, units, "span")}
              </Figure>
            ),
          ],
          [words.ports, words.portCounts(counts)],
          [words.reservedFor, terminal.reservedFor],
          [words.coil, words.coilAndNeed(formatLength(coilM, units, "span"), formatLength(needM, units, "span"))],
          [words.placed, terminal.pinned ? words.byPerson : null],
          [words.why, terminal.reason],
        ]}
      />
      <Fibers plant={plant} id={id} units={units} />
      <h3>{words.face}</h3>
      <PortFace plant={plant} terminalId={id} />
      <Ports plant={plant} id={id} units={units} />
    </>
  );
}

function Fibers({ plant, id }: Told) {
  const uses = usesOfTerminal(plant, id).map((useId) => plant.rowOf("fiberUse", useId));
  return (
    <>
      <h3>{words.fibers}</h3>
      {uses.length === 0 && <p className="quiet">{words.noFiber}</p>}
      <ul className="lines">
        {uses.map((use) => {
          const { tube, place } = tubeOf(plant, use.cableId, use.fiber);
          const splitter = use.splitterId === null ? undefined : plant.row("splitter", use.splitterId);
          return (
            <li key={use.id}>
              <span>
                {words.tube} <ColourChip kind="tube" position={tube} /> {words.fiber}{" "}
                <ColourChip kind="fiber" position={place} />
              </span>
              <span className="quiet">{splitter ? words.splitter(splitter.position) : words.noSplitter}</span>
            </li>
          );
        })}
      </ul>
    </>
  );
}

function Ports({ plant, id, units }: Told) {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col" className="figure">
            {words.port}
          </th>
          <th scope="col">{words.unit}</th>
          <th scope="col" className="figure">
            {words.drop}
          </th>
        </tr>
      </thead>
      <tbody>
        {portsOf(plant, id).map(({ port, dropIds, isReserved }) => (
          <tr key={port}>
            <td className="figure">{port}</td>
            <td>
              {dropIds.length === 0 && <span className="quiet">{isReserved ? words.reserved : words.spare}</span>}
              {dropIds.map((dropId) => {
                const unit = plant.rowOf("livingUnit", plant.rowOf("drop", dropId).livingUnitId);
                return (
                  <RefButton key={dropId} to={refKey("livingUnit", unit.id)}>
                    {unit.address}
                  </RefButton>
                );
              })}
            </td>
            <td className="figure">
              {dropIds.map((dropId) => (
                <Figure key={dropId} of={{ figure: "dropRun", id: dropId }}>
                  {formatLength(dropRunM(plant, dropId), units, "drop")}
                </Figure>
              ))}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
