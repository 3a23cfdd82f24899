import { randomUUID } from "node:crypto";
import { fail, ok, type Result } from "../../../core/model/result.ts";
import type { Revision } from "../../../core/model/tables.ts";
import { drawnState, revisionOfLetter } from "../../host/drawnState.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import { changesOf } from "../../host/revisionHandlers.ts";
import type { Session } from "../../host/session.ts";
import { type Outcome, readArguments, type Verb } from "../verb.ts";

const shape = {
  name: "revision",
  usage:
    "FILE.strand [--issue LETTER | --approve LETTER | --void LETTER | --changes LETTER] [--by NAME] [--checked NAME] [--reason TEXT] [--date YYYY-MM-DD]",
};

/** Issues, approves or makes void a revision, or tells what changed in one; without any of these it lists them. */
export const revisionVerb: Verb = {
  ...shape,
  help: "Issues the route as it stands under a letter, approves a revision or makes it void, or tells what changed in one. Without any of these it lists the revisions and what changed since the last.",
  async run(args, desk) {
    const text = { type: "string" } as const;
    const read = readArguments(shape, args, ["a FILE"], {
      issue: text,
      approve: text,
      void: text,
      changes: text,
      by: text,
      checked: text,
      reason: text,
      date: text,
    });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const asked = [values.issue, values.approve, values.void, values.changes].filter((one) => one !== undefined);
    if (asked.length > 1)
      return fail(
        "bad-arguments",
        "A revision is either issued, approved, made void or told.",
        "revision",
        shape.usage,
      );
    const by = values.by ?? desk.stamp.author;
    const dateIso = values.date ?? desk.stamp.nowIso().slice(0, 10);
    return withRouteFile(positionals[0] ?? "", desk.stamp, (session) => {
      if (values.issue !== undefined) {
        const { checked: checkedBy = "", reason = "" } = values;
        const input = { revisionId: `revision-${randomUUID()}`, letter: values.issue, dateIso, by, checkedBy, reason };
        return edited(session, session.run("revision.issue", input));
      }
      const letter = values.approve ?? values.void ?? values.changes;
      const revision = letter === undefined ? ok(null) : revisionOfLetter(session, letter);
      if (!revision.ok) return revision;
      if (!revision.value || values.changes !== undefined) return told(session, revision.value);
      const revisionId = revision.value.id;
      return values.approve === undefined
        ? edited(session, session.run("revision.void", { revisionId, by, dateIso, reason: values.reason ?? "" }))
        : edited(session, session.run("revision.approve", { revisionId, by, dateIso }));
    });
  },
};

function edited(session: Session, done: ReturnType<Session["run"]>): Result<Outcome> {
  if (!done.ok) return done;
  return ok({ exitCode: 0, lines: [done.value.label], json: { label: done.value.label, revisions: listed(session) } });
}

/** The list of revisions, and what changed in one of them, or since the last. */
function told(session: Session, revision: Revision | null): Result<Outcome> {
  const state = drawnState(session, revision?.id ?? null);
  if (!state.ok) return state;
  const { since, revisionId } = state.value;
  const groups = changesOf(state.value);
  const revisions = listed(session);
  return ok({
    exitCode: 0,
    lines: [
      ...(revisions.length === 0 ? ["No revision is issued."] : revisions.map(line)),
      ...(since ? [`Changed since revision ${since.letter}:`] : []),
      ...groups.flatMap(({ heading, lines }) => [`  ${heading}`, ...lines.map((one) => `    ${one.text}`)]),
    ],
    json: { revisions, revisionId, sinceLetter: since?.letter ?? null, groups },
  });
}

function listed(session: Session): readonly Revision[] {
  return [...session.route().revision.values()].sort((a, b) => a.number - b.number);
}

function line(one: Revision): string {
  const approved = one.approvedBy === "" ? "not approved" : `approved ${one.approvedIso} by ${one.approvedBy}`;
  const standing = one.voidedBy === "" ? approved : `void ${one.voidedIso}: ${one.voidReason}`;
  return `${one.letter}  ${one.dateIso}  ${one.by}  ${one.reason}  (${standing})`;
}
