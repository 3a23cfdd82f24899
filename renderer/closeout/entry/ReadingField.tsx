import { type KeyboardEvent, useId, useState } from "react";
import type { AskedReading } from "../../../core/closeout/askedReadings.ts";
import { disputeOf, saidBy } from "../../../core/closeout/disputes.ts";
import { readingText as printed } from "../../../core/closeout/packet/readingText.ts";
import { readingWords } from "../../../core/closeout/words.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { unitsOf } from "../../app/session.ts";
import { besideShown } from "../../app/sideRoom.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession } from "../../app/useSession.ts";
import { keepReading, signedNow } from "../closeoutHand.ts";
import { closeoutWords, entryWords as words } from "../words.ts";
import { drawnText, readingText, typedReading } from "./readingForm.ts";

type Props = { readonly open: OpenRoute; readonly asked: AskedReading; readonly of: string };

/** One reading with its name and what was drawn: kept by Enter, which goes on to the next field, or on leaving it; given up by Escape. */
export function ReadingField({ open, asked, of }: Props) {
  const session = useSession();
  const id = useId();
  const lookOnly = useLookOnly();
  const units = unitsOf(open);
  const reading = open.route.reading.get(asked.id);
  const shown = reading ? readingText(reading, units) : "";
  const [typed, setTyped] = useState<string | null>(null);
  const [isUnsigned, setIsUnsigned] = useState(false);
  const isChanged = typed !== null && typed !== shown;
  const read = isChanged ? typedReading(asked.what, typed, units) : null;
  const problem = read?.ok === false ? read.what : isUnsigned ? closeoutWords.byNeeded : null;
  /** Whether the hand may go on to the next field. */
  const keep = (): boolean => {
    if (!read) {
      setTyped(null);
      return true;
    }
    if (!read.ok) return false;
    const isSigned = read.read === null || signedNow(session).by !== "";
    setIsUnsigned(!isSigned);
    if (!isSigned) return false;
    const sent = typed;
    const stay = () => setTyped((now) => (now === sent ? null : now));
    void keepReading(session, asked, read.read).then(stay);
    return true;
  };
  const press = (event: KeyboardEvent<HTMLInputElement | HTMLSelectElement>): void => {
    if (event.key === "Enter") {
      event.preventDefault();
      if (keep()) focusNext(event.currentTarget);
    }
    if (event.key !== "Escape" || typed === null) return;
    event.stopPropagation();
    setTyped(null);
    setIsUnsigned(false);
  };
  const along = asked.what === "mark" ? open.route.cable.get(asked.subject.alongId) : undefined;
  const name = along ? words.markOf(along.name) : readingWords[asked.what];
  const shared = {
    id,
    "data-reading": asked.id,
    "aria-label": `${name}, ${of}`,
    "aria-invalid": problem !== null,
    "aria-describedby": `${id}-drawn${problem === null ? "" : ` ${id}-what`}`,
    title: lookOnly ?? undefined,
    onKeyDown: press,
  };
  const day = reading?.atIso.slice(0, 10) ?? "";
  return (
    <div className="reading">
      <label htmlFor={id}>{name}</label>
      {asked.what === "continuity" ? (
        <select
          {...shared}
          disabled={lookOnly !== null}
          value={reading?.value === 1 ? "1" : reading ? "0" : ""}
          onChange={(event) => {
            const { value } = event.target;
            const isSigned = value === "" || signedNow(session).by !== "";
            setIsUnsigned(!isSigned);
            if (isSigned) void keepReading(session, asked, value === "" ? null : { value: Number(value), text: "" });
          }}
        >
          <option value="">{words.unread}</option>
          <option value="1">{words.conducts}</option>
          <option value="0">{words.open}</option>
        </select>
      ) : (
        <input
          {...shared}
          readOnly={lookOnly !== null}
          className={asked.what === "houseTag" ? undefined : "figure"}
          value={typed ?? shown}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={keep}
        />
      )}
      <span id={`${id}-drawn`} className="quiet">
        {drawnText(asked, units)}
        {reading && <span className="reading-by"> {words.readBy(reading.by, day)}</span>}
      </span>
      <Disputed open={open} readingId={asked.id} />
      {problem !== null && (
        <p id={`${id}-what`} className="setting-wrong" role="alert">
          {problem}
        </p>
      )}
    </div>
  );
}

/** What crews say otherwise than each other, and the way to decide between them; nothing where nobody does. */
function Disputed({ open, readingId }: { readonly open: OpenRoute; readonly readingId: string }) {
  const { view } = useSession();
  const dispute = disputeOf(open.plant, readingId);
  if (!dispute) return null;
  const said = dispute.sides.map(saidBy).map((one) => words.saidBy(printed(one.what, one, unitsOf(open)), one.by));
  return (
    <p className="reading-disputed">
      {words.disputed(said)}{" "}
      <button type="button" className="fix" onClick={() => view.setState(besideShown("packets"))}>
        {words.decide}
      </button>
    </p>
  );
}

/** The next reading of the form, so that Enter walks down it. */
function focusNext(from: HTMLElement): void {
  const fields = [...(from.closest("[data-entry]")?.querySelectorAll<HTMLElement>("[data-reading]") ?? [])];
  const next = fields[fields.indexOf(from) + 1];
  next?.focus();
  if (next instanceof HTMLInputElement) next.select();
}
