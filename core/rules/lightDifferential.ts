import { isSpreadTooWide, lightSpread } from "../plant/lightSpread.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";

export const lightDifferential: Rule = {
  id: "light-differential",
  title: "Two living units of a hub output differ by no more loss than the class allows",
  compares:
    "The most loss to one living unit less the least to another lit from the same hub output, against the difference the optical class allows.",
  severity: "error",
  basis: { ...routeItself, document: "optical class of the feed" },
  each: "feed",
  *check(plant, id) {
    if (!isSpreadTooWide(plant, id)) return;
    const spread = lightSpread(plant, id);
    if (spread === null) return;
    const { name, opticalClassId } = plant.rowOf("feed", id);
    const { differentialDb, system, name: className, ...source } = plant.rowOf("opticalClass", opticalClassId);
    const drops = [spread.farDropId, spread.nearDropId];
    const [far, near] = drops.map(
      (dropId) => plant.rowOf("livingUnit", plant.rowOf("drop", dropId).livingUnitId).address,
    );
    yield {
      subjects: [{ table: "feed", id }, ...drops.map((dropId) => ({ table: "drop" as const, id: dropId }))],
      message: `${far} and ${near}, both lit by ${name}, differ in loss on the way ${spread.way} by more than ${system} ${className} allows.`,
      measured: spread.lossDb,
      limit: differentialDb,
      unit: "dB",
      fixes: [],
      basis: catalogueBasis(source),
    };
  },
};
