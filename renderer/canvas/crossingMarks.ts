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
  stateHighway: "state highway",
  limitedAccessRoad: "limited-access road",
  driveway: "drive",
  homeDriveway: "residential drive",
  alongStreet: "along a street",
  alongRoad: "along a country road",
  roadside: "roadside",
  rail: "rail",
  trolley: "trolley rail",
  water: "water",
  sailingWater20: "sailing water, under 20 acres",
  sailingWater200: "sailing water, 20 to 200 acres",
  sailingWater2000: "sailing water, 200 to 2000 acres",
  sailingWater: "sailing water, over 2000 acres",
  launch20: "boat launch, water under 20 acres",
  launch200: "boat launch, water of 20 to 200 acres",
  launch2000: "boat launch, water of 200 to 2000 acres",
  launch: "boat launch, water over 2000 acres",
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
