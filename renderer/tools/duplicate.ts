import { freshIds } from "../../core/model/freshId.ts";
import { runCommand } from "../app/edits.ts";
import { refKey } from "../app/ref.ts";
import { openRouteOf, type Session } from "../app/session.ts";
import { oneTerminal } from "./oneTerminal.ts";

/** Hangs another terminal of the same model at the other pole of the chosen one's span, and chooses it. */
export async function duplicateTerminal(session: Session): Promise<void> {
  const chosen = oneTerminal(session);
  if (chosen === null) return;
  const { plant, route } = openRouteOf(session);
  const { spanId, offsetM, terminalModelId } = plant.rowOf("terminal", chosen);
  const span = plant.rowOf("span", spanId);
  const poleId = offsetM <= span.lengthM / 2 ? span.toPoleId : span.fromPoleId;
  const terminalId = freshIds(route, "terminal")();
  const wanted = { terminalId, spanId, poleId, terminalModelId };
  await runCommand(session, "terminal.hang", wanted, { view: { selection: [refKey("terminal", terminalId)] } });
}
