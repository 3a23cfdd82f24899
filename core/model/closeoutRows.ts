import { z } from "zod";
import { amount, count, figure, fraction, id, label, ordinal, positive, reference, words } from "./fields.ts";

/** Kinds of things that are built, read and closed out. A bond is told by the pole where it is and the strand it grounds. */
const builtKinds = ["pole", "span", "strandSection", "cable", "closure", "terminal", "port", "drop", "bond"] as const;

/** How far a thing has come; without a row it is designed. Each state takes in those before it. */
export const builtStates = ["issued", "built", "tested", "accepted"] as const;

/**
 * What a crew reads. offset: from the pole's centre line, m; slack: left in the coil, m; mark: the figure printed on the sheath, at a
 * pole or before and after an opening; height: of an attachment, m; power: at a port, dBm; continuity: 1 where a bond conducts, else 0;
 * resistance: of a ground, ohm; houseTag: as written on the house; portOfDrop: the port a drop is plugged into; note: in words.
 */
export const readingKinds = [
  "offset",
  "slack",
  "mark",
  "markBefore",
  "markAfter",
  "height",
  "power",
  "continuity",
  "resistance",
  "houseTag",
  "portOfDrop",
  "note",
] as const;

/** Ids made of other ids and kinds, the same whoever makes them. */
const madeId = z.string().min(1).max(300);

/** What a row of the closeout is about. */
export const subjectFields = {
  kind: z.enum(builtKinds),
  /** The row of that kind; the terminal of a port, the pole of a bond. */
  subjectId: reference,
  /** The port's number, or 0. */
  port: count,
  /** The strand section of a bond, or the cable whose sheath is read; empty where the subject alone tells. */
  alongId: z.string().max(80),
};

const signedFields = { by: label, atIso: label };

/** A state one thing has reached. */
const milestone = z.strictObject({
  id: madeId,
  ...subjectFields,
  state: z.enum(builtStates),
  ...signedFields,
});

const readingFields = {
  ...subjectFields,
  what: z.enum(readingKinds),
  /** Of the light a power was read at; 0 else. */
  wavelengthNm: count,
  /** In SI; null where the reading is words. */
  value: figure.nullable(),
  text: words,
  ...signedFields,
};

/** Marks of the readings a crew knew of when it read (core/closeout/packet/readingMark.ts), with spaces between. */
const madeOn = z.string().max(20_000);

/** What stands as read. A later reading of the same thing takes its place; the journal keeps the former. */
const reading = z.strictObject({
  id: madeId,
  ...readingFields,
  /** The packet that brought it, while it is the crew's word alone; null where a person took it down or decided for it. */
  packetId: reference.nullable(),
  madeOn,
});

/**
 * A reading a crew brought beside others of the same thing. Where they differ none of the crews' stands, and each waits here for a person;
 * where they say the same as what stands it is kept for the day another differs.
 */
const rivalReading = z.strictObject({
  id: madeId,
  /** The reading it would take the place of. */
  readingId: madeId,
  ...readingFields,
  /** Whose packet brought it. */
  packetId: reference,
  madeOn,
});

/** A packet given to a crew. */
const packet = z.strictObject({
  id,
  number: ordinal,
  crew: label,
  /** Ids of its terminals, with spaces between. */
  terminalIds: z.string().max(20_000),
  ...signedFields,
  /** Light is asked for at these beside that of the route's class, nm, with spaces between. */
  wavelengthsNm: z.string().max(100),
});

/** A picture from the field, scaled down; its bytes are kept beside the rows, by their hash. */
const photo = z.strictObject({
  id: madeId,
  ...subjectFields,
  moment: z.enum(["built", "before", "after"]),
  caption: words,
  widthPx: ordinal,
  heightPx: ordinal,
  keptHash: label,
  ...signedFields,
});

/** A reflectometer's file; its bytes are kept beside the rows, by their hash. */
const trace = z.strictObject({
  id,
  fileName: label,
  keptHash: label,
  /** Null while nobody has said which fiber it is of. */
  cableId: reference.nullable(),
  fiber: ordinal.nullable(),
  /** The end of the cable the instrument stood at. */
  fromEnd: z.enum(["feed", "far"]),
  wavelengthNm: positive,
  ...signedFields,
  /** When the instrument says it was taken; empty where it does not. */
  takenIso: words,
  /** By which its distances are told. */
  groupIndex: positive,
  pulseNs: positive,
  /** From one point of the curve to the next, m. */
  spacingM: positive,
  /** Length of the launch lead, 0 for none; null where the trace itself must tell. */
  leadM: amount.nullable(),
  /** Of the whole way as the instrument sums it up, dB; null where it did not. */
  totalLossDb: figure.nullable(),
  returnLossDb: figure.nullable(),
});

/** What a reflectometer shows at one place of a trace. */
const traceEvent = z.strictObject({
  id: madeId,
  traceId: reference,
  number: ordinal,
  /** From the instrument, m. */
  atM: amount,
  /** dB; negative where the trace rises. */
  lossDb: figure,
  /** dB; null where the instrument did not tell. */
  reflectanceDb: figure.nullable(),
  /** Of the fiber before it, dB/km. */
  slopeDbPerKm: figure,
  reflects: z.boolean(),
  /** Whether the fiber ends there. */
  ends: z.boolean(),
});

/** Something to be mended before the route is accepted. */
const punch = z.strictObject({
  id: madeId,
  number: ordinal,
  ...subjectFields,
  what: label,
  /** The finding it came from; empty where a person wrote it. */
  ruleId: z.string().max(200),
  subjects: z.string().max(2000),
  assignedTo: words,
  dueIso: words,
  ...signedFields,
  /** Who mended it, when and how; empty while it is open. */
  doneBy: words,
  doneIso: words,
  doneNote: words,
});

/** A stage of the route a person signed for. */
const signOff = z.strictObject({
  id,
  number: ordinal,
  stage: z.enum(["built", "tested", "accepted"]),
  role: words,
  note: words,
  /** Of every row of the route as it was signed. */
  digest: label,
  ...signedFields,
  /** Who opened the route again, when and why; empty while the signature stands. */
  reopenedBy: words,
  reopenedIso: words,
  reopenReason: words,
});

/** Limits what was built is held against: the company's own, in the settings. */
export const closeoutLimits = {
  /** How far a terminal may hang from the drawn offset, m. */
  offsetToleranceM: positive,
  /** How much less light than expected a port may have, dB. */
  readingToleranceDb: positive,
  /** How far sheath used may differ from the drawn length: a share of it, and a length. */
  markToleranceFrac: fraction,
  markToleranceM: positive,
  /** Most resistance of a ground, ohm. */
  groundMaxOhm: positive,
  /** Most loss of a splice, the mean of both directions where both were taken, dB. */
  spliceMaxDb: positive,
  /** Most loss of a connection, dB. */
  connectionMaxDb: positive,
  /** Strongest reflection of a connection, dB. */
  reflectanceMaxDb: figure,
  /** Most loss along a section of fiber, dB/km. */
  sectionMaxDbPerKm: positive,
  /** Least optical return loss of the whole way, dB. */
  returnLossMinDb: positive,
};

export const closeoutTables = { milestone, reading, rivalReading, packet, photo, trace, traceEvent, punch, signOff };

export type BuiltKind = (typeof builtKinds)[number];
export type BuiltState = (typeof builtStates)[number];
export type ReadingKind = (typeof readingKinds)[number];
