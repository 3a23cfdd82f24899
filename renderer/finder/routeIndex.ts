import type { TableName } from "../../core/model/tables.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { type RefKey, refKey } from "../app/ref.ts";
import { openWordIndex, type WordIndex } from "./wordIndex.ts";
import { words } from "./words.ts";

/** A row of the route one can go to, or one port of a terminal. */
export type RowPlace = {
  readonly key: string;
  readonly ref: RefKey;
  readonly port: number | null;
  readonly text: string;
};

/** Rows of a route by their words; brought up to date by what changed since last time. */
export type RouteIndex = {
  readonly catchUp: () => void;
  readonly find: WordIndex["find"];
  readonly placeOf: (key: string) => RowPlace | undefined;
};

const foundTables = ["pole", "terminal", "livingUnit", "cable", "closure", "strandSection"] as const;
type FoundTable = (typeof foundTables)[number];

/** An index over a plant; empty until it catches up. */
export function openRouteIndex(plant: Plant): RouteIndex {
  const index = openWordIndex();
  const places = new Map<string, RowPlace>();
  const seen = new Map<TableName, ReadonlyMap<string, object>>();
  const keysByRow = new Map<RefKey, readonly string[]>();

  const forget = (ref: RefKey): void => {
    for (const key of keysByRow.get(ref) ?? []) {
      index.drop(key);
      places.delete(key);
    }
    keysByRow.delete(ref);
  };
  const learn = (ref: RefKey, made: readonly RowPlace[]): void => {
    forget(ref);
    for (const place of made) {
      index.put(place.key, place.text);
      places.set(place.key, place);
    }
    keysByRow.set(
      ref,
      made.map((one) => one.key),
    );
  };
  const catchUpWith = (table: FoundTable, isEveryRowNew: boolean): void => {
    const now: ReadonlyMap<string, object> = plant.route()[table];
    const before = seen.get(table);
    if (now === before && !isEveryRowNew) return;
    for (const id of before?.keys() ?? []) if (!now.has(id)) forget(refKey(table, id));
    for (const [id, row] of now) {
      if (isEveryRowNew || before?.get(id) !== row) learn(refKey(table, id), placesOf(plant, table, id));
    }
    seen.set(table, now);
  };
  return {
    find: index.find,
    placeOf: (key) => places.get(key),
    catchUp() {
      const models = plant.route().terminalModel;
      const haveModelsChanged = seen.get("terminalModel") !== models;
      for (const table of foundTables) catchUpWith(table, table === "terminal" && haveModelsChanged);
      seen.set("terminalModel", models);
    },
  };
}

function placesOf(plant: Plant, table: FoundTable, id: string): readonly RowPlace[] {
  const ref = refKey(table, id);
  const itself = (text: string): RowPlace => ({ key: ref, ref, port: null, text });
  switch (table) {
    case "pole":
      return [itself(`${words.pole} ${plant.rowOf("pole", id).tag}`)];
    case "livingUnit":
      return [itself(plant.rowOf("livingUnit", id).address)];
    case "cable":
      return [itself(`${words.cable} ${plant.rowOf("cable", id).name}`)];
    case "closure":
      return [itself(`${words.closure} ${plant.rowOf("closure", id).name}`)];
    case "strandSection":
      return [itself(`${words.strand} ${plant.rowOf("strandSection", id).name}`)];
    case "terminal": {
      const terminal = plant.rowOf("terminal", id);
      const { portCount } = plant.rowOf("terminalModel", terminal.terminalModelId);
      const name = `${words.terminal} ${terminal.name}`;
      const ports = Array.from({ length: portCount }, (_, i): RowPlace => {
        const port = i + 1;
        return { key: `${ref}/port/${port}`, ref, port, text: `${name} ${words.port} ${port}` };
      });
      return [itself(name), ...ports];
    }
  }
}
