import { fail, ok, type Result } from "../../core/model/result.ts";
import { drawnState } from "./drawnState.ts";
import type { RunJob } from "./jobs.ts";
import { packetPage } from "./packetPage.ts";
import type { Session } from "./session.ts";

/** A packet's page as one file, and a name for it. Faults: no-such-packet. */
export async function writePacket(
  session: Session,
  runJob: RunJob,
  packetId: string,
): Promise<Result<{ readonly fileName: string; readonly html: string }>> {
  const packet = session.route().packet.get(packetId);
  if (!packet)
    return fail(
      "no-such-packet",
      "No such packet was given from this route.",
      packetId,
      "Give the crew a packet first.",
    );
  const state = drawnState(session, null);
  if (!state.ok) return state;
  const { author: by, nowIso } = session.stamp;
  const takes = { state: state.value, packet, by, atIso: nowIso() };
  const sheet = await runJob("packet", takes, () => {}, new AbortController().signal);
  const fileName = `${nameOf(sheet.routeName)}-packet-${packet.number}-${nameOf(packet.crew)}.html`;
  return ok({ fileName, html: packetPage(sheet) });
}

/** Words as part of a file's name that every system takes. */
function nameOf(text: string): string {
  const plain = text.toLowerCase().replace(/[^a-z0-9]+/g, "-");
  return plain.replace(/^-|-$/g, "") || "route";
}
