import { type KeyboardEvent, useId, useRef, useState } from "react";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession } from "../../app/useSession.ts";
import { type Column, cellText, type Given, headingOf } from "../../tables/columns/column.ts";
import { cautionOf, keepField, whyNot } from "./keepField.ts";
import { fieldWords } from "./words.ts";

type Props = {
  readonly column: Column;
  readonly given: Given;
  /** One row, or several that are changed together. */
  readonly rowIds: readonly string[];
};

/** A fact as a field: told while one types why it cannot stand; Enter keeps, Escape gives up, Tab keeps and goes on. */
export function Field({ column, given, rowIds }: Props) {
  const id = useId();
  const choices = column.write?.choices(given.plant) ?? [];
  return (
    <div className="field">
      <label htmlFor={id}>{headingOf(column, given.units)}</label>
      {choices.length > 0 ? (
        <Choice id={id} column={column} given={given} rowIds={rowIds} choices={choices} />
      ) : (
        <Typed id={id} column={column} given={given} rowIds={rowIds} />
      )}
    </div>
  );
}

/** What all rows show; null where they differ. */
function commonText({ column, given, rowIds }: Props): string | null {
  const texts = new Set(rowIds.map((rowId) => cellText(column, given, rowId)));
  const [only] = texts;
  return texts.size === 1 ? (only ?? null) : null;
}

function Typed({ id, ...props }: Props & { readonly id: string }) {
  const { column, given, rowIds } = props;
  const session = useSession();
  const lookOnly = useLookOnly();
  const common = commonText(props);
  const shown = common ?? "";
  const [typed, setTyped] = useState<string | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  // Enter and the blur it may bring must not write the same text twice
  const writing = useRef<string | null>(null);
  const isChanged = typed !== null && typed !== shown;
  const problem = refused ?? (isChanged ? whyNot(given, column, rowIds, typed) : null);
  const caution = isChanged && problem === null ? cautionOf(given, column, rowIds, typed) : null;
  const message = problem ?? caution;

  const keep = async (): Promise<void> => {
    if (typed === null || typed === writing.current) return;
    if (!isChanged) return setTyped(null);
    if (problem !== null) return;
    writing.current = typed;
    const why = await keepField(session, given, { column, rowIds, text: typed });
    if (writing.current === typed) writing.current = null;
    setRefused(why);
    // what was typed since is the next text, not this one's rest
    if (why === null) setTyped((now) => (now === typed ? null : now));
  };
  const press = (event: KeyboardEvent): void => {
    if (event.key === "Enter") void keep();
    if (event.key !== "Escape" || typed === null) return;
    event.stopPropagation();
    setTyped(null);
    setRefused(null);
  };
  return (
    <div>
      <input
        id={id}
        className={column.isFigure ? "figure" : undefined}
        value={typed ?? shown}
        placeholder={common === null ? fieldWords.several : undefined}
        readOnly={lookOnly !== null}
        title={lookOnly ?? undefined}
        aria-invalid={problem !== null}
        aria-describedby={message === null ? undefined : `${id}-what`}
        onFocus={(event) => event.target.select()}
        onChange={(event) => {
          setTyped(event.target.value);
          setRefused(null);
        }}
        onBlur={() => void keep()}
        onKeyDown={press}
      />
      {message !== null && (
        <p id={`${id}-what`} className={problem === null ? "field-caution" : "field-wrong"} role="alert">
          {message}
        </p>
      )}
    </div>
  );
}

function Choice({ id, choices, ...props }: Props & { readonly id: string; readonly choices: readonly string[] }) {
  const { column, given, rowIds } = props;
  const session = useSession();
  const lookOnly = useLookOnly();
  const [refused, setRefused] = useState<string | null>(null);
  const common = commonText(props);
  return (
    <div>
      <select
        id={id}
        value={common ?? ""}
        disabled={lookOnly !== null}
        title={lookOnly ?? undefined}
        aria-invalid={refused !== null}
        aria-describedby={refused === null ? undefined : `${id}-what`}
        onChange={async (event) =>
          setRefused(await keepField(session, given, { column, rowIds, text: event.target.value }))
        }
      >
        {common !== null && !choices.includes(common) && <option value={common}>{common}</option>}
        {common === null && <option value="">{fieldWords.several}</option>}
        {choices.map((one) => (
          <option key={one}>{one}</option>
        ))}
      </select>
      {refused !== null && (
        <p id={`${id}-what`} className="field-wrong" role="alert">
          {refused}
        </p>
      )}
    </div>
  );
}
