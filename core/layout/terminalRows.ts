import type { Slack, Splitter, Terminal, TerminalModel } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";

/**
 * The splitters inside a terminal, one after the other over its ports.
 *
 * @param legCount  legs of each splitter of the model
 */
export function splitterRows(terminalId: string, model: TerminalModel, legCount: number): Splitter[] {
  return Array.from({ length: model.splitterCount }, (_, index) => ({
    id: `${terminalId}-splitter-${index + 1}`,
    terminalId,
    splitterTypeId: model.splitterTypeId,
    position: index + 1,
    firstPort: index * legCount + 1,
  }));
}

/** The coil that waits at a terminal for its opening. */
function accessCoil(terminal: Terminal, storedM: number): Slack {
  const { id, cableId, spanId, offsetM } = terminal;
  return { id: `${id}-coil`, cableId, spanId, offsetM, storedM, kind: "access", terminalId: id };
}

/** What comes with a terminal when it is hung. */
export function terminalParts(
  plant: Plant,
  terminal: Terminal,
): { readonly splitters: Splitter[]; readonly coil: Slack | null } {
  const model = plant.rowOf("terminalModel", terminal.terminalModelId);
  const { legCount } = plant.rowOf("splitterType", model.splitterTypeId);
  const storedM = plant.settings().accessSlackM;
  return {
    splitters: splitterRows(terminal.id, model, legCount),
    coil: storedM > 0 ? accessCoil(terminal, storedM) : null,
  };
}
