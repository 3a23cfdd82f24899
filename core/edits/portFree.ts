import { fail, ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { Terminal } from "../model/tables.ts";
import { openPlant, type Plant } from "../plant/plant.ts";
import { portCounts, portsOf } from "../plant/terminalView.ts";
import { missing } from "./missing.ts";
import { unitTag } from "./tags.ts";

/**
 * The terminal whose port a drop may take.
 *
 * @param port    from 1
 * @param dropId  the drop that would take it; its own port counts as free
 * @returns a fault where the face has no such port, another drop holds it, or all that is free there is reserved
 */
export function terminalWithPort(route: Route, terminalId: string, port: number, dropId: string): Result<Terminal> {
  const terminal = route.terminal.get(terminalId);
  if (!terminal) return missing("terminal", terminalId);
  const plant = openPlant(route);
  const ports = portsOf(plant, terminalId);
  const place = ports[port - 1];
  if (!place)
    return fail(
      "no-port",
      `Terminal ${terminal.name} has ${ports.length} ports.`,
      `${terminalId}, port ${port}`,
      "Choose one of its ports or a larger terminal.",
    );
  const holder = place.dropIds.find((one) => one !== dropId);
  if (holder === undefined)
    return isTheLastReserved(plant, dropId, terminal) ? reservedFault(terminal, port) : ok(terminal);
  const address = unitTag(route, route.drop.get(holder)?.livingUnitId ?? holder);
  return fail(
    "port-taken",
    `Port ${port} of terminal ${terminal.name} serves ${address}.`,
    `${terminalId}, port ${port}`,
    "Choose a free port, or move that drop first.",
  );
}

/** Whether every free port of a terminal is reserved and the drop does not have one there already. */
function isTheLastReserved(plant: Plant, dropId: string, { id, reservedPortCount }: Terminal): boolean {
  const { spare } = portCounts(plant, id);
  return reservedPortCount > 0 && spare === 0 && plant.row("drop", dropId)?.terminalId !== id;
}

function reservedFault({ id, name, reservedPortCount, reservedFor }: Terminal, port: number): Result<Terminal> {
  const count = reservedPortCount === 1 ? "The last free port" : `The last ${reservedPortCount} free ports`;
  return fail(
    "port-reserved",
    `${count} of terminal ${name} ${reservedPortCount === 1 ? "is" : "are"} reserved${reservedFor === "" ? "" : ` for ${reservedFor}`}.`,
    `${id}, port ${port}`,
    "Choose another terminal, or reserve fewer ports there first.",
  );
}
