import { lettering } from "./ink.ts";
import type { Measure } from "./labelWishes.ts";

/**
 * Measures text with the page's own font; each text once.
 *
 * @param fontCount  how often fonts have come in so far: a new measure is needed after each
 */
export function openMeasure(fontCount: number): Measure {
  const pen = document.createElement("canvas").getContext("2d");
  const widths = new Map<string, number>();
  return (text, sizePx, weight) => {
    const font = lettering(sizePx, weight);
    const name = `${fontCount} ${font} ${text}`;
    const known = widths.get(name);
    if (known !== undefined) return known;
    if (pen) pen.font = font;
    const width = pen ? pen.measureText(text).width : text.length * sizePx * 0.6;
    widths.set(name, width);
    return width;
  };
}
