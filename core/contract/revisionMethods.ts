import { z } from "zod";
import { tableNames } from "../model/tables.ts";

/** What the host is asked about revisions. */
export const revisionMethods = {
  /** What sets the route as it stands, or a revision as it was issued, apart from the revision before. */
  "revision.changes": {
    request: z.strictObject({ routeId: z.string().min(1), revisionId: z.string().optional() }),
    reply: z.strictObject({
      /** The issued revision the route is; null where it is none, or was edited since. */
      revisionId: z.string().nullable(),
      /** Letter of the revision before; null where there is none. */
      sinceLetter: z.string().nullable(),
      /** The next letter that no revision was ever issued under, taken back or not. */
      nextLetter: z.string(),
      groups: z
        .array(
          z.strictObject({
            heading: z.string(),
            lines: z
              .array(
                z.strictObject({ text: z.string(), table: z.enum(tableNames), id: z.string(), isGone: z.boolean() }),
              )
              .readonly(),
          }),
        )
        .readonly(),
    }),
  },
} as const;
