import type { RowChange } from "../../model/rowChange.ts";
import type { CableRun } from "../../model/tables.ts";
import { kindAndName } from "../tradeWords.ts";
import { pairsOf } from "./pairs.ts";
import { type Between, type ChangeLine, lineAbout } from "./told.ts";

/** Cables that were there before and are lashed along other spans now. */
export function tellRuns(rows: readonly RowChange[], { before, after }: Between): readonly ChangeLine[] {
  const pairs = pairsOf(rows, "cableRun");
  const [gone, come] = [pairs.map((one) => one.before), pairs.map((one) => one.after)].map(spansByCable);
  const cableIds = [...new Set([...(gone?.keys() ?? []), ...(come?.keys() ?? [])])];
  return cableIds.flatMap((id) => {
    const cable = after.row("cable", id);
    if (!(cable && before.row("cable", id))) return [];
    const [off, on] = [gone?.get(id) ?? new Set<string>(), come?.get(id) ?? new Set<string>()];
    const more = [...on].filter((one) => !off.has(one)).length;
    const fewer = [...off].filter((one) => !on.has(one)).length;
    const parts = [
      ...(more > 0 ? [`lashed along ${spans(more)} more`] : []),
      ...(fewer > 0 ? [`no longer lashed along ${spans(fewer)}`] : []),
      ...(more + fewer === 0 ? ["takes its spans in another order"] : []),
    ];
    return [lineAbout("cable", cable, null, `${kindAndName("Cable", cable.name)} ${parts.join(", ")}`)];
  });
}

function spansByCable(runs: readonly (CableRun | null)[]): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, Set<string>>();
  for (const run of runs) if (run) found.set(run.cableId, (found.get(run.cableId) ?? new Set()).add(run.spanId));
  return found;
}

function spans(count: number): string {
  return count === 1 ? "1 span" : `${count} spans`;
}
