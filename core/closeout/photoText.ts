import type { Row } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";

/** What a photo shows, in words: when it was taken and what was written to it, or the punch item it is of. */
export function photoText(plant: Plant, photo: Row<"photo">): string {
  const punch = punchShown(plant, photo);
  if (punch) return `Punch item ${punch.number}, ${mendedWords[photo.moment]}: ${punch.what}`;
  return [momentWords[photo.moment], photo.caption].filter((one) => one !== "").join(": ");
}

/** The punch item a photo shows before or after it was mended; undefined where it shows none. */
export function punchShown(plant: Plant, { id, moment }: Row<"photo">): Row<"punch"> | undefined {
  const ending = ` ${moment}`;
  return id.endsWith(ending) ? plant.row("punch", id.slice(0, -ending.length)) : undefined;
}

const momentWords = { before: "Before the work", built: "As built", after: "After the work" } as const;
const mendedWords = { before: "before it was mended", built: "as built", after: "after it was mended" } as const;
