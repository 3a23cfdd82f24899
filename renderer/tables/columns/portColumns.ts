import type { Step } from "../../../core/edits/runSteps.ts";
import { colourAt } from "../../../core/fiber/colourCode.ts";
import { freshIds } from "../../../core/model/freshId.ts";
import { dropCutM, dropRunM, dropsOfUnit } from "../../../core/plant/dropView.ts";
import { tubeOf } from "../../../core/plant/fiberView.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { feedingUseId, portLight } from "../../../core/plant/portLight.ts";
import { type PortView, portsOf } from "../../../core/plant/terminalView.ts";
import { computed, explained, told } from "./builders.ts";
import type { CellValue, Column, Explains } from "./column.ts";
import { plainMeasure, runMeasure } from "./measures.ts";
import { splitPlace } from "./place.ts";

/** Terminal by port: each port of each terminal is a row, used or spare. */
export const portColumns: readonly Column[] = [
  told("terminal", "Terminal", (plant, id) => plant.rowOf("terminal", splitPlace(id).ownerId).name, 110),
  computed("port", "Port", plainMeasure("", 0), (_, id) => splitPlace(id).number, 70),
  {
    ...told("unit", "Living unit", unitOfPort, 240),
    show: (value, { plant }) =>
      typeof value === "string" && value !== "" ? plant.rowOf("livingUnit", value).address : "",
    write: {
      read(text, { plant }) {
        const wanted = text.trim();
        if (wanted === "") return { ok: true, value: "" };
        const [only, other] = plant.where("livingUnit", "address", wanted);
        if (only === undefined) return { ok: false, what: `No living unit has the address "${wanted}".` };
        if (other !== undefined) return { ok: false, what: `Several living units have the address "${wanted}".` };
        return { ok: true, value: only };
      },
      steps: servingSteps,
      choices: (plant) =>
        [...plant.route().livingUnit.values()]
          .filter((one) => dropsOfUnit(plant, one.id).length === 0)
          .slice(0, 500)
          .map((one) => one.address),
      warn: () => null,
    },
  },
  told("state", "State", stateOfPort, 80),
  told("fiber", "Fiber", fiberOfPort, 130),
  computed("leg", "Leg", plainMeasure("", 0), (plant, id) => portOf(plant, id)?.leg ?? null, 70),
  explained(
    computed("run", "Drop", runMeasure, (plant, id) => withDrop(plant, id, dropRunM)),
    ofDrop("dropRun"),
  ),
  explained(
    computed("cut", "Drop to cut", runMeasure, (plant, id) => withDrop(plant, id, dropCutM), 120),
    ofDrop("dropCut"),
  ),
  explained(
    computed(
      "loss",
      "Loss down",
      plainMeasure("dB", 2),
      (plant, id) =>
        withDrop(plant, id, (_, dropId) => {
          const light = portLight(plant, dropId);
          return light.kind === "known" ? light.downDb : null;
        }),
      110,
    ),
    ofDrop("lightDown"),
  ),
];

function portOf(plant: Plant, id: string): PortView | undefined {
  const { ownerId, number } = splitPlace(id);
  return portsOf(plant, ownerId)[number - 1];
}

function dropOf(plant: Plant, id: string): string | null {
  return portOf(plant, id)?.dropIds[0] ?? null;
}

function stateOfPort(plant: Plant, id: string): string {
  if (dropOf(plant, id) !== null) return "used";
  return portOf(plant, id)?.isReserved ? "reserved" : "spare";
}

function withDrop<T>(plant: Plant, id: string, ask: (plant: Plant, dropId: string) => T): T | null {
  const dropId = dropOf(plant, id);
  return dropId === null ? null : ask(plant, dropId);
}

function ofDrop(figure: "dropRun" | "dropCut" | "lightDown"): Explains {
  return (plant, id) => withDrop(plant, id, (_, dropId) => ({ figure, id: dropId }));
}

function unitOfPort(plant: Plant, id: string): string {
  return withDrop(plant, id, (_, dropId) => plant.rowOf("drop", dropId).livingUnitId) ?? "";
}

function fiberOfPort(plant: Plant, id: string): string {
  const splitterId = portOf(plant, id)?.splitterId ?? null;
  const useId = splitterId === null ? null : feedingUseId(plant, splitterId);
  if (useId === null) return "";
  const { cableId, fiber } = plant.rowOf("fiberUse", useId);
  const { tube, place } = tubeOf(plant, cableId, fiber);
  return `${fiber}: ${colourAt(tube).abbreviation} ${colourAt(place).abbreviation}`;
}

/** What gives the port to a living unit, or to nobody: the drop that is there goes, the unit's own comes over or is made. */
function servingSteps(plant: Plant, id: string, value: CellValue): readonly Step[] {
  const { ownerId: terminalId, number: port } = splitPlace(id);
  const present = dropOf(plant, id);
  const gone: Step[] = present === null ? [] : [{ command: "drop.remove", input: { dropId: present } }];
  if (typeof value !== "string" || value === "") return gone;
  const [own] = dropsOfUnit(plant, value);
  if (own !== undefined) return [...gone, { command: "drop.move", input: { dropId: own, terminalId, port } }];
  const dropId = `${freshIds(plant.route(), "drop")()}-${terminalId}-${port}`;
  return [...gone, { command: "drop.add", input: { dropId, terminalId, port, livingUnitId: value } }];
}
