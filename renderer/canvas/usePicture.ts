import { useEffect, useMemo, useState } from "react";
import { placeOfFinding } from "../app/look.ts";
import { onColours } from "../app/machine.ts";
import type { OpenRoute, WindowFinding } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useView } from "../app/useSession.ts";
import { withoutHidden } from "../tools/kinds.ts";
import { type Ink, readInk } from "./ink.ts";
import { levelOf } from "./level.ts";
import type { Picture } from "./paint.ts";
import type { Places } from "./places.ts";
import { openSceneMaker } from "./scene.ts";
import { shownBox } from "./viewport.ts";

/** Room about the view for symbols that reach in from outside, px. */
const reservePx = 90;

/** The picture of a route in the present view. */
export function usePicture(open: OpenRoute): Picture {
  const view = useView((state) => state.viewport);
  const drawnAs = useView((state) => state.drawnAs);
  const ink = useInk();
  const makeScene = useMemo(() => openSceneMaker(open.plant), [open.plant]);
  const scene = useMemo(() => makeScene(open.route, drawnAs), [makeScene, open.route, drawnAs]);
  const kinds = useView((state) => state.kinds);
  const shownScene = useMemo(() => withoutHidden(scene, kinds), [scene, kinds]);
  const findings = useMemo(() => findingsOnPage(open, scene.places), [open, scene.places]);
  const units = unitsOf(open);
  return useMemo(
    () => ({ scene: shownScene, view, level: levelOf(view), ink, units, findings, shown: shownBox(view, reservePx) }),
    [shownScene, view, ink, units, findings],
  );
}

/** Findings with their places as the page is drawn. */
function findingsOnPage({ plant, findings }: OpenRoute, places: Places): readonly WindowFinding[] {
  const all = [...findings.values()];
  if (!places.straight) return all;
  return all.map((one) => (one.at ? { ...one, at: placeOfFinding(plant, places, one) } : one));
}

/** Colours of the page, read again whenever they change. */
export function useInk(): Ink {
  const [ink, setInk] = useState(readInk);
  useEffect(() => {
    return onColours(() => setInk(readInk()));
  }, []);
  return ink;
}
