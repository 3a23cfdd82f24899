import { type KeyboardEvent, type ReactNode, useId, useState } from "react";
import type { Route } from "../../core/model/route.ts";
import type { TableName } from "../../core/model/tables.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { useLookOnly } from "../app/useLookOnly.ts";
import { type Cell, cellText, chosenCell, columnForm, readCell } from "./columnForm.ts";

type FieldProps = {
  readonly route: Route;
  readonly table: TableName;
  readonly column: string;
  readonly value: Cell;
  readonly units: UnitSystem;
  readonly name: string;
  /** True for words of several lines, where Enter begins the next. */
  readonly isLong?: boolean;
  /** What stands under the field: its meaning, its basis. */
  readonly children?: ReactNode;
  readonly onKeep: (value: Cell) => void;
};

/** One value with its name: edited in place, kept by Enter or on leaving it, given up by Escape. */
export function FieldLine(props: FieldProps) {
  const id = useId();
  return (
    <div className="setting">
      <label htmlFor={id}>{props.name}</label>
      <div>
        <Field {...props} id={id} />
        {props.children}
      </div>
    </div>
  );
}

function Field({ route, table, column, value, units, id, isLong, onKeep }: FieldProps & { readonly id: string }) {
  const shown = cellText(column, value, units);
  const [typed, setTyped] = useState<string | null>(null);
  const lookOnly = useLookOnly();
  const form = columnForm(route, table, column, value);
  if (form.kind === "choice") {
    return (
      <select
        id={id}
        value={String(value ?? "")}
        disabled={lookOnly !== null}
        title={lookOnly ?? undefined}
        onChange={(event) => onKeep(chosenCell(event.target.value))}
      >
        {form.options.map((one) => (
          <option key={one.value} value={one.value}>
            {one.words}
          </option>
        ))}
      </select>
    );
  }
  const isChanged = typed !== null && typed !== shown;
  const read = isChanged ? readCell(table, column, form, typed, units) : null;
  const keep = (): void => {
    if (read?.ok === false) return;
    if (read?.ok && read.value !== value) onKeep(read.value);
    setTyped(null);
  };
  const shared = {
    id,
    value: typed ?? shown,
    readOnly: lookOnly !== null,
    title: lookOnly ?? undefined,
    "aria-invalid": read?.ok === false,
    "aria-describedby": read?.ok === false ? `${id}-what` : undefined,
    onChange: (event: { readonly target: { readonly value: string } }) => setTyped(event.target.value),
    onBlur: keep,
    onKeyDown: (event: KeyboardEvent) => {
      if (event.key === "Enter" && !isLong) keep();
      if (event.key !== "Escape" || typed === null) return;
      event.stopPropagation();
      setTyped(null);
    },
  };
  return (
    <>
      {isLong ? (
        <textarea rows={4} {...shared} />
      ) : (
        <input className={form.kind === "figure" ? "figure" : undefined} {...shared} />
      )}
      {read?.ok === false && (
        <p id={`${id}-what`} className="setting-wrong" role="alert">
          {read.what}
        </p>
      )}
    </>
  );
}
