import { type Route, settingsOf } from "../model/route.ts";
import type { Row, Settings, TableName } from "../model/tables.ts";

type Columns = { readonly [T in TableName]?: readonly (keyof Row<T> & string)[] };

/** Standards that decide where terminals hang, whom they serve and what that costs. */
const standards: readonly (keyof Settings & string)[] = [
  "standoffM",
  "climbingSpaceM",
  "hangingGapM",
  "minSpanM",
  "dropReachM",
  "dropAllowanceM",
  "dropTypeId",
  "sparePortCount",
  "spareFiberPerTubeCount",
  "deadLength",
];

/** What a layout reads and writes: the columns its cost and bound depend on. Ids count where other rows name them. */
const columns: Columns = {
  pole: ["id", "eastM", "northM", "terminalAllowed"],
  span: ["id", "fromPoleId", "toPoleId", "lengthM", "strandSectionId"],
  cable: ["id", "cableTypeId", "fromClosureId"],
  cableRun: ["cableId", "spanId", "sequence", "reversed"],
  cableType: ["id", "fiberCount", "fibersPerTube"],
  closure: ["id", "cableId", "spanId", "offsetM"],
  slack: ["cableId", "spanId", "offsetM", "terminalId"],
  terminalModel: ["id", "portCount", "splitterCount", "lengthM", "cost"],
  dropPassing: ["surface", "passing", "costEach"],
  crossing: ["spanId", "surface", "offsetM"],
  dropCrossing: ["livingUnitId", "surface", "fromUnitM"],
  dropType: ["id", "costPerM", "costEach"],
  livingUnit: ["id", "eastM", "northM"],
  terminal: ["id", "terminalModelId", "cableId", "spanId", "offsetM", "pinned", "reservedPortCount"],
  drop: ["terminalId", "livingUnitId", "dropTypeId", "pinned"],
};

/** What decides besides where taps are chained: how far the light goes. */
const ofChains: Columns = {
  terminalModel: ["id", "splitterTypeId"],
  splitterType: ["id", "legCount", "maxLossDb", "throughLossDb"],
  opticalClass: ["id", "maxLossDb", "maxSplitCount", "upDbPerKm", "downDbPerKm"],
  feed: ["id", "opticalClassId", "hubSplitCount", "upstreamLossDb"],
};

/**
 * A short text that is another one, but for rare chance, once anything has changed that a layout's cost and bound depend on.
 *
 * @source FNV-1a by Fowler, Noll and Vo, twice over with two starts
 */
export function layoutDigest(route: Route): string {
  let low = 0x811c9dc5;
  let high = 0x1b873593;
  const add = (text: string) => {
    for (let at = 0; at < text.length; at += 1) {
      const code = text.charCodeAt(at);
      low = Math.imul(low ^ code, 0x01000193);
      high = Math.imul(high ^ (code + at), 0x01000193);
    }
  };
  const settings = settingsOf(route);
  add(JSON.stringify(standards.map((column) => settings[column])));
  const read = [...Object.entries(columns), ...(settings.deadLength === "chained" ? Object.entries(ofChains) : [])];
  for (const [table, names] of read) {
    const rows = [...route[table as TableName].values()]; // a key of Columns is a table
    add(table);
    for (const text of rows.map((row) => JSON.stringify(names.map((name) => Reflect.get(row, name)))).sort()) add(text);
  }
  return [high, low].map((part) => (part >>> 0).toString(16).padStart(8, "0")).join("");
}
