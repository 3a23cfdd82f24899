import { z } from "zod";
import { deadLength, strandAtPoles } from "./catalogueRows.ts";
import { lineSurfaces } from "./clearanceRows.ts";
import { closeoutLimits } from "./closeoutRows.ts";
import { drawingStyle } from "./drawingStyle.ts";
import {
  amount,
  basisFields,
  count,
  figure,
  fraction,
  id,
  label,
  ordinal,
  positive,
  reference,
  words,
} from "./fields.ts";
import { paperNames } from "./paperNames.ts";

/** The one row of settings: the company's own standards for this route. */
export const settings = z.strictObject({
  id: z.literal("settings"),
  routeName: label,
  project: words,
  place: words,
  county: words,
  company: words,
  unitSystem: z.enum(["us", "metric"]),
  /** Origin of the route's grid; null where the route came in on a local grid of its own. */
  originLonDeg: figure.nullable(),
  originLatDeg: figure.nullable(),
  datum: words,
  /** Terminal from the pole's centre line. */
  standoffM: positive,
  /** Half width of the climbing space, from the pole's centre line; a terminal's near end stays out of it. */
  climbingSpaceM: amount,
  /** Two things hung on one strand keep this far apart, end to end. */
  hangingGapM: amount,
  /** Sheath opened at a terminal. */
  openingM: positive,
  /** Sheath waiting in the coil at a terminal: a coil as long as the opening, doubled. */
  accessSlackM: positive,
  dropReachM: positive,
  /** Sheath added to the drawn drop: down the house and inside. */
  dropAllowanceM: amount,
  sparePortCount: count,
  spareFiberPerTubeCount: count,
  strandHeightM: positive,
  clearanceSetId: reference,
  strengthSetId: reference,
  loadingDistrictId: reference,
  strandTypeId: reference,
  dropTypeId: reference,
  opticalClassId: reference,
  stringingSagFrac: fraction,
  stringingDegC: figure,
  /** What the ground under a span counts as where no crossing says otherwise. */
  groundSurface: z.enum(lineSurfaces).exclude(["limitedAccessRoad"]),
  /** A strand may turn by this at a pole without a guy. */
  unguyedAngleRad: amount,
  /** Lowest height on a pole where our strand may be attached. */
  usableFromM: amount,
  /** Kept free at the top of a pole. */
  poleTopGapM: amount,
  /** How far our sag may differ from that of a neighbour's line, over the neighbour's. */
  sagMatchFrac: fraction,
  /** Sag of a drop over its run. */
  dropSagFrac: fraction,
  /** Sag assumed for other parties' wires, over span length. */
  otherWireSagFrac: fraction,
  spliceLossDb: amount,
  connectionLossDb: amount,
  marginDb: amount,
  minSpanM: positive,
  maxSpanM: positive,
  /** Weight of the lashing wire along the span. */
  lashingNPerM: amount,
  /** More of lengths and hardware than drawn, for waste. */
  billAllowanceFrac: fraction,
  /** How new strand is held at the poles between its dead ends. */
  strandAtPoles,
  /** Whether fiber beyond a cut is used again. */
  deadLength,
  /** Cases beyond the district's load; null where the route is not checked under them. */
  extremeWindId: reference.nullable(),
  extremeIceId: reference.nullable(),
  /** A person with chair and tools on the strand; 0 where that is not checked. */
  workerLoadN: amount,
  /** The company's own notes for its drawings, one a line. */
  generalNotes: words,
  /** A line of the title block for what the company or a permit asks, such as a drawing or permit number. */
  titleLine: words,
  /** Kinds of sheets the company does without, with commas between them. */
  sheetsLeftOut: words,
  /** What its sets are drawn on; usual: what an office printer of the country takes at most. */
  paper: z.enum(["usual", ...paperNames]),
  ...closeoutLimits,
  ...drawingStyle,
  /** More terminals, and pieces at guys such as anchors, than drawn, as spares. */
  pieceAllowanceFrac: fraction,
});

/** Where a company's own value of a standard was read: one row a column of the settings that somebody gave a source. */
const settingBasis = z.strictObject({
  /** The column. */
  id,
  ...basisFields,
});

/** An issued state of the drawings. What it looked like is kept by the journal: the route as of the edit that brought this row in. */
const revision = z.strictObject({
  id,
  letter: label,
  dateIso: label,
  by: words,
  checkedBy: words,
  reason: words,
  /** Place in the order of issue, from 1. */
  number: ordinal,
  /** Who approved it and when; empty while nobody has. */
  approvedBy: words,
  approvedIso: words,
  /** Who took it out of use, when and why; empty while it is in use. */
  voidedBy: words,
  voidedIso: words,
  voidReason: words,
});

/** A finding a person accepted, with the reason; it prints on the drawings. */
const waiver = z.strictObject({
  id,
  ruleId: label,
  /** The finding's subjects, sorted and joined by a space. */
  subjects: label,
  reason: label,
  by: label,
  atIso: label,
});

export const officeTables = { settings, settingBasis, revision, waiver };
