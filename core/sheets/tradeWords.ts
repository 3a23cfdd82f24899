import type { Attachment, Crossing } from "../model/tables.ts";

/** What a crossing is called on a drawing. */
const crossingWords: Readonly<Record<Crossing["surface"], string>> = {
  road: "Road",
  highLoadRoad: "High-load road",
  driveway: "Drive",
  roadside: "Roadside",
  rail: "Rail",
  water: "Water",
  sailingWater: "Sailing water",
  pedestrian: "Path",
  field: "Field",
};

/** A crossing's trade word and its name; the name alone where it says the word itself. */
export function crossingName(surface: Crossing["surface"], name: string): string {
  const word = crossingWords[surface];
  if (name === "") return word;
  return name.toLowerCase().startsWith(word.toLowerCase()) ? name : `${word}: ${name}`;
}

/** What an attachment is called beside its owner's name; a communication line goes by its owner alone. */
export const attachmentWords: Readonly<Record<Attachment["kind"], string>> = {
  ourStrand: "strand",
  communication: "",
  neutral: "neutral",
  secondary: "secondary",
  primary: "primary",
  equipment: "equipment",
  streetLight: "street light",
  riser: "riser",
};
