/** What an instrument recorded of one fiber. What could not be read is null or missing, and told in `damages`. */
export type Trace = {
  /** Issue of the layout, as the file writes it: 1.10, 2.00. */
  readonly version: string;
  readonly general: TraceGeneral | null;
  readonly supplier: TraceSupplier | null;
  readonly fixed: TraceFixed | null;
  readonly events: readonly TraceEvent[];
  readonly link: TraceLink | null;
  readonly points: TracePoints | null;
  readonly checksum: TraceChecksum;
  /** Blocks of the makers' own, by name; kept unread. */
  readonly otherBlocks: readonly string[];
  readonly damages: readonly Damage[];
};

/** Whose fiber it is, as the person at the instrument wrote it. */
export type TraceGeneral = {
  readonly cableId: string;
  readonly fiberId: string;
  readonly wavelengthNm: number;
  readonly locationA: string;
  readonly locationB: string;
  readonly cableCode: string;
  /** BC as built, CC current, RC repaired, NC new, OT other; as the file has it. */
  readonly condition: string;
  readonly operator: string;
  readonly comment: string;
};

export type TraceSupplier = {
  readonly supplier: string;
  readonly instrument: string;
  readonly serial: string;
  readonly software: string;
};

/** How the trace was taken. */
export type TraceFixed = {
  /** Seconds since 1970-01-01 UTC, by the instrument's clock. */
  readonly takenUnixS: number;
  readonly wavelengthNm: number;
  readonly pulseWidthNs: number;
  /** Time from one point to the next, one way, s. */
  readonly spacingS: number;
  readonly groupIndex: number;
  readonly backscatterDb: number;
  readonly averageCount: number;
  readonly lossThresholdDb: number;
  readonly reflectanceThresholdDb: number;
  readonly endThresholdDb: number;
};

export type TraceEvent = {
  readonly number: number;
  /** Light's way to it, one way, s. */
  readonly timeS: number;
  readonly distanceM: number;
  /** Negative where the trace rises. */
  readonly spliceLossDb: number;
  /** Null where the instrument did not tell. */
  readonly reflectanceDb: number | null;
  /** Of the fiber before the event. */
  readonly slopeDbPerKm: number;
  /** Kind, how it was found, landmark and loss method, as the file has them. */
  readonly code: string;
  readonly comment: string;
};

/** The whole way as the instrument sums it up. */
export type TraceLink = { readonly totalLossDb: number; readonly returnLossDb: number };

/** The curve: level of each point below the top of the scale, dB, `spacingM` apart. */
export type TracePoints = { readonly spacingM: number; readonly levelsDb: Float64Array };

/** Some instruments write a sum by a rule of their own: one that does not fit is a warning, never a refusal. */
export type TraceChecksum = {
  readonly stored: number | null;
  readonly computed: number | null;
  readonly fits: boolean;
};

/** Something of the file that could not be read. */
export type Damage = { readonly block: string; readonly what: string };

/** Speed of light in vacuum, m/s, exact. */
const lightMPerS = 299_792_458;

/**
 * How far light goes along a fiber in a time, one way.
 *
 * @param timeS       s
 * @param groupIndex  over 0
 * @returns m
 * @source t c / n
 */
export function distanceM(timeS: number, groupIndex: number): number {
  return (timeS * lightMPerS) / groupIndex;
}
