import { builtLine, raisedAtPoleM } from "../closeout/builtLine.ts";
import type { ClearanceSurface } from "../model/clearanceRows.ts";
import {
  type Clearance,
  clearanceOver,
  crossingPassage,
  groundPassage,
  type Hung,
  type Passage,
  type Unknown,
} from "../plant/clearance.ts";
import { spansAtPole } from "../plant/geometry.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { mayBeOver, partyOf, separationLimitFor } from "../plant/separation.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { structurePassage, structureSurfaces } from "../plant/structureClearance.ts";
import { kindWords } from "../plant/thingWords.ts";
import { drawAsBuilt, figureRead } from "./builtReading.ts";
import { clearanceHit } from "./clearanceHit.ts";
import { catalogueBasis, type Hit, type Rule, routeItself, type Subject } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

export const builtHeight: Rule = {
  id: "built-height",
  title: "The line clears what is under and beside it with the heights as built",
  compares:
    "The clearances of the line in the spans at a pole and beside other parties there, with the height read in place of the drawn one, against the clearance set.",
  severity: "error",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "reading",
  *check(plant, id) {
    const reading = figureRead(plant, id, { kind: "pole", what: "height" });
    if (!reading || Math.abs(raisedAtPoleM(plant, reading.subjectId)) < noiseM) return;
    const { subjectId: poleId, value } = reading;
    const { attachmentId } = strandAtPole(plant, poleId);
    const fixes =
      attachmentId === null
        ? []
        : [{ label: drawAsBuilt, command: "attachment.set", input: { attachmentId, heightM: value } }];
    const about = { readingId: id, place: `As built at pole ${plant.rowOf("pole", poleId).tag}` };
    for (const hit of [
      ...spansAtPole(plant, poleId).flatMap((spanId) => underSpan(plant, spanId, about)),
      ...atPole(plant, poleId, value, about),
    ])
      yield { ...hit, fixes };
  },
};

/** A reading that differs by no more than the noise of units is as drawn. */
const noiseM = 5e-4;

type About = { readonly readingId: string; readonly place: string };

function underSpan(plant: Plant, spanId: string, { readingId, place }: About): readonly Hit[] {
  if (plant.rowOf("span", spanId).strandSectionId === null) return [];
  const line = builtLine(plant, spanId);
  if (!line) return [];
  const hits = (
    surface: ClearanceSurface,
    passage: Passage | Unknown | null,
    over: string,
    subject: Subject,
  ): readonly Hit[] => {
    if (passage === null) return [];
    const about = {
      place: `${place}, over ${over} in span ${spanName(plant, spanId)}`,
      spanId,
      subjects: [{ table: "reading" as const, id: readingId }, subject],
    };
    const hit = clearanceHit(plant, surface, clearanceOf(line, passage), about);
    return hit ? [hit] : [];
  };
  const crossings = plant.where("crossing", "spanId", spanId).flatMap((id) => {
    const { surface, name } = plant.rowOf("crossing", id);
    return hits(surface, crossingPassage(plant, id), name || `the ${surface}`, { table: "crossing", id });
  });
  const structures = plant.where("structure", "spanId", spanId).flatMap((id) => {
    const { kind, name, besideM, bottomM } = plant.rowOf("structure", id);
    if (besideM > 0 || bottomM !== null) return [];
    return hits(structureSurfaces(kind).over, structurePassage(plant, id), name || `the ${kind}`, {
      table: "structure",
      id,
    });
  });
  const ground = hits(plant.settings().groundSurface, groundPassage(plant, spanId), "the ground", {
    table: "span",
    id: spanId,
  });
  return [...crossings, ...structures, ...ground];
}

function clearanceOf(line: Hung, passage: Passage | Unknown): Clearance {
  return passage.kind === "unknown" ? passage : clearanceOver(line, passage);
}

function atPole(plant: Plant, poleId: string, heightM: number, { readingId, place }: About): readonly Hit[] {
  return plant.where("attachment", "poleId", poleId).flatMap((id): readonly Hit[] => {
    const other = plant.rowOf("attachment", id);
    const party = partyOf(other);
    const limit = party === null ? undefined : separationLimitFor(plant, other, "AtPole");
    if (party === null || !limit) return [];
    const aboveM = other.heightM - heightM;
    const measured = mayBeOver(party) ? Math.abs(aboveM) : aboveM;
    if (!isUnder(measured, limit.limitM)) return [];
    return [
      {
        subjects: [
          { table: "reading", id: readingId },
          { table: "attachment", id },
        ],
        message: `${place} our strand is too near the ${kindWords(other.kind)} of ${other.owner || "an unknown owner"}.`,
        measured,
        limit: limit.limitM,
        unit: "m",
        fixes: [],
        basis: catalogueBasis(limit),
      },
    ];
  });
}
