import { describe, expect, it } from "vitest";
import { freeTag } from "../../../core/rules/freeTag.ts";

describe("a tag nobody has", () => {
  it("is the old one with the first free number behind it", () => {
    const taken = new Set(["P12", "P12-2", "P12-3"]);
    expect(freeTag("P12", (text) => taken.has(text))).toBe("P12-4");
    expect(freeTag("P13", (text) => taken.has(text))).toBe("P13-2");
  });
});
