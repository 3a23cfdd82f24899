import { useEffect, useMemo } from "react";
import type { Plant } from "../../core/plant/plant.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { inSlices } from "../app/slices.ts";
import { useSession, useView } from "../app/useSession.ts";
import { type LightSeen, reckonLight, type SeenLight } from "./lightSeen.ts";

/** How often the diagram takes in what is reckoned meanwhile, ms. */
const takeInMs = 300;

/** Reckons the light of the whole route for the diagram, in slices; answers with how much of it is reckoned, 0 to 1. */
export function useReckonedLight({ plant, route }: OpenRoute, terminalIds: readonly string[]): number {
  const session = useSession();
  const seen = useMemo(() => emptyFor(plant), [plant]);
  useEffect(() => {
    let beforeMs = performance.now();
    const show = (isWhole: boolean): void => session.view.setState({ light: { seen, isWhole } });
    return inSlices({ plant, route }, reckonLight(plant, terminalIds, seen), (done) => {
      if (!done && performance.now() - beforeMs < takeInMs) return;
      beforeMs = performance.now();
      show(done !== null);
    });
  }, [session, plant, route, terminalIds, seen]);
  useEffect(() => () => session.view.setState({ light: null }), [session]);
  const isWhole = useView((state) => state.light?.isWhole ?? false);
  return isWhole ? 1 : Math.min(0.99, seen.size / Math.max(1, terminalIds.length));
}

/** Nothing is reckoned yet of a route. */
function emptyFor(_plant: Plant): Map<string, SeenLight> {
  return new Map();
}

/** Light as the diagram shows it. */
export type ShownLight = { readonly seen: LightSeen; readonly isWhole: boolean };
