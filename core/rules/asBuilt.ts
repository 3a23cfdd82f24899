import { builtPlant } from "../closeout/builtPlant.ts";
import { thingName } from "../closeout/thingName.ts";
import type { Plant } from "../plant/plant.ts";
import { drawAsBuilt } from "./builtReading.ts";
import { drawAsBuiltFix } from "./drawAsBuiltFix.ts";
import { type Finding, subjectsText } from "./finding.ts";
import type { Fix, Hit, Rule } from "./rule.ts";

/**
 * A rule of the design asked again of the route as built. It finds what the rule does not find on the drawing, or finds less bad there, and
 * lays it to the readings behind it, which come first among its subjects.
 *
 * @param readingsBehind  ids of the readings by which what the rule asks about a row is not as drawn; where there are none it is not asked
 */
export function asBuilt(rule: Rule, readingsBehind: (plant: Plant, id: string) => readonly string[]): Rule {
  return {
    ...rule,
    id: `${prefix}${rule.id}`,
    title: `As built: ${lowered(rule.title)}`,
    compares: `With what was read in place of what was drawn: ${lowered(rule.compares)}`,
    *check(plant, id) {
      const readingIds = readingsBehind(plant, id);
      if (readingIds.length === 0) return;
      const drawn = new Map([...rule.check(plant, id)].map((hit) => [subjectsText(hit.subjects), hit]));
      for (const hit of rule.check(builtPlant(plant), id)) {
        if (!isWorse(hit, drawn.get(subjectsText(hit.subjects)))) continue;
        yield {
          ...hit,
          subjects: [...readingIds.map((one) => ({ table: "reading", id: one }) as const), ...hit.subjects],
          message: builtMessage(plant, readingIds, hit.message),
          fixes: fixesOf(plant, readingIds),
        };
      }
    },
  };
}

/** The finding of the design's own rule that a finding as built repeats, without the readings behind it; null where it is of no such rule. */
export function repeatedFinding({ ruleId, subjects }: Pick<Finding, "ruleId" | "subjects">) {
  if (!ruleId.startsWith(prefix) || subjects[0]?.table !== "reading") return null;
  return { ruleId: ruleId.slice(prefix.length), subjects: subjects.filter((one) => one.table !== "reading") };
}

const prefix = "built-";

/** Worse by less is not told apart from the drawing, m: finer than a height is printed. */
const noiseM = 0.005;

function isWorse(built: Hit, drawn: Hit | undefined): boolean {
  return drawn === undefined || lackingM(built) > lackingM(drawn) + noiseM;
}

function lackingM({ measured, limit }: Hit): number {
  return Math.abs((measured ?? 0) - (limit ?? 0));
}

function builtMessage(plant: Plant, readingIds: readonly string[], message: string): string {
  const names = [...new Set(readingIds.map((id) => thingName(plant, plant.rowOf("reading", id))))];
  const place = `at ${[names.slice(0, -1).join(", "), names.at(-1)].filter((one) => one !== "").join(" and ")}`;
  const told = lowered(message);
  return `As built ${told.startsWith(`${place} `) ? told : `${place}, ${told}`}`;
}

/** One edit for each reading: what each draws is named where there are several. */
function fixesOf(plant: Plant, readingIds: readonly string[]): readonly Fix[] {
  return readingIds.flatMap((id) => {
    const name = thingName(plant, plant.rowOf("reading", id));
    return drawAsBuiltFix(plant, id, readingIds.length === 1 ? drawAsBuilt : `${drawAsBuilt}: ${name}`);
  });
}

function lowered(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}
