import { useEffect, useState } from "react";
import type { HistoryEntry } from "../../../core/contract/historyMethods.ts";
import type { TableName } from "../../../core/model/tables.ts";
import { showFault } from "../../app/session.ts";
import { useOpenRoute, useSession } from "../../app/useSession.ts";
import { EntryLine } from "../history/EntryLine.tsx";
import { fieldWords } from "./words.ts";

const mostListed = 30;

/** What was done to a row, newest first; asked of the host when it is opened. */
export function RowHistory({ table, id }: { readonly table: TableName; readonly id: string }) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>{fieldWords.history}</summary>
      {isOpen && <Entries table={table} id={id} />}
    </details>
  );
}

function Entries({ table, id }: { readonly table: TableName; readonly id: string }) {
  const session = useSession();
  const open = useOpenRoute();
  const row = open?.plant.row(table, id);
  const routeId = open?.routeId;
  const [entries, setEntries] = useState<readonly HistoryEntry[] | null>(null);
  useEffect(() => {
    let isWanted = true;
    // a row that has changed is another object and has a new entry
    if (routeId === undefined || row === undefined) return;
    void session.host.call("history.ofRow", { routeId, table, id, limit: mostListed }).then((reply) => {
      if (!isWanted) return;
      if (reply.ok) setEntries(reply.value.entries);
      else showFault(session, reply.fault);
    });
    return () => {
      isWanted = false;
    };
  }, [session, routeId, table, id, row]);
  if (entries === null) return null;
  if (entries.length === 0) return <p className="quiet">{fieldWords.neverTouched}</p>;
  return (
    <ol className="entries">
      {entries.map((one) => (
        <EntryLine key={one.seq} entry={one} />
      ))}
    </ol>
  );
}
