import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { TableName } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { byWeight, type Finding, findingOf } from "./finding.ts";
import { ruleRegister } from "./register.ts";
import type { Rule } from "./rule.ts";

/** A route's findings, kept up to date edit by edit. */
export type Checker = {
  /** All findings, worst first. */
  readonly findings: () => readonly Finding[];
  /** Takes in an edit and asks the rules again about the rows that leaned on it, and no others. */
  readonly advance: (route: Route, rows: readonly RowChange[]) => Recheck;
};

/** What an edit did to the findings. */
type Recheck = {
  /** How many rows the rules were asked about again. */
  readonly askedCount: number;
  /** Keys of findings that are no longer there. */
  readonly gone: readonly string[];
  /** Findings of the rows asked about, as they read now. */
  readonly found: readonly Finding[];
};

const cellName = "findings";

/** Checks every row once, then only what an edit touched. */
export function openChecker(plant: Plant, rules: readonly Rule[] = ruleRegister): Checker {
  const byTable = new Map<TableName, Rule[]>();
  for (const rule of rules) byTable.set(rule.each, [...(byTable.get(rule.each) ?? []), rule]);
  const found = new Map<string, readonly Finding[]>();

  const ask = (table: TableName, id: string): void => {
    const key = `${table}/${id}`;
    const hits = plant.derive(cellName, key, () => checkRow(plant, byTable.get(table) ?? [], id));
    if (hits.length > 0) found.set(key, hits);
    else found.delete(key);
  };

  for (const table of byTable.keys()) for (const id of plant.route()[table].keys()) ask(table, id);

  return {
    findings: () => [...found.values()].flat().sort(byWeight),
    advance(route, rows) {
      const asked = new Set<string>();
      for (const name of plant.advance(route, rows)) {
        if (name.startsWith(`${cellName}/`)) asked.add(name.slice(cellName.length + 1));
      }
      for (const row of rows) if (byTable.has(row.table)) asked.add(`${row.table}/${row.id}`);
      const before = [...asked].flatMap((key) => found.get(key) ?? []);
      for (const key of asked) {
        const cut = key.indexOf("/");
        const table = key.slice(0, cut) as TableName; // the key was made from one
        const id = key.slice(cut + 1);
        if (route[table].has(id)) ask(table, id);
        else found.delete(key);
      }
      const after = [...asked].flatMap((key) => found.get(key) ?? []);
      const still = new Set(after.map((one) => one.key));
      return {
        askedCount: asked.size,
        gone: before.filter((one) => !still.has(one.key)).map((one) => one.key),
        found: after,
      };
    },
  };
}

function checkRow(plant: Plant, rules: readonly Rule[], id: string): readonly Finding[] {
  return rules.flatMap((rule) => [...rule.check(plant, id)].map((hit) => findingOf(plant, rule, hit)));
}
