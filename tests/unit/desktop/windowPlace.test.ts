import { expect, test } from "vitest";
import { presentPlace } from "../../../electron/desktop/windowPlace.ts";

const main = { x: 0, y: 0, width: 1920, height: 1040 };
const right = { x: 1920, y: 0, width: 1280, height: 980 };
const kept = { x: 2000, y: 100, width: 1000, height: 700, isMaximized: false };

test("a window comes back to the display it was closed on", () => {
  expect(presentPlace(kept, [main, right])).toEqual(kept);
});

test("a window kept on a display that is gone comes whole onto the main one", () => {
  expect(presentPlace(kept, [main])).toEqual({ ...kept, x: 920 });
});

test("a window is never larger than its display, nor too small to work in", () => {
  expect(presentPlace({ ...kept, x: 0, y: 0, width: 9000, height: 9000 }, [main])).toMatchObject(main);
  expect(presentPlace({ ...kept, x: 0, y: 0, width: 10, height: 10 }, [main])).toMatchObject({
    width: 800,
    height: 560,
  });
});

test("the first window ever stands in the middle, the second a little aside", () => {
  expect(presentPlace(null, [main])).toEqual({ x: 240, y: 70, width: 1440, height: 900, isMaximized: false });
  expect(presentPlace(null, [main], 1)).toMatchObject({ x: 272, y: 102 });
});

test("a maximized window stays maximized", () => {
  expect(presentPlace({ ...kept, isMaximized: true }, [main, right]).isMaximized).toBe(true);
});
