import { type FormEvent, useId, useState } from "react";
import type { Subject } from "../../../core/closeout/subject.ts";
import { subjectsText } from "../../../core/rules/finding.ts";
import { runCommand } from "../../app/edits.ts";
import type { WindowFinding } from "../../app/routeStore.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { setCloseout, signedNow } from "../closeoutHand.ts";
import { closeoutWords, punchWords as words } from "../words.ts";

type Props = {
  readonly subject: Subject;
  /** What people call it. */
  readonly name: string;
  readonly finding?: WindowFinding;
  readonly onDone: () => void;
};

/** Puts something on the punch list: what, for whom, until when. Escape gives up. */
export function PunchForm({ subject, name, finding, onDone }: Props) {
  const session = useSession();
  const id = useId();
  const by = useView((state) => state.closeout.by);
  const [what, setWhat] = useState(finding?.message ?? "");
  const [assignedTo, setAssignedTo] = useState("");
  const [dueIso, setDueIso] = useState("");
  const [isAsked, setIsAsked] = useState(false);
  const problem = what.trim() === "" ? words.whatNeeded : by.trim() === "" ? closeoutWords.byNeeded : null;
  const send = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    setIsAsked(true);
    if (problem !== null) return;
    const punchId = `punch-${crypto.randomUUID()}`;
    const from = { ruleId: finding?.ruleId ?? "", subjects: finding ? subjectsText(finding.subjects) : "" };
    const input = { punchId, ...subject, what, ...from, assignedTo, dueIso, ...signedNow(session) };
    if (await runCommand(session, "punch.add", input)) onDone();
  };
  return (
    <form
      className="punch-form"
      aria-label={words.addFor(name)}
      onSubmit={(event) => void send(event)}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation();
        onDone();
      }}
    >
      <label className="is-wide">
        {words.what}
        <input
          // the form was asked for by a press a moment ago
          // biome-ignore lint/a11y/noAutofocus: the hands are here already
          autoFocus
          value={what}
          aria-invalid={isAsked && what.trim() === ""}
          aria-describedby={isAsked && problem !== null ? `${id}-what` : undefined}
          onChange={(event) => setWhat(event.target.value)}
        />
      </label>
      <label>
        {words.assigned}
        <input value={assignedTo} onChange={(event) => setAssignedTo(event.target.value)} />
      </label>
      <label>
        {words.due}
        <input type="date" value={dueIso} onChange={(event) => setDueIso(event.target.value)} />
      </label>
      <label>
        {closeoutWords.by}
        <input value={by} onChange={(event) => setCloseout(session, { by: event.target.value })} />
      </label>
      <button type="submit" className="fix">
        {words.add}
      </button>
      <button type="button" className="fix" onClick={onDone}>
        {words.close}
      </button>
      {isAsked && problem !== null && (
        <p id={`${id}-what`} role="alert">
          {problem}
        </p>
      )}
    </form>
  );
}
