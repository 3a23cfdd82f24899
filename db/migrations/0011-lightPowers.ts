import type { WriteDb } from "../driver.ts";
import { liftJournal } from "./liftJournal.ts";

export const version = 11;

/** Columns in the order of the figures below. */
const columns = [
  ["hub_launch_least_dbm", "hubLaunchLeastDbm"],
  ["hub_launch_most_dbm", "hubLaunchMostDbm"],
  ["unit_receive_least_dbm", "unitReceiveLeastDbm"],
  ["unit_receive_most_dbm", "unitReceiveMostDbm"],
  ["unit_launch_least_dbm", "unitLaunchLeastDbm"],
  ["unit_launch_most_dbm", "unitLaunchMostDbm"],
  ["hub_receive_least_dbm", "hubReceiveLeastDbm"],
  ["hub_receive_most_dbm", "hubReceiveMostDbm"],
] as const;

/** Powers of the shipped classes, dBm; null where they are not known. */
const shipped: ReadonlyMap<string, readonly (number | null)[]> = new Map(
  Object.entries({
    "gpon-a": [0, 4, -21, -1, null, null, null, null],
    "gpon-b": [5, 9, -21, -1, null, null, null, null],
    "gpon-b-plus": [1.5, 5, -27, -8, 0.5, 5, -28, -8],
    "gpon-c": [3, 7, -28, -8, null, null, null, null],
    "gpon-c-plus": [3, 7, -30, -8, 0.5, 5, -32, -12],
    "xgs-n1": [2, 5, -28, -9, 4, 9, -26, -5],
    "xgs-n2": [4, 7, -28, -9, 4, 9, -28, -7],
    "xgs-e1": [6, 9, -28, -9, 4, 9, -30, -9],
    "xgs-e2": [8, 11, -28, -9, 4, 9, -32, -11],
  }),
);

/** Powers an optical class launches and bears at both ends; of a class that did not come with the program nobody knows them yet. */
export function up(db: WriteDb): void {
  for (const [name] of columns)
    db.exec(
      `ALTER TABLE optical_class ADD COLUMN ${name} REAL CHECK (${name} IS NULL OR (${name} > -9e999 AND ${name} < 9e999))`,
    );
  for (const [id, powers] of shipped) {
    const settings = columns.map(([name]) => `${name} = ?`).join(", ");
    db.run(`UPDATE optical_class SET ${settings} WHERE id = ?`, ...powers, id);
  }
  liftJournal(db, {
    opticalClass: (row) => {
      const powers = shipped.get(String(row.id)) ?? [];
      return { ...row, ...Object.fromEntries(columns.map(([, column], at) => [column, powers[at] ?? null])) };
    },
  });
}
