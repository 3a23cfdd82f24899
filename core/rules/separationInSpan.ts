import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { type OtherParty, separationLimitFor, spanSeparations } from "../plant/separation.ts";
import { kindWords } from "../plant/thingWords.ts";
import { moveEndIntoRangeFixes } from "./attachmentFix.ts";
import { leaningWords, sagLeansOn } from "./leaningWords.ts";
import { catalogueBasis, type Hit } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

/** What is wrong between our strand and the wires of some parties in one span. */
export function* separationHits(plant: Plant, spanId: string, parties: readonly OtherParty[]): Iterable<Hit> {
  const separations = spanSeparations(plant, spanId);
  if (separations.kind === "unknown") return;
  for (const wire of separations.wires) {
    if (!parties.includes(wire.party)) continue;
    const limit = separationLimitFor(plant, wire.kept, "InSpan");
    if (!limit || !isUnder(wire.leastM, limit.limitM)) continue;
    const { owner, kind } = plant.rowOf("attachment", wire.fromAttachmentId);
    yield {
      subjects: [
        { table: "span", id: spanId },
        { table: "attachment", id: wire.fromAttachmentId },
        { table: "attachment", id: wire.toAttachmentId },
      ],
      message: `In span ${spanName(plant, spanId)} our strand comes too close to the ${kindWords(kind)} of ${owner || "an unknown owner"}, the ${wire.weAreAbove ? "strand at its largest sag" : wire.isSagAssumed ? "other wire at its assumed sag" : "other wire at its measured sag"}${leaningWords(sagLeansOn(plant, spanId, [wire.condition]))}.`,
      measured: wire.leastM,
      limit: limit.limitM,
      unit: "m",
      fixes: moveEndIntoRangeFixes(plant, spanId),
      basis: catalogueBasis(limit),
    };
  }
}
