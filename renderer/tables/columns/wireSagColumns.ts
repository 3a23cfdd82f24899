import { choice, figures, words } from "./builders.ts";
import type { Column } from "./column.ts";
import { shortMeasure } from "./measures.ts";
import { spanOf } from "./spanOf.ts";

const table = "wireSag";

const kinds = { communication: "communication", neutral: "neutral", secondary: "secondary", primary: "primary" };

export const wireSagColumns: readonly Column[] = [
  spanOf(table),
  words({ table, column: "owner" }, "Owner"),
  choice({ table, column: "kind" }, "Wire", kinds),
  figures({ table, column: "sagM" }, "Sag", shortMeasure),
];
