import { type FormEvent, useState } from "react";
import { splittersOf } from "../../core/plant/terminalView.ts";
import { working } from "../app/actions/action.ts";
import { runCommand } from "../app/edits.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { tell } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import { fiberOf, givenFiber } from "./givenFiber.ts";
import { balanceWords as words } from "./words.ts";

/** Which fiber feeds each splitter of a terminal, to be typed anew. The fiber of a tap nearer the hub makes a chain. */
export function FiberForm({ open, terminalId }: { readonly open: OpenRoute; readonly terminalId: string }) {
  return splittersOf(open.plant, terminalId).map((id) => {
    const fiber = fiberOf(open.plant, id);
    return <SplitterFiber key={`${id} ${fiber ?? ""}`} open={open} splitterId={id} fiber={fiber} />;
  });
}

type Props = { readonly open: OpenRoute; readonly splitterId: string; readonly fiber: number | null };

function SplitterFiber({ open, splitterId, fiber }: Props) {
  const session = useSession();
  const [typed, setTyped] = useState(String(fiber ?? ""));
  const give = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    const reason = working(session);
    if (reason !== null) return tell(session, reason);
    if (Number(typed) === fiber) return tell(session, words.fiberAlready);
    await runCommand(session, "fiber.give", givenFiber(open.plant, splitterId, Number(typed)));
  };
  return (
    <form onSubmit={(event) => void give(event)}>
      <label title={words.fiberHelp}>
        {words.fiberTo(open.plant.rowOf("splitter", splitterId).position)}
        <input type="number" min={1} value={typed} onChange={(event) => setTyped(event.target.value)} />
      </label>
    </form>
  );
}
