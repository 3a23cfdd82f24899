import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, test } from "vitest";
import { ColourChip } from "../../../../renderer/panels/ColourChip.tsx";

/** Colours by name and letters in the order of TIA-598, as the handbook of the trade prints them. */
const order = [
  ["blue", "BL"],
  ["orange", "OR"],
  ["green", "GR"],
  ["brown", "BR"],
  ["slate", "SL"],
  ["white", "WH"],
  ["red", "RD"],
  ["black", "BK"],
  ["yellow", "YL"],
  ["violet", "VI"],
  ["rose", "RS"],
  ["aqua", "AQ"],
] as const;

test("each of twelve fibers in each of twelve tubes is told by name, letters and number, never by colour alone", () => {
  for (const kind of ["tube", "fiber"] as const) {
    order.forEach(([name, letters], i) => {
      const markup = renderToStaticMarkup(createElement(ColourChip, { kind, position: i + 1 }));
      expect(markup).toContain(`aria-label="${kind} ${i + 1}, ${name}, ${letters}"`);
      expect(markup).toContain(`<b>${letters}</b><span>${i + 1}</span>`);
    });
  }
});

test("the thirteenth to the twenty-fourth carry a tracer as a stripe in their swatch", () => {
  for (let position = 13; position <= 24; position += 1) {
    const markup = renderToStaticMarkup(createElement(ColourChip, { kind: "fiber", position }));
    expect(markup).toMatch(/<i class="tracer swatch-[A-Z]{2}">/);
  }
});
