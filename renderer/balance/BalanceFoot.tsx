import { type FormEvent, useState } from "react";
import { working } from "../app/actions/action.ts";
import { runCommand } from "../app/edits.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { tell, unitsOf } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { EvenForm } from "./EvenForm.tsx";
import { FiberForm } from "./FiberForm.tsx";
import { MoveCard } from "./MoveCard.tsx";
import { portWords } from "./tell.ts";
import { balanceWords as words } from "./words.ts";

/** Below the list: what is in the hand and what the move would come to, else the port one is at and what is reserved there. */
export function BalanceFoot({ open }: { readonly open: OpenRoute }) {
  const { spot, hand, evenBy } = useView((state) => state.balance);
  if (hand) return <MoveCard open={open} hand={hand} />;
  if (evenBy !== null) return <EvenForm open={open} longer={evenBy} />;
  const terminal = spot && open.route.terminal.get(spot.terminalId);
  if (!spot || !terminal) return <p className="balance-foot quiet">{words.hint}</p>;
  return (
    <div className="balance-foot">
      <p>
        <b>{`${terminal.name}, ${words.port(spot.port).toLowerCase()}`}</b>
        {`: ${portWords(open.plant, spot, unitsOf(open))}`}
      </p>
      <FiberForm open={open} terminalId={terminal.id} />
      <ReserveForm
        key={`${terminal.id} ${terminal.reservedPortCount} ${terminal.reservedFor}`}
        open={open}
        id={terminal.id}
      />
    </div>
  );
}

function ReserveForm({ open, id }: { readonly open: OpenRoute; readonly id: string }) {
  const session = useSession();
  const { reservedPortCount, reservedFor } = open.plant.rowOf("terminal", id);
  const [count, setCount] = useState(String(reservedPortCount));
  const [whom, setWhom] = useState(reservedFor);
  const keep = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    const reason = working(session);
    if (reason !== null) tell(session, reason);
    else
      await runCommand(session, "terminal.reserve", {
        terminalId: id,
        reservedPortCount: Number(count),
        reservedFor: whom,
      });
  };
  const isSame = Number(count) === reservedPortCount && whom === reservedFor;
  return (
    <form onSubmit={(event) => void keep(event)}>
      <label>
        {words.reservePorts}
        <input type="number" min={0} value={count} onChange={(event) => setCount(event.target.value)} />
      </label>
      <label>
        {words.reserveFor}
        <input size={16} value={whom} onChange={(event) => setWhom(event.target.value)} />
      </label>
      <button type="submit" className="fix" aria-disabled={isSame}>
        {words.reserve}
      </button>
    </form>
  );
}
