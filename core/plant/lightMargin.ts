import { marginToMaxDb, marginToMinDb } from "../fiber/lossBudget.ts";
import { defineQuery } from "./plant.ts";
import { portLight } from "./portLight.ts";

/** What is left of the class's limits at a living unit, dB; below zero it is over. */
export type LightMargin =
  | {
      readonly kind: "known";
      /** To the most loss the class bears on each way, the company's margin taken off. */
      readonly upDb: number;
      readonly downDb: number;
      /** The lesser of both, and on which way. */
      readonly worstDb: number;
      readonly way: "up" | "down";
      /** Over the least loss the class asks for, or the receiver is overloaded; by the splitter's typical loss. */
      readonly overloadDb: number;
    }
  | { readonly kind: "unknown"; readonly why: string };

/** How far the light of a drop stays from both limits of its class. */
export const lightMargin = defineQuery("light-margin", (plant, dropId): LightMargin => {
  const light = portLight(plant, dropId);
  if (light.kind === "unknown") return light;
  const { minLossDb, maxLossDb } = plant.rowOf("opticalClass", light.opticalClassId);
  const { marginDb } = plant.settings();
  const upDb = marginToMaxDb(light.upDb + marginDb, maxLossDb);
  const downDb = marginToMaxDb(light.downDb + marginDb, maxLossDb);
  return {
    kind: "known",
    upDb,
    downDb,
    worstDb: Math.min(upDb, downDb),
    way: upDb <= downDb ? "up" : "down",
    overloadDb: marginToMinDb(light.leastDb, minLossDb),
  };
});
