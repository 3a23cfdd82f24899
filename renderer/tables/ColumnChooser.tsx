import { Columns3 } from "lucide-react";
import { Popover } from "radix-ui";
import { Tip } from "../panels/Tip.tsx";
import type { Kind } from "./kinds.ts";
import type { TableLayout } from "./tableLayout.ts";
import { tableWords } from "./words.ts";

type Props = { readonly kind: Kind; readonly layout: TableLayout; readonly lay: (layout: TableLayout) => void };

/** Which columns of a table are shown; the first one always is. */
export function ColumnChooser({ kind, layout, lay }: Props) {
  const toggle = (key: string): void => {
    const isHidden = layout.hidden.includes(key);
    lay({ ...layout, hidden: isHidden ? layout.hidden.filter((one) => one !== key) : [...layout.hidden, key] });
  };
  return (
    <Popover.Root>
      <Tip name={tableWords.columns}>
        <Popover.Trigger asChild>
          <button type="button" className="act" aria-label={tableWords.columns}>
            <Columns3 size={16} strokeWidth={1.75} aria-hidden="true" />
          </button>
        </Popover.Trigger>
      </Tip>
      <Popover.Portal>
        <Popover.Content className="table-menu" aria-label={tableWords.columns} collisionPadding={8}>
          {kind.columns.slice(1).map((column) => (
            <label key={column.key}>
              <input
                type="checkbox"
                checked={!layout.hidden.includes(column.key)}
                onChange={() => toggle(column.key)}
              />
              {column.heading}
            </label>
          ))}
        </Popover.Content>
      </Popover.Portal>
    </Popover.Root>
  );
}
