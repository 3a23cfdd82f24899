import { describe, expect, it } from "vitest";
import type { Mark, Sheet } from "../../../core/sheets/paper/displayList.ts";
import { strike } from "../../../core/sheets/paper/labels.ts";
import { area, stroke, words } from "../../../core/sheets/paper/marks.ts";
import { textBox } from "../../../core/sheets/paper/measureText.ts";
import { cornersOf } from "../../../core/sheets/paper/orientedBox.ts";
import { outsidePaper, overlaps, struckTexts } from "../../../core/sheets/paper/overlaps.ts";

const sheetOf = (marks: readonly Mark[]): Sheet => ({
  number: "1",
  title: "Test",
  kind: "plan",
  keys: [],
  scale: "none",
  sizeMm: { width: 100, height: 80 },
  marks,
  links: [],
});

describe("finding text over text", () => {
  it("finds two labels on one spot and names both", () => {
    const found = overlaps(sheetOf([words("M12", [50, 50]), words("148 ft", [51, 50.5])]));
    expect(found.map((one) => [one.first.text, one.second.text])).toEqual([["M12", "148 ft"]]);
  });

  it("lets a turned label lie close where only its upright bounds would touch", () => {
    const turned = words("a long label", [50, 50], { turnRad: Math.PI / 4 });
    expect(overlaps(sheetOf([turned, words("M1", [56, 50.5])]))).toEqual([]);
    expect(overlaps(sheetOf([turned, words("M1", [54, 55])]))).toHaveLength(1);
  });

  it("lets lines of a table stand one under the other", () => {
    expect(overlaps(sheetOf([words("gjpqy", [10, 20]), words("HÉdl", [10, 16.15])]))).toEqual([]);
  });

  it("finds a line painted through words, and one under them with no white between", () => {
    const line = stroke("cable", "thin", [
      [45, 51],
      [60, 51],
    ]);
    const label = words("148 ft", [50, 50]);
    const white = area("text", null, cornersOf({ ...textBox(label), width: 12, height: 4 }), { fill: 1 });
    const textsOf = (...marks: readonly Mark[]) => struckTexts(sheetOf(marks)).map((one) => one.text);
    expect(textsOf(line, label)).toEqual(["148 ft"]);
    expect(textsOf(line, white, label)).toEqual([]);
  });

  it("takes a redline for a redline: it stands on the layer of the words it strikes", () => {
    const label = words("36 in", [50, 50], { align: "middle" });
    const line = strike({ text: "36 in", face: label.face, heightMm: label.heightMm }, label.atMm, 0);
    expect(struckTexts(sheetOf([label, line]))).toEqual([]);
  });

  it("finds a text that runs off the paper", () => {
    expect(outsidePaper(sheetOf([words("148 ft", [98, 20]), words("M1", [50, 20])])).map((one) => one.text)).toEqual([
      "148 ft",
    ]);
  });
});
