import type { Revision } from "../../../core/model/tables.ts";
import { runCommand } from "../../app/edits.ts";
import { useSession } from "../../app/useSession.ts";
import { SignedForm } from "./SignedForm.tsx";
import { revisionWords } from "./words.ts";

type Done = { readonly onDone: () => void };

/** Issues the route as it stands, under the letter proposed unless told otherwise. */
export function IssueForm({
  last,
  letter: proposed,
  onDone,
}: Done & { readonly last: Revision | undefined; readonly letter: string }) {
  const session = useSession();
  return (
    <SignedForm
      name={revisionWords.issueNext}
      fields={[
        { key: "letter", label: revisionWords.letter, initial: proposed, isNeeded: true },
        { key: "dateIso", label: revisionWords.date, initial: today(), isNeeded: true },
        { key: "by", label: revisionWords.by, initial: last?.by ?? "", isNeeded: true },
        { key: "checkedBy", label: revisionWords.checkedBy, initial: "", isNeeded: false },
        { key: "reason", label: revisionWords.reason, initial: "", isNeeded: true },
      ]}
      first="reason"
      needed={revisionWords.needed}
      send={({ letter = "" }) => revisionWords.issue(letter)}
      onSend={(values) =>
        runCommand(session, "revision.issue", { revisionId: `revision-${crypto.randomUUID()}`, ...values })
      }
      onDone={onDone}
    />
  );
}

/** Approves a revision by name. */
export function ApproveForm({ revision, onDone }: Done & { readonly revision: Revision }) {
  const session = useSession();
  const { id: revisionId, letter } = revision;
  return (
    <SignedForm
      name={revisionWords.approveOf(letter)}
      fields={[{ key: "by", label: revisionWords.by, initial: "", isNeeded: true }]}
      first="by"
      needed={revisionWords.neededName}
      send={() => revisionWords.approveOf(letter)}
      onSend={(values) => runCommand(session, "revision.approve", { revisionId, dateIso: today(), ...values })}
      onDone={onDone}
    />
  );
}

/** Takes a revision out of use, by name and with a reason. */
export function VoidForm({ revision, onDone }: Done & { readonly revision: Revision }) {
  const session = useSession();
  const { id: revisionId, letter } = revision;
  return (
    <SignedForm
      name={revisionWords.voidOf(letter)}
      fields={[
        { key: "reason", label: revisionWords.reason, initial: "", isNeeded: true },
        { key: "by", label: revisionWords.by, initial: "", isNeeded: true },
      ]}
      first="reason"
      needed={revisionWords.neededReason}
      send={() => revisionWords.voidOf(letter)}
      onSend={(values) => runCommand(session, "revision.void", { revisionId, dateIso: today(), ...values })}
      onDone={onDone}
    />
  );
}

/** The day it is where the person sits. */
function today(): string {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
