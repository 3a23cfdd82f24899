import { z } from "zod";
import { strandAtPoles } from "./catalogueRows.ts";
import { lineSurfaces } from "./clearanceRows.ts";
import {
  amount,
  count,
  figure,
  fraction,
  id,
  label,
  ordinal,
  positionFields,
  positive,
  reference,
  words,
} from "./fields.ts";

/** A pole, as found or as surveyed. */
const pole = z.strictObject({
  id,
  tag: label,
  ...positionFields,
  /** Elevation of the ground at the pole, m above the route's datum; null where nobody measured it. */
  groundM: figure.nullable(),
  /** Length of the pole that stands above ground; null where unknown. */
  aboveGroundM: positive.nullable(),
  poleClass: words,
  owner: words,
  /** Name of the line of poles it stands in: the main line, a lateral; empty where the list named none. */
  line: words,
  /** Position along its line as imported, from 1; 0 where the list had no order. */
  order: count,
  /** False where nothing may be hung beside this pole. */
  terminalAllowed: z.boolean(),
  note: words,
});

/** Anybody's wire or equipment on a pole, with its height above ground. Our own strand is one of these. */
const attachment = z.strictObject({
  id,
  poleId: reference,
  owner: words,
  /** supplyFiber: cable in the supply space; streetLight: a bracket; dripLoop: of the wires that feed one; riser: a stand-off bracket. */
  kind: z.enum([
    "ourStrand",
    "communication",
    "neutral",
    "secondary",
    "primary",
    "supplyFiber",
    "equipment",
    "streetLight",
    "dripLoop",
    "riser",
  ]),
  heightM: positive,
  /** Voltage to ground of a supply wire, V; 0 for a neutral and for communication. */
  voltageV: amount,
  note: words,
  /** True where it is effectively grounded and bonded to our messenger: most limits then ask less. */
  bonded: z.boolean(),
});

/** Two neighbouring poles and what is strung between them. */
const span = z.strictObject({
  id,
  fromPoleId: reference,
  toPoleId: reference,
  /** Horizontal distance between the pole centre lines, m. */
  lengthM: positive,
  /** Strand section that runs through this span; null where we have no strand yet. */
  strandSectionId: reference.nullable(),
  /** inferred spans came from the order of poles or their distance and wait for a person's look. */
  origin: z.enum(["surveyed", "ordered", "inferred", "drawn"]),
  note: words,
});

/** What lies under a span: where, how wide, how high. */
const crossing = z.strictObject({
  id,
  spanId: reference,
  name: words,
  surface: z.enum(lineSurfaces),
  /** Middle of the crossing from the span's first pole, m. */
  offsetM: amount,
  widthM: positive,
  /** Elevation of the surface on the route's datum; null takes the line between the two poles' ground. */
  surfaceM: figure.nullable(),
});

/** One measured point of the ground under a span. */
const groundPoint = z.strictObject({
  id,
  spanId: reference,
  /** From the span's first pole, m. */
  offsetM: amount,
  /** Elevation on the route's datum, m. */
  groundM: figure,
});

/** A building or sign that the line passes over, under or beside; a chimney stands for antennas and tanks too. */
const structure = z.strictObject({
  id,
  spanId: reference,
  name: words,
  kind: z.enum(["building", "walkedRoof", "sign", "litSign", "groundedLitSign", "walkedSign", "chimney"]),
  /** Middle of it from the span's first pole, along the span, m. */
  offsetM: amount,
  /** How far it reaches along the span, m. */
  lengthM: positive,
  /** From the line to its nearest face, level, m; 0 where the line passes over it. */
  besideM: amount,
  side: z.enum(["left", "right"]),
  /** Its top above the ground there, m. */
  heightM: positive,
  /** Its underside above the ground there, where the line may pass under it, m; null where it stands on the ground. */
  bottomM: positive.nullable(),
});

/** Measured midspan sag of another party's wire in a span. */
const wireSag = z.strictObject({
  id,
  spanId: reference,
  owner: words,
  kind: z.enum(["communication", "neutral", "secondary", "primary", "supplyFiber"]),
  sagM: positive,
});

/** A guy from a pole to its anchor. */
const guy = z.strictObject({
  id,
  poleId: reference,
  strandTypeId: reference,
  /** Attachment above the ground at the pole, m. */
  heightM: positive,
  /** From the pole to the anchor, level, m. */
  leadM: positive,
  /** Direction from the pole to the anchor on the route's grid, counter-clockwise from east. */
  directionRad: figure,
  /** What the anchor holds, N; null where nobody knows. */
  anchorN: positive.nullable(),
  note: words,
});

/** Strand from dead end to dead end, pulled as one. */
const strandSection = z.strictObject({
  id,
  name: label,
  strandTypeId: reference,
  /** Midspan sag of the finished line over span length at the stringing temperature. */
  stringingSagFrac: fraction,
  stringingDegC: figure,
  atPoles: strandAtPoles,
});

/** A fiber cable from its feed end outwards. */
const cable = z.strictObject({
  id,
  name: label,
  cableTypeId: reference,
  /** Closure on another cable where this one is spliced on; null where it comes from the hub. */
  fromClosureId: reference.nullable(),
  /** Sheath length on the reel this cable is cut from. */
  reelLengthM: positive,
});

/** One step of a cable along the route: its sequence-th span, from the feed end. */
const cableRun = z.strictObject({
  id,
  cableId: reference,
  spanId: reference,
  sequence: ordinal,
  /** True where the cable enters the span at its far pole. */
  reversed: z.boolean(),
});

/** Cable waiting in a coil under the strand. */
const slack = z.strictObject({
  id,
  cableId: reference,
  spanId: reference,
  /** Hanging point from the span's first pole, m. */
  offsetM: amount,
  /** Sheath length in the coil, m. */
  storedM: positive,
  /** access coils feed a terminal's opening, storage coils wait for repairs. */
  kind: z.enum(["access", "storage"]),
  /** Terminal whose opening takes this coil; null for storage. */
  terminalId: reference.nullable(),
});

/** Splice closure on the strand. */
const closure = z.strictObject({
  id,
  name: label,
  cableId: reference,
  spanId: reference,
  offsetM: amount,
  note: words,
});

export const lineTables = {
  pole,
  attachment,
  span,
  crossing,
  groundPoint,
  structure,
  wireSag,
  guy,
  strandSection,
  cable,
  cableRun,
  slack,
  closure,
};
