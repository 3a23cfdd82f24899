import { type FormEvent, useId, useState } from "react";
import { revisionWords } from "./words.ts";

type Field = {
  readonly key: string;
  readonly label: string;
  readonly initial: string;
  readonly isNeeded: boolean;
};

/** A few fields that are signed with a name; Escape gives up, what is needed and empty is said when it is sent. */
export function SignedForm(props: {
  readonly name: string;
  readonly fields: readonly Field[];
  /** The field the hands come to first. */
  readonly first: string;
  readonly needed: string;
  /** What the button says. */
  readonly send: (values: Readonly<Record<string, string>>) => string;
  readonly onSend: (values: Readonly<Record<string, string>>) => Promise<boolean>;
  readonly onDone: () => void;
}) {
  const { name, fields, first, needed, send, onSend, onDone } = props;
  const id = useId();
  const [values, setValues] = useState<Readonly<Record<string, string>>>(() =>
    Object.fromEntries(fields.map((one) => [one.key, one.initial])),
  );
  const [isAsked, setIsAsked] = useState(false);
  const isEmpty = (one: Field): boolean => one.isNeeded && values[one.key]?.trim() === "";
  const isWrong = isAsked && fields.some(isEmpty);
  const submit = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    setIsAsked(true);
    if (!fields.some(isEmpty) && (await onSend(values))) onDone();
  };
  return (
    <form
      className="signed"
      aria-label={name}
      onSubmit={(event) => void submit(event)}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation();
        onDone();
      }}
    >
      {fields.map((one) => (
        <label key={one.key}>
          {one.label}{" "}
          <input
            // the form was asked for by a press a moment ago
            // biome-ignore lint/a11y/noAutofocus: the hands are here already
            autoFocus={one.key === first}
            value={values[one.key] ?? ""}
            aria-invalid={isWrong && isEmpty(one)}
            aria-describedby={isWrong ? `${id}-what` : undefined}
            onChange={(event) => setValues({ ...values, [one.key]: event.target.value })}
          />
        </label>
      ))}
      <div className="revision-doings">
        <button type="submit" className="fix">
          {send(values)}
        </button>
        <button type="button" className="fix" onClick={onDone}>
          {revisionWords.giveUp}
        </button>
      </div>
      {isWrong && (
        <p id={`${id}-what`} role="alert">
          {needed}
        </p>
      )}
    </form>
  );
}
