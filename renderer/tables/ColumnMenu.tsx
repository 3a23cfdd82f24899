import { Popover } from "radix-ui";
import { useId } from "react";
import { type Column, type Given, headingOf } from "./columns/column.ts";
import type { Kind } from "./kinds.ts";
import { valueCounts } from "./rowsShown.ts";
import { filteredBy, movedColumn, sortedBy, type TableLayout } from "./tableLayout.ts";
import { tableWords } from "./words.ts";

const mostValues = 200;
const [stepPx, leastPx] = [30, 50];

type Props = {
  readonly column: Column;
  readonly kind: Kind;
  readonly ids: readonly string[];
  readonly given: Given;
  readonly layout: TableLayout;
  readonly lay: (layout: TableLayout) => void;
  readonly isFirst: boolean;
  readonly close: () => void;
};

/** What can be done with one column: sort, filter, place, width. */
export function ColumnMenu({ column, kind, ids, given, layout, lay, isFirst, close }: Props) {
  const { key } = column;
  const widthPx = layout.widths[key] ?? column.widthPx;
  const size = (px: number): void => lay({ ...layout, widths: { ...layout.widths, [key]: Math.max(leastPx, px) } });
  const sort = (down: boolean): void => lay({ ...layout, sorts: [{ column: key, down }] });
  const acts: readonly (readonly [name: string, run: () => void, isOff?: boolean])[] = [
    [tableWords.sortUp, () => sort(false)],
    [tableWords.sortDown, () => sort(true)],
    [tableWords.addSort, () => lay(sortedBy(layout, key, true))],
    [tableWords.moveLeft, () => lay(movedColumn(kind.columns, layout, key, -1)), isFirst],
    [tableWords.moveRight, () => lay(movedColumn(kind.columns, layout, key, 1)), isFirst],
    [tableWords.wider, () => size(widthPx + stepPx)],
    [tableWords.narrower, () => size(widthPx - stepPx)],
  ];
  return (
    <Popover.Content
      className="table-menu"
      aria-label={tableWords.menuOf(headingOf(column, given.units))}
      align="start"
      collisionPadding={8}
      onKeyDown={(event) => event.stopPropagation()}
    >
      <div className="table-menu-acts">
        {acts.map(([name, run, isOff]) => (
          <button key={name} type="button" disabled={isOff} onClick={run}>
            {name}
          </button>
        ))}
        <button
          type="button"
          disabled={isFirst}
          onClick={() => {
            lay({ ...layout, hidden: [...layout.hidden, key] });
            close();
          }}
        >
          {tableWords.hide}
        </button>
      </div>
      <ColumnFilter column={column} ids={ids} given={given} layout={layout} lay={lay} />
    </Popover.Content>
  );
}

function ColumnFilter({ column, ids, given, layout, lay }: Pick<Props, "column" | "ids" | "given" | "layout" | "lay">) {
  const fieldId = useId();
  const present = layout.filters.find((one) => one.column === column.key);
  const filter = present ?? { column: column.key, text: "", values: null };
  const counts = valueCounts(ids, column, given);
  const toggle = (text: string): void => {
    const chosen = filter.values ?? counts.map((one) => one.text);
    const values = chosen.includes(text) ? chosen.filter((one) => one !== text) : [...chosen, text];
    lay(filteredBy(layout, { ...filter, values: values.length === counts.length ? null : values }));
  };
  return (
    <>
      <label htmlFor={fieldId}>{tableWords.contains}</label>
      <input
        id={fieldId}
        type="text"
        value={filter.text}
        onChange={(event) => lay(filteredBy(layout, { ...filter, text: event.target.value }))}
      />
      <fieldset>
        <legend>{tableWords.values}</legend>
        <button
          type="button"
          className="table-menu-all"
          onClick={() => lay(filteredBy(layout, { ...filter, values: filter.values ? null : [] }))}
        >
          {filter.values ? tableWords.allValues : tableWords.noValues}
        </button>
        {counts.slice(0, mostValues).map(({ text, count }) => (
          <label key={text}>
            <input type="checkbox" checked={filter.values?.includes(text) ?? true} onChange={() => toggle(text)} />
            <span>{text === "" ? tableWords.empty : text}</span>
            <span className="quiet">{count}</span>
          </label>
        ))}
      </fieldset>
    </>
  );
}
