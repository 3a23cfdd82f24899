import { showEdit } from "../app/edits.ts";
import { handOver } from "../app/handOver.ts";
import { openRouteOf, type Session, showFault, tell } from "../app/session.ts";
import { words } from "./words.ts";

/** Hands the route's standards and catalogues to the person as a file. */
export async function exportTemplate(session: Session): Promise<void> {
  const { routeId } = openRouteOf(session);
  const reply = await session.host.call("template.export", { routeId });
  if (!reply.ok) return showFault(session, reply.fault);
  handOver(reply.value.fileName, new Blob([reply.value.text], { type: "application/json" }));
  tell(session, words.saved(reply.value.fileName));
}

/** Takes a template a person chose, as one edit. */
export async function importTemplate(session: Session, file: File): Promise<void> {
  const { routeId } = openRouteOf(session);
  const reply = await session.host.call("template.import", { routeId, fileName: file.name, text: await file.text() });
  if (!reply.ok) return showFault(session, reply.fault);
  await showEdit(session, reply.value.edit);
  tell(session, words.taken(reply.value.newCount, reply.value.changedCount));
}
