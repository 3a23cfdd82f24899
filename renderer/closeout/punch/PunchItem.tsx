import { type FormEvent, useState } from "react";
import { thingName } from "../../../core/closeout/thingName.ts";
import type { Row } from "../../../core/model/tables.ts";
import { runCommand } from "../../app/edits.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession } from "../../app/useSession.ts";
import { setCloseout, signedNow } from "../closeoutHand.ts";
import { closeoutWords, punchWords as words } from "../words.ts";
import { PunchPhoto } from "./PunchPhoto.tsx";

type Props = { readonly open: OpenRoute; readonly item: Row<"punch"> };

/** One item of the punch list: what, for whom, until when; photos before and after; done with a note. */
export function PunchItem({ open, item }: Props) {
  const session = useSession();
  const close = (): void => setCloseout(session, { punchId: null });
  return (
    <section
      className="closeout-entry"
      aria-label={words.item(item.number)}
      onKeyDown={(event) => {
        if (event.key === "Escape") close();
      }}
    >
      <div className="entry-head">
        <h3>
          {words.item(item.number)} <span className="quiet">{thingName(open.plant, item)}</span>
        </h3>
        <button type="button" className="fix" onClick={close}>
          {words.close}
        </button>
      </div>
      <Told item={item} />
      <p className="quiet">{words.givenBy(item.by, item.atIso.slice(0, 10))}</p>
      <div className="punch-photos">
        <PunchPhoto open={open} item={item} moment="before" />
        <PunchPhoto open={open} item={item} moment="after" />
      </div>
      {item.doneIso === "" ? <DoneForm item={item} /> : <DoneTold item={item} />}
    </section>
  );
}

/** What is to be mended, kept field by field by Enter or on leaving it. */
function Told({ item }: { readonly item: Row<"punch"> }) {
  const session = useSession();
  const lookOnly = useLookOnly();
  const [draft, setDraft] = useState<Partial<Pick<Row<"punch">, "what" | "assignedTo" | "dueIso">>>({});
  const now = { what: item.what, assignedTo: item.assignedTo, dueIso: item.dueIso, ...draft };
  const keep = (): void => {
    const isChanged = now.what !== item.what || now.assignedTo !== item.assignedTo || now.dueIso !== item.dueIso;
    if (!isChanged || now.what.trim() === "") return;
    const sent = draft;
    void runCommand(session, "punch.set", { punchId: item.id, ...now }).then(() =>
      setDraft((one) => (one === sent ? {} : one)),
    );
  };
  const field = (key: "what" | "assignedTo" | "dueIso", name: string, type: "text" | "date" = "text") => (
    <label className={key === "what" ? "is-wide" : undefined}>
      {name}
      <input
        type={type}
        value={now[key]}
        readOnly={lookOnly !== null}
        aria-invalid={key === "what" && now.what.trim() === ""}
        onChange={(event) => setDraft({ ...draft, [key]: event.target.value })}
        onBlur={keep}
        onKeyDown={(event) => {
          if (event.key === "Enter") keep();
        }}
      />
    </label>
  );
  return (
    <div className="punch-form">
      {field("what", words.what)}
      {field("assignedTo", words.assigned)}
      {field("dueIso", words.due, "date")}
    </div>
  );
}

function DoneForm({ item }: { readonly item: Row<"punch"> }) {
  const session = useSession();
  const lookOnly = useLookOnly();
  const [note, setNote] = useState("");
  const [isUnsigned, setIsUnsigned] = useState(false);
  const send = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    const signed = signedNow(session);
    setIsUnsigned(signed.by === "");
    if (signed.by !== "") await runCommand(session, "punch.done", { punchId: item.id, note, ...signed });
  };
  return (
    <form className="punch-form" aria-label={words.markDone} onSubmit={(event) => void send(event)}>
      <label className="is-wide">
        {words.note}
        <input value={note} onChange={(event) => setNote(event.target.value)} />
      </label>
      <button type="submit" className="fix" disabled={lookOnly !== null} title={lookOnly ?? undefined}>
        {words.markDone}
      </button>
      {isUnsigned && <p role="alert">{closeoutWords.byNeeded}</p>}
    </form>
  );
}

function DoneTold({ item }: { readonly item: Row<"punch"> }) {
  const session = useSession();
  const lookOnly = useLookOnly();
  return (
    <div className="punch-form">
      <p>
        {words.doneBy(item.doneBy, item.doneIso.slice(0, 10))}
        {item.doneNote !== "" && `: ${item.doneNote}`}
      </p>
      <button
        type="button"
        className="fix"
        disabled={lookOnly !== null}
        title={lookOnly ?? undefined}
        onClick={() => void runCommand(session, "punch.reopen", { punchId: item.id })}
      >
        {words.reopen}
      </button>
    </div>
  );
}
