import { describe, expect, it } from "vitest";
import type { Sheet } from "../../../core/sheets/paper/displayList.ts";
import { circle, rectangle, stroke, words } from "../../../core/sheets/paper/marks.ts";
import { writeSvg } from "../../../core/sheets/paper/writeSvg.ts";

const sheet: Sheet = {
  number: "1",
  title: "A & B",
  kind: "plan",
  keys: [],
  scale: "none",
  sizeMm: { width: 100, height: 80 },
  marks: [
    words("3 < 4 & ≥", [10, 20], { align: "right" }),
    stroke(
      "strand",
      "thick",
      [
        [0, 0],
        [10, 5],
      ],
      { dashMm: [2, 1] },
    ),
    circle("poles", "bold", [50, 40], 1.5, 1),
    rectangle("terminals", null, [1, 1], 2, 3, { fill: [1, 0, 0] }),
  ],
  links: [],
};

describe("a sheet as SVG", () => {
  const svg = writeSvg(sheet);

  it("stands in paper millimetres with y turned down", () => {
    expect(svg).toContain('width="100mm" height="80mm" viewBox="0 0 100 80"');
    expect(svg).toContain('d="M0 80L10 75"');
    expect(svg).toContain('<circle cx="50" cy="40" r="1.5"');
  });

  it("escapes words and holds each run to its measured width", () => {
    expect(svg).toContain("3 &lt; 4 &amp; ");
    expect(svg).toContain("<title>A &amp; B</title>");
    expect(svg.match(/textLength=/g)).toHaveLength(2);
  });

  it("paints the layers in their order whatever order the marks came in", () => {
    const order = [...svg.matchAll(/data-layer="(\w+)"/g)].map((one) => one[1]);
    expect(order).toEqual(["strand", "terminals", "poles", "text"]);
  });

  it("is the same text twice", () => {
    expect(writeSvg(sheet)).toBe(svg);
  });
});
