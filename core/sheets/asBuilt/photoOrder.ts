import { builtThings } from "../../closeout/board.ts";
import { punchShown } from "../../closeout/photoText.ts";
import { subjectKey } from "../../closeout/subject.ts";
import { thingName } from "../../closeout/thingName.ts";
import type { Row } from "../../model/tables.ts";
import type { Plant } from "../../plant/plant.ts";
import { byText } from "../../plant/sorting.ts";

type Photo = Row<"photo">;

const moments = ["before", "built", "after"] as const satisfies readonly Photo["moment"][];

/**
 * Every photo in order along the route, strand and cable at the end; those of one punch item, before and after it was mended, as one
 * group, every other by itself.
 */
export function photoGroups(plant: Plant): readonly (readonly Photo[])[] {
  const places = new Map(builtThings(plant).map(({ subject }, at) => [subjectKey(subject), at]));
  const placeOf = (one: Photo) => places.get(subjectKey(one)) ?? places.size;
  const inOrder = plant
    .all("photo")
    .map((id) => plant.rowOf("photo", id))
    .sort(
      (a, b) =>
        placeOf(a) - placeOf(b) ||
        byText(thingName(plant, a), thingName(plant, b)) ||
        moments.indexOf(a.moment) - moments.indexOf(b.moment) ||
        byText(a.atIso, b.atIso) ||
        byText(a.id, b.id),
    );
  const groups = new Map<string, Photo[]>();
  for (const one of inOrder) {
    const key = punchShown(plant, one)?.id ?? one.id;
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return [...groups.values()];
}
