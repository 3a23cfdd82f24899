import type { Attachment } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { type OtherParty, partyOf, spanSeparations } from "../plant/separation.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { spansAt } from "./spanAtPole.ts";

/** Something on a pole that must keep apart from others: our strand, or another party's attachment. */
export type PoleWire = {
  readonly party: OtherParty | "ours";
  /** Present height above the ground, m. */
  readonly heightM: number;
  /** Null for our strand. */
  readonly attachment: Attachment | null;
  /** Spans beside the pole that it runs through, with its height above the ground at the far pole and its midspan sag, m. */
  readonly spans: ReadonlyMap<string, { readonly farM: number; readonly sagM: number }>;
};

/** Our strand on a pole. */
export function ourWire(plant: Plant, poleId: string): PoleWire {
  const ends = spansAt(plant, poleId).map(({ spanId, farPoleId }) => {
    return [spanId, { farM: strandAtPole(plant, farPoleId).heightM, sagM: 0 }] as const; // our sag goes by the case
  });
  return { party: "ours", heightM: strandAtPole(plant, poleId).heightM, attachment: null, spans: new Map(ends) };
}

/** Every other attachment on a pole that must keep apart, upwards; the sag of its wires measured, else the company's assumption. */
export function otherWires(plant: Plant, poleId: string): readonly PoleWire[] {
  const inSpans = spansAt(plant, poleId).flatMap(({ spanId, farPoleId }) => {
    const separations = spanSeparations(plant, spanId);
    if (separations.kind === "unknown") return [];
    return separations.wires.flatMap(({ fromAttachmentId, toAttachmentId, otherSagM: sagM }) => {
      const ends = [fromAttachmentId, toAttachmentId].map((id) => plant.rowOf("attachment", id));
      const far = ends.find((one) => one.poleId === farPoleId);
      return far ? [{ spanId, ids: [fromAttachmentId, toAttachmentId], end: { farM: far.heightM, sagM } }] : [];
    });
  });
  return plant
    .where("attachment", "poleId", poleId)
    .flatMap((id): PoleWire[] => {
      const attachment = plant.rowOf("attachment", id);
      const party = partyOf(attachment);
      if (party === null) return [];
      const spans = new Map(inSpans.filter(({ ids }) => ids.includes(id)).map(({ spanId, end }) => [spanId, end]));
      return [{ party, heightM: attachment.heightM, attachment, spans }];
    })
    .sort((a, b) => a.heightM - b.heightM);
}
