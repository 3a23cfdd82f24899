import { join } from "node:path";
import { z } from "zod";
import type { Request } from "../../core/contract/contract.ts";
import { keptJson } from "./keptJson.ts";

const matchSchema = z.array(z.strictObject({ key: z.string(), columns: z.record(z.string(), z.string()) }));
type Match = z.infer<typeof matchSchema>[number];
type List = Request<"files.columns">;

/** How lists were matched to columns, by kind and set of headings. */
export type KeptColumns = {
  readonly find: (list: List) => Readonly<Record<string, string>>;
  readonly keep: (list: List, columns: Record<string, string>) => void;
};

const mostKept = 100;

/** The matches as kept in a configuration folder. */
export function openKeptColumns(configFolder: string): KeptColumns {
  const kept = keptJson<Match[]>(join(configFolder, "columns.json"), matchSchema, []);
  return {
    find: (list) => kept.read().find((one) => one.key === keyOf(list))?.columns ?? {},
    keep(list, columns) {
      const key = keyOf(list);
      kept.write([{ key, columns }, ...kept.read().filter((one) => one.key !== key)].slice(0, mostKept));
    },
  };
}

/** The order in which a list has its headings does not matter. */
function keyOf({ kind, headings }: List): string {
  return JSON.stringify([kind, ...headings.toSorted()]);
}
