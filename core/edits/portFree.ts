import { fail, ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { Terminal } from "../model/tables.ts";
import { openPlant } from "../plant/plant.ts";
import { portsOf } from "../plant/terminalView.ts";
import { missing } from "./missing.ts";
import { unitTag } from "./tags.ts";

/**
 * The terminal whose port a drop may take.
 *
 * @param port    from 1
 * @param dropId  the drop that would take it; its own port counts as free
 * @returns a fault where the face has no such port or another drop holds it
 */
export function terminalWithPort(route: Route, terminalId: string, port: number, dropId: string): Result<Terminal> {
  const terminal = route.terminal.get(terminalId);
  if (!terminal) return missing("terminal", terminalId);
  const ports = portsOf(openPlant(route), terminalId);
  const place = ports[port - 1];
  if (!place)
    return fail(
      "no-port",
      `Terminal ${terminal.name} has ${ports.length} ports.`,
      `${terminalId}, port ${port}`,
      "Choose one of its ports or a larger terminal.",
    );
  const holder = place.dropIds.find((one) => one !== dropId);
  if (holder === undefined) return ok(terminal);
  const address = unitTag(route, route.drop.get(holder)?.livingUnitId ?? holder);
  return fail(
    "port-taken",
    `Port ${port} of terminal ${terminal.name} serves ${address}.`,
    `${terminalId}, port ${port}`,
    "Choose a free port, or move that drop first.",
  );
}
