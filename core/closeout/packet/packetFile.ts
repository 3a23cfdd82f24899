import { z } from "zod";
import { readingKinds, subjectFields } from "../../model/closeoutRows.ts";
import { count, figure, id, label, ordinal, words } from "../../model/fields.ts";
import { packetFormat, packetVersion } from "./packetFormat.ts";

const head = { format: z.literal(packetFormat), version: z.literal(packetVersion), packetId: id };

/** Nothing on a route is read in larger figures, whatever the unit. */
const read = figure.min(-1e9).max(1e9);

/** What a reading says: a figure in SI, or words. */
const content = z.strictObject({ value: read.nullable(), text: words });

/** One thing to be read, as the page asks for it. */
const asked = z.strictObject({
  ...subjectFields,
  what: z.enum(readingKinds),
  wavelengthNm: count,
  label,
  /** As drawn or expected, in words. */
  drawnText: words,
  /** The same in SI, as the ends of a range; null where no figure is drawn. */
  drawn: z.strictObject({ leastValue: figure, mostValue: figure }).nullable(),
  /** How far from it a reading may be before the page asks again, in SI; null where the page never asks. */
  tolerance: figure.nullable(),
  /** What stood as read when the packet was written. */
  before: content.extend({ by: label, atIso: label }).nullable(),
  /** Whether it may be left out: nobody waits for it. */
  isFurther: z.boolean(),
});

const card = z.strictObject({
  terminalId: id,
  name: label,
  place: words,
  /** Heading and words. */
  facts: z.array(z.tuple([z.string(), z.string()])),
  steps: z.array(z.string()),
  groups: z.array(z.strictObject({ title: label, asked: z.array(asked) })),
  /** The drawn card, page by page, as SVG. */
  drawings: z.array(z.string()),
});

/** What a packet's page is written from. */
const packetSheet = z.strictObject({
  ...head,
  number: ordinal,
  crew: label,
  routeName: z.string(),
  revision: z.string(),
  unitSystem: z.enum(["us", "metric"]),
  writtenBy: label,
  writtenIso: label,
  cautions: z.array(z.string()),
  cards: z.array(card),
});

const signed = { by: label, atIso: label };

/** A reading that was there before. Pages of before did not tell who read it and when: it is then nobody's, and no reading is made on it. */
const former = content.extend({ by: words.trim().default(""), atIso: words.trim().default("") });

/** A reading a crew brings: what stood when the packet was written, and what the crew read. */
const brought = z.strictObject({
  ...subjectFields,
  what: z.enum(readingKinds),
  wavelengthNm: count,
  before: former.nullable(),
  /** What earlier files of the same page said. */
  sent: z.array(former).max(50),
  after: content.extend(signed),
});

/** What a person typed that the page could not read; it comes back to be told. */
const unread = z.strictObject({ label, typed: words, ...signed });

const broughtPhoto = z.strictObject({
  ...subjectFields,
  moment: z.enum(["built", "before", "after"]),
  caption: words,
  widthPx: ordinal.max(20_000),
  heightPx: ordinal.max(20_000),
  base64: z.base64().max(4_000_000),
  ...signed,
});

/** The file a crew brings back. */
export const packetFile = z.strictObject({
  ...head,
  routeName: z.string().max(200),
  crew: label,
  readings: z.array(brought).max(20_000),
  unread: z.array(unread).max(20_000),
  photos: z.array(broughtPhoto).max(2000),
});

export type PacketSheet = z.infer<typeof packetSheet>;
export type PacketCard = z.infer<typeof card>;
export type AskedReading = z.infer<typeof asked>;
export type PacketFile = z.infer<typeof packetFile>;
export type BroughtReading = z.infer<typeof brought>;
export type BroughtPhoto = z.infer<typeof broughtPhoto>;
export type ReadContent = z.infer<typeof content>;
/** What was read, by whom and when. */
export type SignedContent = z.infer<typeof former>;
