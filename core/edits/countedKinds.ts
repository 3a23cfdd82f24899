import { type TableName, tableNames } from "../model/tables.ts";

const trade: Partial<Record<TableName, readonly [one: string, many: string]>> = {
  traceEvent: ["event of a trace", "events of traces"],
  slack: ["coil", "coils"],
  fiberUse: ["fiber use", "fiber uses"],
  cableRun: ["cable step", "cable steps"],
  wireSag: ["measured sag", "measured sags"],
  settingBasis: ["source of a standard", "sources of standards"],
};

/** Rows counted by kind, as one says it: `3 poles, 1 coil`. */
export function countedKinds(rows: readonly { readonly table: TableName }[]): string {
  const counted = new Map<TableName, number>();
  for (const { table } of rows) counted.set(table, (counted.get(table) ?? 0) + 1);
  return tableNames
    .flatMap((table) => {
      const count = counted.get(table) ?? 0;
      return count === 0 ? [] : [`${count} ${kindWord(table, count)}`];
    })
    .join(", ");
}

/** What one row of a table, or several, are called. */
export function kindWord(table: TableName, count: number): string {
  const plain = table.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  const [one, many] = trade[table] ?? [plain, plain.endsWith("s") ? `${plain}es` : `${plain}s`];
  return count === 1 ? one : many;
}
