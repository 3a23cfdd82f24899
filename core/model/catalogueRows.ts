import { z } from "zod";
import { clearanceTables } from "./clearanceRows.ts";
import { amount, basisFields, figure, fraction, id, label, ordinal, positive, reference, words } from "./fields.ts";
import { loadTables } from "./loadRows.ts";

/**
 * How strand is held at the poles between its dead ends. clamped: every span hangs by itself; slipping: it slides until all pull alike,
 * as their ruling span does.
 */
export const strandAtPoles = z.enum(["clamped", "slipping"]);

/** Steel strand as bought: what carries the route. */
const strandType = z.strictObject({
  id,
  name: label,
  diameterM: positive,
  weightNPerM: positive,
  areaM2: positive,
  modulusPa: positive,
  expansionPerC: positive,
  /** Rated breaking strength. */
  breakingN: positive,
  costPerM: amount,
  ...basisFields,
});

/** What becomes of the fiber beyond a cut. left: it stays dark; reused: a tap may send light on along it; chained: the layout hangs taps one behind the other on one fiber. */
export const deadLength = z.enum(["left", "reused", "chained"]);

/** Loose-tube fiber cable. */
const cableType = z.strictObject({
  id,
  name: label,
  fiberCount: ordinal,
  fibersPerTube: ordinal,
  diameterM: positive,
  weightNPerM: positive,
  /** Longest length delivered on one reel. */
  reelLengthM: positive,
  /** Fiber length over sheath length. */
  fiberExcessFrac: fraction,
  costPerM: amount,
  ...basisFields,
  /** Largest tension it may be pulled in with. */
  pullN: positive,
});

/** Splitter inside a terminal, its legs alike; an unequal tap lets the rest of the light go on along the fiber. */
const splitterType = z.strictObject({
  id,
  name: label,
  legCount: ordinal,
  /** Largest loss input to any leg, connectors not counted. */
  maxLossDb: amount,
  /** Loss to expect. */
  typicalLossDb: amount,
  ...basisFields,
  /** Loss to the fiber that goes on beyond the terminal; 0 where none does and the fiber ends here. */
  throughLossDb: amount,
});

/** A strand-mounted terminal as bought: its ports, its face and the splitters inside. */
const terminalModel = z.strictObject({
  id,
  name: label,
  portCount: ordinal,
  splitterTypeId: reference,
  splitterCount: ordinal,
  /** Ranks of ports on the face. */
  rankCount: ordinal,
  /** rank: numbers run along a rank, then the next; column: down the ranks, then along. */
  numbering: z.enum(["rank", "column"]),
  lengthM: positive,
  weightN: positive,
  cost: amount,
  ...basisFields,
});

/** Drop cable from a port to a living unit. */
const dropType = z.strictObject({
  id,
  name: label,
  weightNPerM: positive,
  attenuationDbPerKm: amount,
  costPerM: amount,
  /** Price of one drop whatever its length. */
  costEach: amount,
  ...basisFields,
});

/** Powers a class launches and bears at both ends, least and most; null where the document's figure is not known. */
export const powerColumns = [
  "hubLaunchLeastDbm",
  "hubLaunchMostDbm",
  "unitReceiveLeastDbm",
  "unitReceiveMostDbm",
  "unitLaunchLeastDbm",
  "unitLaunchMostDbm",
  "hubReceiveLeastDbm",
  "hubReceiveMostDbm",
] as const;

/** Light class of a passive optical network: both limits bind. */
const opticalClass = z.strictObject({
  id,
  system: label,
  name: label,
  minLossDb: amount,
  maxLossDb: positive,
  /** Living units one hub output may be split to. */
  maxSplitCount: ordinal,
  upNm: positive,
  downNm: positive,
  upDbPerKm: positive,
  downDbPerKm: positive,
  ...basisFields,
  /** Largest difference of loss between two units lit from one hub output. */
  differentialDb: positive,
  /** Longest fiber between hub and unit. */
  reachM: positive,
  hubLaunchLeastDbm: figure.nullable(),
  hubLaunchMostDbm: figure.nullable(),
  unitReceiveLeastDbm: figure.nullable(),
  unitReceiveMostDbm: figure.nullable(),
  unitLaunchLeastDbm: figure.nullable(),
  unitLaunchMostDbm: figure.nullable(),
  hubReceiveLeastDbm: figure.nullable(),
  hubReceiveMostDbm: figure.nullable(),
});

/** Parts counted in the bill of materials by what they go with. */
const hardware = z.strictObject({
  id,
  name: label,
  unit: label,
  /** What one lot of it goes with. */
  per: z.enum(["pole", "terminal", "drop", "coil", "closure", "deadEnd", "guy", "strandM", "cableM"]),
  quantity: positive,
  cost: amount,
  note: words,
  ...basisFields,
});

export const catalogueTables = {
  strandType,
  cableType,
  splitterType,
  terminalModel,
  dropType,
  ...clearanceTables,
  ...loadTables,
  opticalClass,
  hardware,
};
