import { useEffect, useMemo, useState } from "react";
import type { Plant } from "../../core/plant/plant.ts";
import { terminalPlace } from "../../core/plant/terminalView.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { inSlices } from "../app/slices.ts";

/** What the order of the terminals is looked for at once, ms: an ordinary route's is known by then. */
const atOnceMs = 8;

/** Whether the places of all terminals are known, by which they are put in order; a long route's are found in slices first. */
export function useOrder({ plant, route }: OpenRoute): boolean {
  const [known, setKnown] = useState<Plant | null>(null);
  const isSoon = useMemo(() => foundAtOnce(plant), [plant]);
  const isKnown = isSoon || known === plant;
  useEffect(() => {
    if (isKnown) return undefined;
    return inSlices({ plant, route }, findPlaces(plant), (done) => {
      if (done) setKnown(plant);
    });
  }, [isKnown, plant, route]);
  return isKnown;
}

/** Whether a moment was enough. */
function foundAtOnce(plant: Plant): boolean {
  const steps = findPlaces(plant);
  const untilMs = performance.now() + atOnceMs;
  while (performance.now() < untilMs) if (steps.next().done) return true;
  return false;
}

function* findPlaces(plant: Plant): Generator<void, void> {
  for (const id of plant.route().terminal.keys()) {
    terminalPlace(plant, id);
    yield;
  }
}
