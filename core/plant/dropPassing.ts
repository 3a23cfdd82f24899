import type { DropSurface } from "../model/clearanceRows.ts";
import type { DropPassing, LivingUnit } from "../model/tables.ts";
import { type Point, planeDistanceM, pointOnSpan, segmentsCross, spanEnds } from "./geometry.ts";
import { defineQuery, defineSteadyQuery, type Plant } from "./plant.ts";
import { surfaceWords } from "./thingWords.ts";

/** Something a drop passes over, under a row of the catalogue that says whether it may. */
export type Passed = {
  readonly surface: DropSurface;
  readonly name: string;
  readonly rule: DropPassing;
};

/** What lies under a span and is minded when a drop passes it: its middle line, level across the span. */
type Axis = {
  readonly name: string;
  readonly ruleId: string;
  readonly from: Point;
  readonly to: Point;
};

/** Rows of the catalogue by surface that forbid a drop or ask a price for it. */
const mindedRules = defineQuery(
  "drop-passing-rules",
  (plant): ReadonlyMap<DropSurface, DropPassing> =>
    new Map(
      plant
        .all("dropPassing")
        .map((id) => plant.rowOf("dropPassing", id))
        .filter((one) => one.passing === "forbidden" || one.costEach > 0)
        .map((one) => [one.surface, one]),
    ),
);

/** The middle lines as text: drops are asked again only when one of them lies elsewhere. */
const axesText = defineSteadyQuery("drop-passing-axes-text", (plant) => {
  const minded = mindedRules(plant, "");
  const reachM = plant.settings().dropReachM;
  const axes = plant.all("crossing").flatMap((id): Axis[] => {
    const { spanId, offsetM, surface, name } = plant.rowOf("crossing", id);
    const rule = minded.get(surface);
    return rule ? [{ name, ruleId: rule.id, ...acrossSpan(plant, spanId, offsetM, reachM) }] : [];
  });
  return JSON.stringify(axes);
});

const axes = defineQuery(
  "drop-passing-axes",
  (plant): readonly Axis[] => JSON.parse(axesText(plant, "")), // written just above
);

/**
 * What a drop from a place to a living unit passes over that the catalogue forbids or asks a price for, each surface once.
 *
 * Told of the unit itself: what lies nearer to it than the drop is long. Told of the spans: what lies under one is taken to run on straight
 * across it, as far as a drop reaches to either side; where it bends, or meets the span at a slant, only the unit's own rows can say so.
 */
export function passedOver(plant: Plant, from: Point, unit: LivingUnit): readonly Passed[] {
  const minded = mindedRules(plant, "");
  if (minded.size === 0) return [];
  const runM = planeDistanceM(from, unit);
  const passed = new Map<DropSurface, Passed>();
  for (const id of plant.where("dropCrossing", "livingUnitId", unit.id)) {
    const { surface, name, fromUnitM } = plant.rowOf("dropCrossing", id);
    const rule = minded.get(surface);
    if (rule && fromUnitM < runM) passed.set(surface, { surface, name, rule });
  }
  for (const axis of axes(plant, "")) {
    const rule = plant.row("dropPassing", axis.ruleId);
    if (!rule || passed.has(rule.surface) || !segmentsCross({ from, to: unit }, axis)) continue;
    passed.set(rule.surface, { surface: rule.surface, name: axis.name, rule });
  }
  return [...passed.values()];
}

/** What is passed that must not be; null where a drop may go this way. */
export function forbiddenOver(plant: Plant, from: Point, unit: LivingUnit): Passed | null {
  return passedOver(plant, from, unit).find(({ rule }) => rule.passing === "forbidden") ?? null;
}

/** What is passed in a sentence: "Mill Road (road)", or "road" where it has no name. */
export function passedWords({ name, surface }: Passed): string {
  return name === "" ? surfaceWords(surface) : `${name} (${surfaceWords(surface)})`;
}

/** Price of a drop from a place to a living unit beside its cable: what it passes over. */
export function passingCost(plant: Plant, from: Point, unit: LivingUnit): number {
  return passedOver(plant, from, unit).reduce((sum, { rule }) => sum + rule.costEach, 0);
}

function acrossSpan(plant: Plant, spanId: string, offsetM: number, reachM: number) {
  const middle = pointOnSpan(plant, spanId, offsetM);
  const { from, to } = spanEnds(plant, spanId);
  const longM = planeDistanceM(from, to);
  const eastM = longM > 0 ? (-(to.northM - from.northM) / longM) * reachM : 0;
  const northM = longM > 0 ? ((to.eastM - from.eastM) / longM) * reachM : 0;
  return {
    from: { eastM: middle.eastM - eastM, northM: middle.northM - northM },
    to: { eastM: middle.eastM + eastM, northM: middle.northM + northM },
  };
}
