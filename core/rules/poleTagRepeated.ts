import { freeTag } from "./freeTag.ts";
import { type Rule, routeItself } from "./rule.ts";

export const poleTagRepeated: Rule = {
  id: "pole-tag-repeated",
  title: "Every pole has a tag of its own",
  compares: "How many poles have one and the same tag, against one.",
  severity: "error",
  basis: routeItself,
  each: "pole",
  *check(plant, id) {
    const { tag } = plant.rowOf("pole", id);
    const same = plant.where("pole", "tag", tag);
    const last = same.at(-1);
    if (same.length < 2 || same[0] !== id || last === undefined) return;
    const newTag = freeTag(tag, (text) => plant.where("pole", "tag", text).length > 0);
    yield {
      subjects: same.map((one) => ({ table: "pole", id: one })),
      message: `More than one pole has the tag ${tag}.`,
      measured: same.length,
      limit: 1,
      unit: "",
      fixes: [{ label: `Call the last one ${newTag}`, command: "pole.rename", input: { poleId: last, tag: newTag } }],
    };
  },
};
