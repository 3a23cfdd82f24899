import { useEffect, useMemo, useState } from "react";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useView } from "../app/useSession.ts";
import { type Ink, readInk } from "./ink.ts";
import { levelOf } from "./level.ts";
import type { Picture } from "./paint.ts";
import { openSceneMaker } from "./scene.ts";
import { shownBox } from "./viewport.ts";

/** Room about the view for symbols that reach in from outside, px. */
const reservePx = 90;

/** The picture of a route in the present view. */
export function usePicture(open: OpenRoute): Picture {
  const view = useView((state) => state.viewport);
  const ink = useInk();
  const makeScene = useMemo(() => openSceneMaker(open.plant), [open.plant]);
  // a new route object after every edit is what makes the scene look again
  const scene = useMemo(() => (open.route ? makeScene() : makeScene()), [makeScene, open.route]);
  const findings = useMemo(() => [...open.findings.values()], [open.findings]);
  const units = unitsOf(open);
  return useMemo(
    () => ({ scene, view, level: levelOf(view), ink, units, findings, shown: shownBox(view, reservePx) }),
    [scene, view, ink, units, findings],
  );
}

function useInk(): Ink {
  const [ink, setInk] = useState(readInk);
  useEffect(() => {
    const dark = matchMedia("(prefers-color-scheme: dark)");
    const contrast = matchMedia("(prefers-contrast: more)");
    const again = (): void => setInk(readInk());
    dark.addEventListener("change", again);
    contrast.addEventListener("change", again);
    return () => {
      dark.removeEventListener("change", again);
      contrast.removeEventListener("change", again);
    };
  }, []);
  return ink;
}
