import { type KeyboardEvent, useId, useLayoutEffect, useRef, useState } from "react";
import type { Column, Given, Reading } from "./columns/column.ts";

const mostChoices = 500;

/** What ended the typing: where the hand goes next. */
export type EditEnd = "down" | "up" | "right" | "left" | "stay" | "all";

type Props = {
  readonly column: Column;
  readonly given: Given;
  readonly rowId: string;
  readonly name: string;
  readonly start: string;
  readonly isWhole: boolean;
  readonly keep: (text: string, end: EditEnd) => void;
  readonly giveUp: () => void;
};

/** The field a cell turns into: reads while one types, and keeps what was typed until it can be read. */
export function CellEditor({ column, given, rowId, name, start, isWhole, keep, giveUp }: Props) {
  const [text, setText] = useState(start);
  const field = useRef<HTMLInputElement>(null);
  const isOver = useRef(false);
  const id = useId();
  const reading: Reading = column.write?.read(text, given, rowId) ?? { ok: true, value: null };
  const warning = reading.ok ? (column.write?.warn(given.plant, rowId, reading.value) ?? null) : null;
  const said = reading.ok ? warning : reading.what;
  useLayoutEffect(() => {
    field.current?.focus();
    if (isWhole) field.current?.select();
  }, [isWhole]);
  const end = (where: EditEnd): void => {
    if (!reading.ok && where !== "stay") return;
    isOver.current = true;
    keep(text, where);
  };
  const press = (event: KeyboardEvent): void => {
    event.stopPropagation();
    const where = endOf(event);
    if (event.key !== "Escape" && where === null) return;
    event.preventDefault();
    if (where !== null) {
      end(where);
      return;
    }
    isOver.current = true;
    giveUp();
  };
  const choices = column.write?.choices(given.plant).slice(0, mostChoices) ?? [];
  return (
    <div className="cell-editor">
      <input
        ref={field}
        type="text"
        aria-label={name}
        aria-invalid={!reading.ok}
        aria-describedby={said === null ? undefined : `${id}-said`}
        list={choices.length > 0 ? `${id}-choices` : undefined}
        value={text}
        onChange={(event) => setText(event.target.value)}
        onKeyDown={press}
        onBlur={() => {
          if (!isOver.current) end("stay");
        }}
      />
      {choices.length > 0 && (
        <datalist id={`${id}-choices`}>
          {choices.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
      )}
      {said !== null && (
        <p id={`${id}-said`} className={reading.ok ? "cell-said" : "cell-said is-bad"} role="status">
          {said}
        </p>
      )}
    </div>
  );
}

function endOf(event: KeyboardEvent): EditEnd | null {
  if (event.key === "Enter") return event.ctrlKey || event.metaKey ? "all" : event.shiftKey ? "up" : "down";
  if (event.key === "Tab") return event.shiftKey ? "left" : "right";
  return null;
}
