import { describe, expect, it } from "vitest";
import { figureText, findingFigures } from "../../../core/rules/findingFigures.ts";

const basis = { document: "NESC (IEEE C2)", clause: "T232-1", edition: "2017", mark: "memory" } as const;

const practice = { ...basis, mark: "practice" } as const;

describe("the figures of a finding", () => {
  it("say of a limit nobody has read in its document that it is unverified", () => {
    const finding = { measured: 4, limit: 4.7244, unit: "m", basis };
    expect(findingFigures(finding, "metric")).toEqual(["measured 4.00 m", "limit 4.72 m (unverified)"]);
    expect(findingFigures({ ...finding, basis: { ...basis, mark: "seen" } }, "metric")[1]).toBe("limit 4.72 m");
  });

  it("give angles in degrees", () => {
    const finding = { measured: Math.PI / 3, limit: Math.PI / 36, unit: "rad", basis: practice };
    expect(findingFigures(finding, "us")).toEqual(["measured 60\u00b0", "limit 5\u00b0"]);
  });

  it("round a measured clearance down, so that it never reads as its limit", () => {
    expect(figureText(4.7243, "m", "us")).toBe("15 ft 5 in");
    expect(figureText(3, "", "us")).toBe("3");
    expect(figureText(21.744, "dB", "us")).toBe("21.74 dB");
  });
});
