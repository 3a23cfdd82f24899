import type { WindowPlace } from "../../core/contract/desktopShapes.ts";

/** A rectangle of the screens, in pixels. */
export type Area = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

const usualSize = { width: 1440, height: 900 };
const leastSize = { width: 800, height: 560 };
const cascadePx = 32;

/**
 * A kept place made to fit the displays that are there now: on the display it covers most, whole, never larger than it. Kept
 * on a display that is gone, the window comes to the first.
 *
 * @param kept        null before a window was ever closed
 * @param workAreas   what each display leaves free, the main one first
 * @param windowCount windows already open; each one moves the next a little
 */
export function presentPlace(kept: WindowPlace | null, workAreas: readonly Area[], windowCount = 0): WindowPlace {
  const [main = { x: 0, y: 0, ...usualSize }] = workAreas;
  const wanted = kept ?? { ...centred(main), isMaximized: false };
  const home = workAreas.reduce((best, one) => (overlap(one, wanted) > overlap(best, wanted) ? one : best), main);
  const width = Math.min(home.width, Math.max(leastSize.width, wanted.width));
  const height = Math.min(home.height, Math.max(leastSize.height, wanted.height));
  const step = windowCount * cascadePx;
  return {
    x: Math.round(within(wanted.x + step, home.x, home.x + home.width - width)),
    y: Math.round(within(wanted.y + step, home.y, home.y + home.height - height)),
    width: Math.round(width),
    height: Math.round(height),
    isMaximized: wanted.isMaximized,
  };
}

function centred({ x, y, width, height }: Area): Area {
  return { x: x + (width - usualSize.width) / 2, y: y + (height - usualSize.height) / 2, ...usualSize };
}

function overlap(a: Area, b: Area): number {
  const wide = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const high = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return wide > 0 && high > 0 ? wide * high : 0;
}

function within(value: number, least: number, most: number): number {
  return Math.max(least, Math.min(most, value));
}
