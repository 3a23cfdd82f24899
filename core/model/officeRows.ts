import { z } from "zod";
import { amount, count, figure, fraction, id, label, positive, reference, words } from "./fields.ts";

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
  loadingDistrictId: reference,
  strandTypeId: reference,
  dropTypeId: reference,
  opticalClassId: reference,
  stringingSagFrac: fraction,
  stringingDegC: figure,
  /** Largest strand tension under the district load over rated breaking strength. */
  maxStrandFrac: fraction,
  /** Sag assumed for other parties' wires, over span length. */
  otherWireSagFrac: fraction,
  spliceLossDb: amount,
  connectionLossDb: amount,
  marginDb: amount,
  minSpanM: positive,
  maxSpanM: positive,
  /** Weight of the lashing wire along the span. */
  lashingNPerM: amount,
  billAllowanceFrac: fraction,
});

/** An issued state of the drawings. */
const revision = z.strictObject({
  id,
  letter: label,
  dateIso: label,
  by: words,
  checkedBy: words,
  reason: words,
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

export const officeTables = { settings, revision, waiver };
