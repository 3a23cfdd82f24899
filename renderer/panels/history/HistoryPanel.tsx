import { useEffect, useState } from "react";
import type { Reply } from "../../../core/contract/contract.ts";
import { ok } from "../../../core/model/result.ts";
import { redo, undo } from "../../app/edits.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { showFault } from "../../app/session.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { areEditsHeld } from "../../app/viewStore.ts";
import { EmptyState } from "../EmptyState.tsx";
import { EntryLine } from "./EntryLine.tsx";
import { historyWords } from "./words.ts";

const mostListed = 300;
const noSteps: Reply<"history.list"> = { done: [], undone: [] };

/** What was done and what was taken back; every line goes back or forward to it, step by step and by name. */
export function HistoryPanel({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const [list, setList] = useState<Reply<"history.list"> | null>(null);
  const isBusy = useView(areEditsHeld);
  const lookOnly = useLookOnly();
  const { routeId, history } = open;
  useEffect(() => {
    let isWanted = true;
    const read = async (): Promise<void> => {
      // every edit brings a new state of the history, and with it a new list
      const isBlank = history.undo === null && history.redo === null;
      const reply = isBlank ? ok(noSteps) : await session.host.call("history.list", { routeId, limit: mostListed });
      if (!isWanted) return;
      if (reply.ok) setList(reply.value);
      else showFault(session, reply.fault);
    };
    void read();
    return () => {
      isWanted = false;
    };
  }, [session, routeId, history]);

  const step = async (take: typeof undo, count: number): Promise<void> => {
    for (let left = count; left > 0; left -= 1) if (!(await take(session))) return;
  };
  const button = (name: string, take: typeof undo, count: number) => (
    <button
      type="button"
      className="fix"
      aria-label={name}
      disabled={isBusy || lookOnly !== null}
      title={lookOnly ?? name}
      onClick={() => void step(take, count)}
    >
      {name}
    </button>
  );
  return (
    <aside className="side history" aria-label={historyWords.title}>
      <h2>{historyWords.title}</h2>
      {list && list.undone.length > 0 && <h3>{historyWords.undone}</h3>}
      <ol className="entries">
        {[...(list?.undone ?? [])].reverse().map((one, i, all) => (
          <EntryLine key={one.seq} entry={one}>
            {button(historyWords.redoTo(all.length - i), redo, all.length - i)}
          </EntryLine>
        ))}
      </ol>
      <h3>{historyWords.done}</h3>
      {list?.done.length === 0 && <EmptyState says={historyWords.nothing} actionIds={["import"]} />}
      <ol className="entries">
        {list?.done.map((one, i) => (
          <EntryLine key={one.seq} entry={one}>
            {i > 0 && button(historyWords.undoTo(i), undo, i)}
          </EntryLine>
        ))}
      </ol>
    </aside>
  );
}
