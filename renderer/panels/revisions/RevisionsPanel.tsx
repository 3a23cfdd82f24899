import { useEffect, useState } from "react";
import type { Reply } from "../../../core/contract/contract.ts";
import type { Revision } from "../../../core/model/tables.ts";
import { nextLetter } from "../../../core/sheets/revised/nextLetter.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { showFault } from "../../app/session.ts";
import { previewSheets } from "../../app/sheetJobs.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { areEditsHeld } from "../../app/viewStore.ts";
import { ChangeList } from "./ChangeList.tsx";
import { ApproveForm, IssueForm, VoidForm } from "./RevisionForms.tsx";
import { revisionWords } from "./words.ts";

/** The form that is open: of a new revision, or to approve or make void one there is. */
type Asked = { readonly kind: "issue" } | { readonly kind: "approve" | "void"; readonly revisionId: string } | null;

/** Revisions issued, newest first, what has changed since the last, and the way to issue, approve and make void. */
export function RevisionsPanel({ open }: { readonly open: OpenRoute }) {
  const [asked, setAsked] = useState<Asked>(null);
  const changes = useChanges(open);
  const isBusy = useView(areEditsHeld);
  const lookOnly = useLookOnly();
  const revisions = [...open.route.revision.values()].sort((a, b) => b.number - a.number);
  const [last] = revisions;
  const done = (): void => setAsked(null);
  return (
    <aside className="side revisions" aria-label={revisionWords.title}>
      <h2>{revisionWords.title}</h2>
      {asked?.kind === "issue" ? (
        <IssueForm last={last} letter={changes?.nextLetter ?? nextLetter(last?.letter)} onDone={done} />
      ) : (
        <button
          type="button"
          className="fix"
          disabled={isBusy || lookOnly !== null}
          title={lookOnly ?? undefined}
          onClick={() => setAsked({ kind: "issue" })}
        >
          {revisionWords.issueNext}
        </button>
      )}
      {changes && last && <ChangeList open={open} changes={changes} />}
      <h3>{revisionWords.issued}</h3>
      {revisions.length === 0 && <p className="quiet">{revisionWords.none}</p>}
      <ol className="entries">
        {revisions.map((one) => (
          <li key={one.id} className="entry">
            <b>{revisionWords.head(one)}</b>
            <span>{one.reason}</span>
            <span className="quiet">{revisionWords.people(one)}</span>
            <span className={one.voidedBy === "" ? "quiet" : "is-void"}>{revisionWords.standing(one)}</span>
            {asked?.kind === "approve" && asked.revisionId === one.id && <ApproveForm revision={one} onDone={done} />}
            {asked?.kind === "void" && asked.revisionId === one.id && <VoidForm revision={one} onDone={done} />}
            <Doings revision={one} isOff={isBusy || lookOnly !== null} lookOnly={lookOnly} onAsk={setAsked} />
          </li>
        ))}
      </ol>
    </aside>
  );
}

function Doings(props: {
  readonly revision: Revision;
  readonly isOff: boolean;
  readonly lookOnly: string | null;
  readonly onAsk: (asked: Asked) => void;
}) {
  const { revision, isOff, lookOnly, onAsk } = props;
  const session = useSession();
  const isBusy = useView(areEditsHeld);
  const { id: revisionId, letter, voidedBy, approvedBy } = revision;
  const button = (kind: "approve" | "void", name: string, label: string) => (
    <button
      type="button"
      className="fix"
      aria-label={label}
      disabled={isOff}
      title={lookOnly ?? undefined}
      onClick={() => onAsk({ kind, revisionId })}
    >
      {name}
    </button>
  );
  return (
    <div className="revision-doings">
      <button
        type="button"
        className="fix"
        aria-label={revisionWords.previewOf(letter)}
        disabled={isBusy}
        onClick={() => void previewSheets(session, { revisionId })}
      >
        {revisionWords.preview}
      </button>
      {voidedBy === "" &&
        approvedBy === "" &&
        button("approve", revisionWords.approve, revisionWords.approveOf(letter))}
      {voidedBy === "" && button("void", revisionWords.makeVoid, revisionWords.voidOf(letter))}
    </div>
  );
}

/** What has changed since the last revision, and the letter of the next; read anew after every edit. */
function useChanges({ routeId, route }: OpenRoute): Reply<"revision.changes"> | null {
  const session = useSession();
  const [changes, setChanges] = useState<Reply<"revision.changes"> | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: every edit brings a new route, and with it new changes
  useEffect(() => {
    let isWanted = true;
    const read = async (): Promise<void> => {
      const reply = await session.host.call("revision.changes", { routeId });
      if (!isWanted) return;
      if (reply.ok) setChanges(reply.value);
      else showFault(session, reply.fault);
    };
    void read();
    return () => {
      isWanted = false;
    };
  }, [session, routeId, route]);
  return changes;
}
