import type { Plant } from "../plant/plant.ts";
import { mayBeOver, type OtherParty, partyOf, separationLimitFor, spanSeparations } from "../plant/separation.ts";
import { type HungState, spanSag, strandSagM } from "../plant/spanSag.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import type { Barred, Cause, HeightRule } from "./barred.ts";
import { type LeastPerShare, leastOf, leastPerShare } from "./leastPerShare.ts";
import { type SpanAtPole, spansAt, strandBendM } from "./spanAtPole.ts";

const atPoleRules = {
  supply: "supply-separation-at-pole",
  neutral: "supply-separation-at-pole",
  communication: "communication-separation-at-pole",
  streetLight: "street-light-separation",
  dripLoop: "street-light-separation",
} as const satisfies Record<OtherParty, HeightRule>;

/**
 * Heights at a pole too near another party's attachment on it. The space kept below supply and neutral is the communication worker
 * safety zone: our strand stays out of it.
 */
export function barredAtPole(plant: Plant, poleId: string): readonly Barred[] {
  return plant.where("attachment", "poleId", poleId).flatMap((id): Barred[] => {
    const other = plant.rowOf("attachment", id);
    const party = partyOf(other);
    const limit = party && separationLimitFor(plant, other, "AtPole");
    if (!limit) return [];
    const hasRoomAbove = mayBeOver(party);
    return [
      {
        aboveM: other.heightM - limit.limitM,
        belowM: hasRoomAbove ? other.heightM + limit.limitM : Number.POSITIVE_INFINITY,
        cause: {
          ruleId: atPoleRules[party],
          against: { table: "attachment", id },
          spanId: null,
          condition: null,
          limit,
          shares: { above: 1, below: hasRoomAbove ? 1 : null },
        },
      },
    ];
  });
}

/** Heights at a pole from which our strand comes too near another party's wire in a span beside it, both as they sag. */
export function barredInSpans(plant: Plant, poleId: string): readonly Barred[] {
  return spansAt(plant, poleId).flatMap((span): Barred[] => {
    const separations = spanSeparations(plant, span.spanId);
    const sag = spanSag(plant, span.spanId);
    if (separations.kind === "unknown" || sag.kind === "unknown") return [];
    const ourFarM = strandAtPole(plant, span.farPoleId).heightM;
    return separations.wires.flatMap(({ party, fromAttachmentId, toAttachmentId, otherSagM, kept }): Barred[] => {
      const limit = separationLimitFor(plant, kept, "InSpan");
      const ends = [fromAttachmentId, toAttachmentId].map((id) => plant.rowOf("attachment", id));
      const here = ends.find((one) => one.poleId === poleId);
      const there = ends.find((one) => one.poleId === span.farPoleId);
      if (!limit || !here || !there) return [];
      const other = { hereM: here.heightM, farGapM: there.heightM - ourFarM, sagM: otherSagM, limitM: limit.limitM };
      const isCommunication = party === "communication";
      const under = leastGap(span, other, sag.stringing, 1);
      const cause: Omit<Cause, "shares"> = {
        ruleId: isCommunication ? "communication-separation-in-span" : "supply-separation-in-span",
        against: { table: "attachment", id: here.id },
        spanId: span.spanId,
        condition: null,
        limit,
      };
      const [aboveM, above] = [under.leastM, under.share];
      if (!isCommunication)
        return [{ aboveM, belowM: Number.POSITIVE_INFINITY, cause: { ...cause, shares: { above, below: null } } }];
      const over = leastOf([sag.stringing, sag.hot, sag.iced].map((state) => leastGap(span, other, state, -1)));
      const [belowM, below] = [-over.leastM, over.share];
      const evenM = other.hereM + other.farGapM; // above this our strand is the upper one over the span as a whole
      const shares = { above: aboveM <= evenM ? above : null, below: belowM >= evenM ? below : null };
      return [{ aboveM: Math.min(aboveM, evenM), belowM: Math.max(belowM, evenM), cause: { ...cause, shares } }];
    });
  });
}

/** Another party's wire as a span at our pole sees it. */
export type OtherWire = {
  readonly hereM: number;
  /** Their wire over our strand at the far pole, m. */
  readonly farGapM: number;
  readonly sagM: number;
  readonly limitM: number;
};

/** Least gap to their wire beyond the limit over the share of this pole, our strand at height 0 here, m; `side` 1 where theirs is above. */
export function leastGap(
  { lengthM, shareAt }: SpanAtPole,
  other: OtherWire,
  state: HungState,
  side: 1 | -1,
): LeastPerShare {
  const spareAt = (offsetM: number) => {
    const share = shareAt(offsetM);
    const theirSagM = 4 * other.sagM * share * (1 - share);
    const aboveUsM =
      other.hereM * share + other.farGapM * (1 - share) - theirSagM + strandSagM(lengthM, state, offsetM);
    return { share, spareM: side * aboveUsM - other.limitM };
  };
  const loadsM = state.pointLoads.map(({ atM }) => atM).filter((atM) => atM > 0 && atM < lengthM);
  const stops = [0, ...loadsM.sort((a, b) => a - b), lengthM];
  const bendM = side * (4 * other.sagM - strandBendM(lengthM, state));
  return leastOf(stops.slice(1).map((toM, index) => leastPerShare([spareAt(stops[index] ?? 0), spareAt(toM)], bendM)));
}
