import type { RefObject } from "react";
import type { Plant } from "../../core/plant/plant.ts";
import type { RefKey } from "../app/ref.ts";
import { elevationAt } from "./frame.ts";
import { type ProfileSight, pointOnProfile } from "./profileHit.ts";

/** What a test may ask of the profile, which is opaque to it otherwise. */
export type ProfileHandle = {
  /** Middle of a row in page pixels; null for what is not on the profile. */
  readonly toScreen: (ref: RefKey) => { readonly x: number; readonly y: number } | null;
  /** Elevation under a pixel row of the page, m. */
  readonly elevationM: (y: number) => number;
};

declare global {
  interface Window {
    __profile?: ProfileHandle;
  }
}

/** Puts the test handle on the page; only where its address asks for it. */
export function offerProfileHandle(
  now: () => ProfileSight & { readonly plant: Plant },
  paper: RefObject<HTMLElement | null>,
): void {
  if (!new URLSearchParams(location.search).has("view-handle")) return;
  const box = (): DOMRect => paper.current?.getBoundingClientRect() ?? new DOMRect();
  window.__profile = {
    toScreen(ref) {
      const sight = now();
      const point = pointOnProfile(sight.plant, sight, ref);
      return point ? { x: box().x + point[0], y: box().y + point[1] } : null;
    },
    elevationM: (y) => elevationAt(now().frame, y - box().y),
  };
}
