import { z } from "zod";
import { amount, count, id, label, reference, words } from "./fields.ts";

/**
 * What ended the search of a layout. proven: its bound met its cost; rested: it had nothing more to try; work, time: its limit of steps
 * or of the clock; stopped: a person; moment: nobody watched, it was to be quick.
 */
export const layoutEnding = z.enum(["proven", "rested", "work", "time", "stopped", "moment"]);

/** What keeps a living unit from being served. */
export const unservedKind = z.enum(["reach", "noStrand", "forbidden", "crossing", "capacity", "fibers"]);

/** The one row that tells how the latest layout of the whole route came out. */
const layoutRecord = z.strictObject({
  id: z.literal("layout"),
  terminalCount: count,
  servedCount: count,
  unservedCount: count,
  /** Terminals and drops hung anew, at catalogue prices. */
  cost: amount,
  /** Proven: no choice of places and terminals serves these units for less. Null where fibers ran short. */
  bound: amount.nullable(),
  ended: layoutEnding,
  /** Steps the search took: with this many as its limit it comes to the same layout again. */
  stepCount: count,
  /** Of all that the layout read and wrote: where the route gives another, cost and bound are no longer its own. */
  digest: label,
});

/** A living unit the latest layout could not serve. */
const unservedUnit = z.strictObject({
  id,
  livingUnitId: reference,
  kind: unservedKind,
  reason: words,
});

export const layoutTables = { layoutRecord, unservedUnit };

export type LayoutEnding = z.infer<typeof layoutEnding>;
