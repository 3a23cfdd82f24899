import { crossingClearance } from "../../core/plant/clearance.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { indexMarks, type PlaceIndex } from "./placeIndex.ts";
import type { SpanFrame } from "./spanFrame.ts";
import { pointOfSpan, type SpanMarks } from "./spanMarks.ts";

export type CrossingMark = {
  readonly id: string;
  readonly eastM: number;
  readonly northM: number;
  readonly frame: SpanFrame;
  readonly widthM: number;
  /** The trade's word for it, and its own name where it has one. */
  readonly words: string;
  /** Least height of the line over it in any condition, m; null where nobody can tell. */
  readonly leastM: number | null;
};

export type CrossingMarks = { readonly marks: readonly CrossingMark[]; readonly index: PlaceIndex };

/** What the trade calls each surface on a drawing. */
export const surfaceWords = {
  road: "road",
  highLoadRoad: "high-load road",
  limitedAccessRoad: "limited-access road",
  driveway: "drive",
  roadside: "roadside",
  rail: "rail",
  water: "water",
  sailingWater: "sailing water",
  pedestrian: "path",
  field: "field",
} as const;

/** Crossings under the spans. */
export function crossingMarks(plant: Plant, spans: SpanMarks): CrossingMarks {
  const marks = [...plant.route().crossing.values()].map((crossing): CrossingMark => {
    const { eastM, northM, frame } = pointOfSpan(spans, crossing.spanId, crossing.offsetM);
    const word = surfaceWords[crossing.surface];
    const clearance = crossingClearance(plant, crossing.id);
    const isNamed = crossing.name !== "" && crossing.surface !== "driveway";
    return {
      id: crossing.id,
      eastM,
      northM,
      frame,
      widthM: crossing.widthM,
      words: isNamed ? namedWords(crossing.name, word) : word,
      leastM: clearance.kind === "known" ? clearance.leastM : null,
    };
  });
  return {
    marks,
    index: indexMarks(marks),
  };
}

function namedWords(name: string, word: string): string {
  return name.toLowerCase().includes(word) ? name : `${name}, ${word}`;
}
