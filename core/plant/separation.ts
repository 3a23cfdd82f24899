import { type ClearanceCase, type ClearanceSurface, clearanceCases } from "../model/clearanceRows.ts";
import type { Attachment, ClearanceLimit } from "../model/tables.ts";
import { clearanceLimitFor } from "./clearance.ts";
import { leastAlong } from "./leastAlong.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { type HungState, spanSag, strandSagM } from "./spanSag.ts";
import { strandAtPole } from "./strandHeight.ts";

/** What our strand must keep away from. */
export type OtherParty = "supply" | "neutral" | "communication" | "streetLight" | "dripLoop";

/** What is told of another party's wire or equipment when it is asked how far away our strand must keep. */
type Kept = Pick<Attachment, "kind" | "voltageV" | "bonded">;

/**
 * What an attachment is to our strand; null for our own, and for what has no clearance of its own here. Equipment is supply's where it
 * has a voltage or is bonded to our messenger.
 */
export function partyOf({ kind, voltageV, bonded }: Kept): OtherParty | null {
  switch (kind) {
    case "primary":
    case "secondary":
      return "supply";
    case "equipment":
      return voltageV > 0 || bonded ? "supply" : null;
    case "neutral":
    case "supplyFiber":
      return "neutral";
    case "communication":
    case "streetLight":
    case "dripLoop":
      return kind;
    case "ourStrand":
    case "riser":
      return null;
  }
}

/** Whether our strand may be above another party's attachment as well as below it. */
export function mayBeOver(party: OtherParty): boolean {
  return party === "communication" || party === "streetLight";
}

/** Clearance surfaces that tell what must be kept from an attachment, the nearest first; the first one with a limit holds. */
function separationSurfaces({ kind, bonded }: Kept, where: "AtPole" | "InSpan"): readonly ClearanceSurface[] {
  switch (kind) {
    case "neutral":
    case "supplyFiber":
      return bonded ? [`neutral${where}`] : [`supply${where}`];
    case "equipment":
      return [...(bonded ? (["bondedEquipmentAtPole"] as const) : []), "equipmentAtPole", "supplyAtPole"];
    case "streetLight":
      return [...(bonded ? (["bondedStreetLightAtPole"] as const) : []), "streetLightAtPole"];
    case "dripLoop":
      return ["dripLoopAtPole"];
    case "communication":
      return [`communication${where}`];
    default:
      return [`supply${where}`];
  }
}

/**
 * What the clearance set asks between our strand and another party's wire or equipment: its strictest row, with what it asks more for a
 * voltage beyond the one it covers; undefined where the set has none.
 */
export function separationLimitFor(plant: Plant, other: Kept, where: "AtPole" | "InSpan"): ClearanceLimit | undefined {
  for (const surface of separationSurfaces(other, where)) {
    const limit = clearanceLimitFor(plant, surface);
    if (!limit) continue;
    return { ...limit, limitM: limit.limitM + Math.max(0, other.voltageV - limit.coversV) * limit.moreMPerV };
  }
  return undefined;
}

/** Our strand against one attachment of another party, at their pole. */
export type PoleSeparation = {
  readonly party: OtherParty;
  /** Height of the other above our strand, m; negative where it is below. */
  readonly aboveM: number;
  /** Our attachment; null where our strand's height was assumed. */
  readonly ourAttachmentId: string | null;
};

/**
 * Our strand against an attachment of another party; null where the pole carries no strand of ours, or the other has
 * no clearance here.
 */
export const poleSeparation = defineQuery("pole-separation", (plant, attachmentId): PoleSeparation | null => {
  const other = plant.rowOf("attachment", attachmentId);
  const party = partyOf(other);
  if (party === null || !carriesStrand(plant, other.poleId)) return null;
  const ours = nearestStrand(plant, other);
  return { party, aboveM: other.heightM - ours.heightM, ourAttachmentId: ours.attachmentId };
});

/** Our strand against one wire of another party in a span. */
type SpanSeparation = {
  readonly party: OtherParty;
  readonly fromAttachmentId: string;
  readonly toAttachmentId: string;
  /** The other wire as limits ask of it: the higher voltage of its two ends, bonded where both are. */
  readonly kept: Kept;
  /** Midspan sag of the other wire, m. */
  readonly otherSagM: number;
  /** True where nobody measured that sag. */
  readonly isSagAssumed: boolean;
  /** Sag of our strand where the two are nearest, in the case they are nearest in, m. */
  readonly ourSagM: number;
  /** The case they are nearest in, as our strand hangs. */
  readonly condition: ClearanceCase;
  /** True where our strand is the upper one. */
  readonly weAreAbove: boolean;
  /**
   * Least vertical distance between the poles, the upper wire at its largest sag and the lower one at stringing, m;
   * negative where they cross.
   */
  readonly leastM: number;
  /** Where that is, m from the span's first pole. */
  readonly atOffsetM: number;
};

