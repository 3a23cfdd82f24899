import { type TraceBrought, traceToKeep } from "../../core/closeout/traceToKeep.ts";
import { keptTraceId } from "../../core/edits/commands/traceKeep.ts";
import { runCommand } from "../app/edits.ts";
import { base64Of } from "../app/importing.ts";
import { openRouteOf, type Session, showFault, tell } from "../app/session.ts";
import type { ViewState } from "../app/viewStore.ts";
import { signedNow } from "../closeout/closeoutHand.ts";
import { traceWords } from "./words.ts";

/** Keeps reflectometer files with the route, all as one edit, and shows the first; a file that is none is told and the others are kept. */
export async function bringTraces(session: Session, files: readonly File[]): Promise<void> {
  const { routeId, route } = openRouteOf(session);
  const { by, atIso } = signedNow(session);
  if (by === "") return tell(session, traceWords.byNeeded);
  const brought = new Map<string, TraceBrought>();
  for (const file of files) {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const read = traceToKeep(
      route,
      { fileName: file.name, bytes, keptHash: "" },
      { fromEnd: null, leadM: null },
      isoOf,
    );
    if (!read.ok) {
      showFault(session, { ...read.fault, where: file.name });
      continue;
    }
    const kept = await session.host.call("kept.keep", { routeId, bytesBase64: await base64Of(file) });
    if (!kept.ok) return showFault(session, kept.fault);
    const { hash } = kept.value;
    if (!brought.has(hash)) brought.set(hash, { ...read.value, trace: { ...read.value.trace, keptHash: hash } });
  }
  const isNew = (hash: string) => !openRouteOf(session).route.trace.has(keptTraceId(hash));
  const fresh = [...brought.values()].filter((one) => isNew(one.trace.keptHash));
  const [first] = fresh;
  if (!first) {
    if (brought.size > 0) tell(session, traceWords.allThere);
    return;
  }
  const asked = { traces: fresh.map((one) => one.trace), by, atIso };
  const traceId = keptTraceId(first.trace.keptHash);
  const view = ({ traces }: ViewState) => ({ traces: { ...traces, traceId, a: null, b: null } });
  if (!(await runCommand(session, "trace.keep", asked, { view }))) return;
  tell(session, traceWords.brought(fresh.length, fresh.filter((one) => one.asks.length > 0).length));
}

function isoOf(unixS: number): string {
  return new Date(unixS * 1000).toISOString();
}
