import { runCommand } from "../../app/edits.ts";
import { handOver } from "../../app/handOver.ts";
import { openRouteOf, type Session, showFault, tell } from "../../app/session.ts";
import { packetWords } from "./words.ts";

/** What a crew is given. */
export type Wish = {
  readonly crew: string;
  /** Who gives it. */
  readonly by: string;
  readonly terminalIds: readonly string[];
  readonly wavelengthsNm: readonly number[];
};

/** Gives a crew a packet and hands its page to the person as a download; true where it was given. */
export async function givePacket(session: Session, { crew, by, terminalIds, wavelengthsNm }: Wish): Promise<boolean> {
  const packetId = `packet-${crypto.randomUUID()}`;
  const input = { packetId, crew, terminalIds, wavelengthsNm, by, atIso: new Date().toISOString() };
  if (!(await runCommand(session, "packet.give", input))) return false;
  await writePacket(session, packetId);
  return true;
}

/** Hands the page of a packet to the person as a download. */
export async function writePacket(session: Session, packetId: string): Promise<void> {
  const { routeId } = openRouteOf(session);
  const written = await session.host.call("packet.write", { routeId, packetId });
  if (!written.ok) return showFault(session, written.fault);
  const { fileName, html } = written.value;
  handOver(fileName, new Blob([html], { type: "text/html" }));
  tell(session, packetWords.saved(fileName));
}
