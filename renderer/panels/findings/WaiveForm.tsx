import { type FormEvent, useId, useState } from "react";
import { subjectsText } from "../../../core/rules/finding.ts";
import { runCommand } from "../../app/edits.ts";
import type { WindowFinding } from "../../app/routeStore.ts";
import { useSession } from "../../app/useSession.ts";
import { findingsWords } from "./words.ts";

/** Accepts a finding with a reason and a name; Escape gives up. */
export function WaiveForm({ finding, onDone }: { readonly finding: WindowFinding; readonly onDone: () => void }) {
  const session = useSession();
  const id = useId();
  const [reason, setReason] = useState("");
  const [by, setBy] = useState("");
  const [isAsked, setIsAsked] = useState(false);
  const isWhole = reason.trim() !== "" && by.trim() !== "";
  const send = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    setIsAsked(true);
    if (!isWhole) return;
    const done = await runCommand(session, "finding.waive", {
      waiverId: `waiver-${crypto.randomUUID()}`,
      ruleId: finding.ruleId,
      subjects: subjectsText(finding.subjects),
      reason,
      by,
      atIso: new Date().toISOString(),
    });
    if (done) onDone();
  };
  const isWrong = isAsked && !isWhole;
  const described = isWrong ? `${id}-what` : undefined;
  return (
    <form
      className="waive"
      onSubmit={(event) => void send(event)}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation();
        onDone();
      }}
    >
      <label>
        {findingsWords.reason}{" "}
        <input
          // the form was asked for by a press a moment ago
          // biome-ignore lint/a11y/noAutofocus: the hands are here already
          autoFocus
          value={reason}
          aria-invalid={isWrong && reason.trim() === ""}
          aria-describedby={described}
          onChange={(event) => setReason(event.target.value)}
        />
      </label>
      <label>
        {findingsWords.by}{" "}
        <input
          value={by}
          aria-invalid={isWrong && by.trim() === ""}
          aria-describedby={described}
          onChange={(event) => setBy(event.target.value)}
        />
      </label>
      <button type="submit" className="fix">
        {findingsWords.keepWaiver}
      </button>
      <button type="button" className="fix" onClick={onDone}>
        {findingsWords.giveUp}
      </button>
      {isWrong && (
        <p id={`${id}-what`} role="alert">
          {findingsWords.needed}
        </p>
      )}
    </form>
  );
}