export type SpanSeparations =
  | { readonly kind: "known"; readonly wires: readonly SpanSeparation[] }
  | { readonly kind: "unknown"; readonly why: string };

/**
 * Our strand against every wire of other parties in a span. Attachments of the same owner and kind at both poles make
 * a wire, the lowest with the lowest. Another party's wire hangs at its measured sag, else at the company's assumed one; supply and neutral are
 * taken as the upper wire, communication by its height at the poles.
 */
export const spanSeparations = defineQuery("span-separations", (plant, spanId): SpanSeparations => {
  const { fromPoleId, toPoleId, lengthM } = plant.rowOf("span", spanId);
  const wires = wiresBetween(plant, fromPoleId, toPoleId);
  const sag = spanSag(plant, spanId);
  if (sag.kind === "unknown") return sag;
  const measured = plant.where("wireSag", "spanId", spanId).map((id) => plant.rowOf("wireSag", id));
  const assumedSagM = plant.settings().otherWireSagFrac * lengthM;
  const ours = { fromM: strandAtPole(plant, fromPoleId).heightM, toM: strandAtPole(plant, toPoleId).heightM };
  const stops = [0, ...sag.hot.pointLoads.map((load) => load.atM).filter((atM) => atM > 0 && atM < lengthM), lengthM];
  return {
    kind: "known",
    wires: wires.map(({ party, from, to }) => {
      const weAreAbove = party === "communication" && ours.fromM + ours.toM > from.heightM + to.heightM;
      const other = measured.find((one) => one.owner === from.owner && one.kind === from.kind);
      const otherSagM = other?.sagM ?? assumedSagM;
      const aboveUsM = (atM: number, state: HungState) => {
        const part = atM / lengthM;
        const chordsM = from.heightM - ours.fromM + (to.heightM - from.heightM - ours.toM + ours.fromM) * part;
        return chordsM - 4 * otherSagM * part * (1 - part) + strandSagM(lengthM, state, atM);
      };
      const least = (weAreAbove ? clearanceCases : (["stringing"] as const))
        .map((condition) => ({
          condition,
          ...leastAlong(stops, (atM) => aboveUsM(atM, sag[condition]) * (weAreAbove ? -1 : 1)),
        }))
        .reduce((a, b) => (b.heightM < a.heightM ? b : a));
      return {
        party,
        fromAttachmentId: from.id,
        toAttachmentId: to.id,
        kept: {
          kind: from.kind,
          voltageV: Math.max(from.voltageV, to.voltageV),
          bonded: from.bonded && to.bonded,
        },
        weAreAbove,
        otherSagM,
        isSagAssumed: other === undefined,
        ourSagM: strandSagM(lengthM, sag[least.condition], least.offsetM),
        condition: least.condition,
        leastM: least.heightM,
        atOffsetM: least.offsetM,
      };
    }),
  };
});

/** Whether any span at the pole carries strand of ours. */
export function carriesStrand(plant: Plant, poleId: string): boolean {
  return [...plant.where("span", "fromPoleId", poleId), ...plant.where("span", "toPoleId", poleId)].some(
    (id) => plant.rowOf("span", id).strandSectionId !== null,
  );
}

/** Of several strands on a pole the one that comes nearest to the other party's attachment. */
function nearestStrand(plant: Plant, other: Attachment) {
  const ours = plant
    .whereAll("attachment", { poleId: other.poleId, kind: "ourStrand" })
    .map((id) => plant.rowOf("attachment", id))
    .sort((a, b) => Math.abs(other.heightM - a.heightM) - Math.abs(other.heightM - b.heightM))[0];
  return ours ? { heightM: ours.heightM, attachmentId: ours.id } : strandAtPole(plant, other.poleId);
}

/** What stands at a pole and does not run on to the next. */
const hasNoWire: ReadonlySet<Attachment["kind"]> = new Set(["equipment", "streetLight", "dripLoop"]);

type Wire = { readonly party: OtherParty; readonly from: Attachment; readonly to: Attachment };

function wiresBetween(plant: Plant, fromPoleId: string, toPoleId: string): Wire[] {
  const far = attachmentsUpwards(plant, toPoleId);
  const taken = new Set<string>();
  const wires: Wire[] = [];
  for (const from of attachmentsUpwards(plant, fromPoleId)) {
    const party = partyOf(from);
    if (party === null || hasNoWire.has(from.kind)) continue;
    const to = far.find((one) => !taken.has(one.id) && one.owner === from.owner && one.kind === from.kind);
    if (!to) continue;
    taken.add(to.id);
    wires.push({ party, from, to });
  }
  return wires;
}

function attachmentsUpwards(plant: Plant, poleId: string): Attachment[] {
  return plant
    .where("attachment", "poleId", poleId)
    .map((id) => plant.rowOf("attachment", id))
    .sort((a, b) => a.heightM - b.heightM || (a.id < b.id ? -1 : 1));
}
