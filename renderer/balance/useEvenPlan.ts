import { useEffect, useState } from "react";
import type { OpenRoute } from "../app/routeStore.ts";
import { inSlices } from "../app/slices.ts";
import { type EvenPlan, evenPlan } from "./evenPlan.ts";

/** What evening out all terminals would come to; undefined while it is worked out, null where nothing gets evener. */
export function useEvenPlan({ plant, route }: OpenRoute, extraDropM: number | null): EvenPlan | null | undefined {
  const [known, setKnown] = useState<Known | null>(null);
  useEffect(() => {
    if (extraDropM === null) return undefined;
    return inSlices({ plant, route }, evenPlan(plant, [...route.terminal.keys()], extraDropM), (done) => {
      if (done) setKnown({ route, extraDropM, plan: done.value });
    });
  }, [plant, route, extraDropM]);
  return known?.route === route && known.extraDropM === extraDropM ? known.plan : undefined;
}

/** A plan with what it was asked for. */
type Known = { readonly route: OpenRoute["route"]; readonly extraDropM: number; readonly plan: EvenPlan | null };
