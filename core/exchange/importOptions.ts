import { z } from "zod";

/** What can be brought in from a table. */
export const importKind = z.enum([
  "pole",
  "livingUnit",
  "spanPair",
  "attachment",
  "crossing",
  "groundPoint",
  "structure",
  "guy",
  "wireSag",
  "dropCrossing",
]);

/** Unit of lengths: international foot, metre, or the survey foot of old state plane coordinates. */
const lengthUnit = z.enum(["ft", "m", "usft"]);

/** How a table is to be read where the file itself does not say. */
const importOptions = z.strictObject({
  /** Unit of lengths where neither heading nor cell names one; the route's own units where it is left out. */
  lengthUnit: lengthUnit.optional(),
  /** Poles without a tag get this and their number in the file; without it they are reported. */
  numberUntagged: z.string().trim().min(1).max(20).optional(),
  /** What a plain "height" of a pole is: its length as bought, or what stands above ground. Length where it is left out. */
  heightIs: z.enum(["poleLength", "aboveGround"]).optional(),
});

/** What is asked of an import besides the table itself. */
export const importChoices = z.strictObject({
  kind: importKind,
  /** Field to heading; "" leaves a field out. Fields not named here are guessed. */
  columns: z.record(z.string(), z.string()).optional(),
  options: importOptions.optional(),
  /** What happens when rows are bad: nothing is taken, or the good rows are. */
  onBad: z.enum(["refuse", "takeGood"]),
  /** What happens to rows that are already in the route. */
  onExisting: z.enum(["skip", "replace"]),
  /** Spans between imported poles: from their order, inferred from where they stand, order if there is one else inferred, or none. */
  spans: z.enum(["auto", "order", "infer", "none"]).optional(),
});

export type ImportKind = z.infer<typeof importKind>;
export type LengthUnit = z.infer<typeof lengthUnit>;
export type ImportOptions = z.infer<typeof importOptions>;
export type ImportChoices = z.infer<typeof importChoices>;
