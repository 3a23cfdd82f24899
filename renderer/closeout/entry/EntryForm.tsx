import { useEffect, useRef, useState } from "react";
import { askedReadings } from "../../../core/closeout/askedReadings.ts";
import type { BuiltThing } from "../../../core/closeout/board.ts";
import { furtherReadings } from "../../../core/closeout/furtherReadings.ts";
import { type StandingState, standingStates } from "../../../core/closeout/standing.ts";
import { type Subject, subjectKey } from "../../../core/closeout/subject.ts";
import { thingName } from "../../../core/closeout/thingName.ts";
import type { BuiltKind } from "../../../core/model/closeoutRows.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { FindingRow } from "../../panels/FindingRow.tsx";
import type { ShownRow } from "../board/shownRows.ts";
import { reach, setCloseout, signedNow } from "../closeoutHand.ts";
import { StateChip } from "../StateGlyph.tsx";
import { closeoutWords, stateWords, entryWords as words } from "../words.ts";
import { ReadingField } from "./ReadingField.tsx";
import { ThingPhotos } from "./ThingPhotos.tsx";

type Props = { readonly open: OpenRoute; readonly row: ShownRow };

/** All readings of a row of the board and the states of its things: from field to field by Enter. */
export function EntryForm({ open, row }: Props) {
  const session = useSession();
  const area = useRef<HTMLElement>(null);
  useEffect(() => {
    area.current?.querySelector<HTMLElement>("[data-reading]")?.focus();
  }, []);
  const close = (): void => {
    setCloseout(session, { isEntering: false });
    document.querySelector<HTMLElement>(".board-grid")?.focus();
  };
  return (
    <section
      ref={area}
      className="closeout-entry"
      data-entry
      aria-label={words.form(row.name)}
      onKeyDown={(event) => {
        if (event.key === "Escape") close();
      }}
    >
      <div className="entry-head">
        <h3>
          {row.name} <span className="quiet">{row.place}</span>
        </h3>
        <button type="button" className="fix" onClick={close}>
          {words.back}
        </button>
      </div>
      <MarkAll row={row} />
      {row.findings.length > 0 && (
        <ul className="entry-findings">
          {row.findings.map((one) => (
            <FindingRow key={one.key} finding={one} open={open} isTabStop isBrief />
          ))}
        </ul>
      )}
      {inOrder(row.things).map((thing) => (
        <Thing key={subjectKey(thing.subject)} open={open} thing={thing} />
      ))}
    </section>
  );
}

/** Kinds as one writes them down: the terminal and what hangs on it first, then the way to it. */
const entryKinds: readonly BuiltKind[] = [
  "terminal",
  "port",
  "drop",
  "bond",
  "pole",
  "closure",
  "span",
  "strandSection",
  "cable",
];

function inOrder(things: readonly BuiltThing[]): readonly BuiltThing[] {
  return entryKinds.flatMap((kind) => things.filter(({ subject }) => subject.kind === kind));
}

function MarkAll({ row }: { readonly row: ShownRow }) {
  const session = useSession();
  const [isUnsigned, setIsUnsigned] = useState(false);
  const isBusy = useView((state) => state.isBusy);
  const lookOnly = useLookOnly();
  const mark = (state: StandingState): void => {
    const isSigned = signedNow(session).by !== "";
    setIsUnsigned(!isSigned);
    if (isSigned)
      void reach(
        session,
        row.things.map((one) => one.subject),
        state,
      );
  };
  return (
    <fieldset className="mark-all">
      <legend>{words.markAll(row.name)}</legend>
      {standingStates.map((one) => (
        <button
          key={one}
          type="button"
          className="fix"
          disabled={isBusy || lookOnly !== null}
          title={lookOnly ?? undefined}
          onClick={() => mark(one)}
        >
          <StateChip state={one} />
        </button>
      ))}
      {isUnsigned && (
        <p className="setting-wrong" role="alert">
          {closeoutWords.byNeeded}
        </p>
      )}
    </fieldset>
  );
}

function Thing({ open, thing: { subject, standing } }: { readonly open: OpenRoute; readonly thing: BuiltThing }) {
  const session = useSession();
  const [isUnsigned, setIsUnsigned] = useState(false);
  const lookOnly = useLookOnly();
  const name = thingName(open.plant, subject);
  return (
    <fieldset className="built-thing">
      <legend>{name}</legend>
      <label className="thing-state">
        <StateChip state={standing.state} told="" />
        <select
          aria-label={`${words.state}, ${name}`}
          value={standing.state}
          disabled={lookOnly !== null}
          onChange={(event) => {
            const state = standingStates.find((one) => one === event.target.value) ?? "designed";
            const isSigned = signedNow(session).by !== "";
            setIsUnsigned(!isSigned);
            if (isSigned) void reach(session, [subject], state);
          }}
        >
          {standingStates.map((one) => (
            <option key={one} value={one}>
              {stateWords[one]}
            </option>
          ))}
        </select>
        {standing.by !== "" && <span className="quiet">{words.readBy(standing.by, standing.atIso.slice(0, 10))}</span>}
      </label>
      {isUnsigned && (
        <p className="setting-wrong" role="alert">
          {closeoutWords.byNeeded}
        </p>
      )}
      {askedReadings(open.plant, subject).map((asked) => (
        <ReadingField key={asked.id} open={open} asked={asked} of={name} />
      ))}
      <Further open={open} subject={subject} of={name} />
      <ThingPhotos open={open} subject={subject} />
    </fieldset>
  );
}

/** What may be read of a thing and nobody asks for. */
function Further({ open, subject, of }: { readonly open: OpenRoute; readonly subject: Subject; readonly of: string }) {
  const further = furtherReadings(open.plant, subject);
  if (further.length === 0) return null;
  return (
    <>
      <p className="quiet">{words.further}</p>
      {further.map((one) => (
        <ReadingField key={one.id} open={open} asked={one} of={of} />
      ))}
    </>
  );
}
