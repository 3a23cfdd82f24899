import { type Differential, differential } from "../fiber/lightBudget.ts";
import { dropsOfFeed } from "./feedView.ts";
import { defineQuery, defineSteadyQuery } from "./plant.ts";
import { portLight } from "./portLight.ts";

/** The two drops of a hub output whose losses differ most. */
export type LightSpread = Pick<Differential, "lossDb" | "way"> & {
  readonly farDropId: string;
  readonly nearDropId: string;
};

/** How far the losses of the drops a hub output lights lie apart; null where it lights fewer than two whose light is known. */
export const lightSpread = defineQuery("light-spread", (plant, feedId): LightSpread | null => {
  const lit = dropsOfFeed(plant, feedId).flatMap((dropId) => {
    const light = portLight(plant, dropId);
    if (light.kind === "unknown") return [];
    return [{ dropId, most: { upDb: light.upDb, downDb: light.downDb }, least: light.least }];
  });
  const widest = differential(lit);
  if (widest === null) return null;
  const dropAt = (index: number) => lit[index]?.dropId ?? "";
  const { lossDb, way, far, near } = widest;
  return { lossDb, way, farDropId: dropAt(far), nearDropId: dropAt(near) };
});

/** Whether two drops of a hub output lie farther apart than its class allows; steady, as the verdict on one drop's light is. */
export const isSpreadTooWide = defineSteadyQuery("spread-too-wide", (plant, feedId): boolean => {
  const { differentialDb } = plant.rowOf("opticalClass", plant.rowOf("feed", feedId).opticalClassId);
  return (lightSpread(plant, feedId)?.lossDb ?? 0) > differentialDb + noiseDb;
});

/** Noise of sums, so that a difference that equals what is allowed is not over it. */
const noiseDb = 5e-10;
