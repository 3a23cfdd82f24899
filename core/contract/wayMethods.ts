import { z } from "zod";

const columnKeys = z.array(z.string()).readonly();

/** How one table of one file is laid out. */
const tableLayout = z
  .strictObject({
    order: columnKeys,
    hidden: columnKeys,
    widths: z.record(z.string(), z.number()).readonly(),
    /** How a person sorts: the first key counts most. */
    sorts: z.array(z.strictObject({ column: z.string(), down: z.boolean() }).readonly()).readonly(),
    filters: z
      .array(
        z
          .strictObject({
            column: z.string(),
            /** Part of the text, or a comparison of the figure such as `>150`; empty lets all through. */
            text: z.string(),
            /** Shown texts that are let through; null lets all through. */
            values: columnKeys.nullable(),
          })
          .readonly(),
      )
      .readonly(),
  })
  .readonly();
export type TableLayout = z.infer<typeof tableLayout>;

/** Part of the page a view shows: what lies at its upper left, m, and its scale, px to the metre. */
const keptView = z.strictObject({ leftEastM: z.number(), topNorthM: z.number(), pxPerM: z.number() }).readonly();
export type KeptView = z.infer<typeof keptView>;

const drawnAs = z.enum(["ground", "scale", "even"]);

/** How a person looks at one route file on this machine; no part of the route. */
export const fileWays = z
  .strictObject({
    /** How the route is laid on the page. */
    drawnAs,
    views: z.partialRecord(drawnAs, keptView).readonly(),
    tables: z.record(z.string(), tableLayout).readonly(),
  })
  .readonly();
export type FileWays = z.infer<typeof fileWays>;

/** A file nobody looked at yet. */
export const plainWays: FileWays = { drawnAs: "ground", views: {}, tables: {} };

/** What the host keeps of how a file is looked at. */
export const wayMethods = {
  /** Sent along, ways are kept from now on. */
  "route.ways": {
    request: z.strictObject({ routeId: z.string().min(1), keep: fileWays.optional() }),
    reply: z.strictObject({ ways: fileWays }),
  },
} as const;
