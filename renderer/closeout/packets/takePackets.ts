import { packetFormat } from "../../../core/closeout/packet/packetFormat.ts";
import type { Reply } from "../../../core/contract/contract.ts";
import type { Fault } from "../../../core/model/result.ts";
import { openRouteOf, type Session, showFault } from "../../app/session.ts";

/** What came of a packet that was brought back. */
export type Brought = Reply<"packet.take"> & {
  readonly id: string;
  readonly routeId: string;
  readonly fileName: string;
};

/** Takes in the files crews bring, one after the other; the edits themselves come as events. The first that is refused is shown. */
export async function takePackets(session: Session, files: readonly File[]): Promise<void> {
  const { routeId } = openRouteOf(session);
  let refused: Fault | null = null;
  for (const file of files) {
    const taken = await session.host.call("packet.take", { routeId, fileName: file.name, text: await file.text() });
    if (!taken.ok) {
      refused ??= taken.fault;
      continue;
    }
    const brought = { ...taken.value, id: crypto.randomUUID(), routeId, fileName: file.name };
    session.view.setState((state) => ({ packetsBrought: [brought, ...state.packetsBrought] }));
  }
  if (refused) showFault(session, refused);
}

/** Whether a file begins as the pages of packets write theirs. */
export async function isPacketFile(file: File): Promise<boolean> {
  return (await file.slice(0, 100).text()).includes(packetFormat);
}
