import { describe, expect, it } from "vitest";
import { shortenText, wrapText } from "../../../core/sheets/paper/fitText.ts";
import { textWidthMm } from "../../../core/sheets/paper/measureText.ts";

describe("fitting text", () => {
  it("leaves a text that fits and cuts a longer one with an ellipsis", () => {
    expect(shortenText("12 Mill St", "plain", 2.2, 60)).toBe("12 Mill St");
    const cut = shortenText("1248 North Old Quarry Hill Road, unit 14", "plain", 2.2, 30);
    expect(cut.endsWith("…")).toBe(true);
    expect(textWidthMm(cut, "plain", 2.2)).toBeLessThanOrEqual(30);
  });

  it("breaks at spaces, keeps every word, and breaks a word only where it must", () => {
    const text = "Over Wren Valley RR the line is too low under ice";
    const lines = wrapText(text, "plain", 2.2, 32);
    expect(lines.join(" ")).toBe(text);
    for (const line of lines) expect(textWidthMm(line, "plain", 2.2)).toBeLessThanOrEqual(32);
    expect(wrapText("unbreakableunbreakable", "plain", 2.2, 12).join("")).toBe("unbreakableunbreakable");
  });
});
