import { companySetting, type Rule } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

export const builtBond: Rule = {
  id: "built-bond",
  title: "A bond conducts, and its ground is good enough",
  compares:
    "Continuity and resistance read at a bond, against a whole connection and the most resistance of the settings.",
  severity: "error",
  basis: companySetting("groundMaxOhm"),
  each: "reading",
  *check(plant, id) {
    const { kind, what, subjectId: poleId, value } = plant.rowOf("reading", id);
    const pole = plant.row("pole", poleId);
    if (kind !== "bond" || value === null || !pole) return;
    const limit = plant.settings().groundMaxOhm;
    const isBroken = what === "continuity" && value === 0;
    if (!isBroken && !(what === "resistance" && isOver(value, limit))) return;
    yield {
      subjects: [
        { table: "reading", id },
        { table: "pole", id: poleId },
      ],
      message: isBroken
        ? `The bond at pole ${pole.tag} does not conduct.`
        : `The ground at pole ${pole.tag} has more resistance than a bond may have.`,
      measured: isBroken ? null : value,
      limit: isBroken ? null : limit,
      unit: "ohm",
      fixes: [],
    };
  },
};
