import type { Row } from "../../../core/model/tables.ts";
import { spanName } from "../../../core/plant/names.ts";
import type { Column } from "./column.ts";

type OnSpan = "groundPoint" | "structure" | "wireSag";

/** The span a row belongs to, by the tags of its poles; another one may be named. */
export function spanOf(table: OnSpan): Column {
  const spanIdOf = (row: Row<OnSpan> | undefined): string | null => row?.spanId ?? null;
  return {
    key: "spanId",
    heading: "Span",
    unit: () => "",
    isFigure: false,
    widthPx: 170,
    value: (plant, id) => spanIdOf(plant.row(table, id)),
    show: (value, { plant }) => (typeof value === "string" && plant.row("span", value) ? spanName(plant, value) : ""),
    figure: () => null,
    write: {
      read: (text, { plant }) => {
        const wanted = text.trim();
        const found = [...plant.route().span.keys()].find((id) => spanName(plant, id) === wanted);
        return found === undefined
          ? { ok: false, what: `No span is called "${wanted}". Write the tags of both poles: P1 to P2.` }
          : { ok: true, value: found };
      },
      steps: (_, id, spanId) => [{ command: "row.set", input: { table, id, values: { spanId } } }],
      choices: (plant) => [...plant.route().span.keys()].slice(0, 500).map((id) => spanName(plant, id)),
      warn: () => null,
    },
  };
}
