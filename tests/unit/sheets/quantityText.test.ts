import { describe, expect, it } from "vitest";
import { byName } from "../../../core/plant/sorting.ts";
import { cellText, lengthCell } from "../../../core/sheets/paper/figure.ts";
import { stationText } from "../../../core/sheets/paper/quantityText.ts";

describe("figures on sheets", () => {
  it("writes a station as surveyors do", () => {
    expect(stationText(376.1232, "us")).toBe("12+34");
    expect(stationText(1234, "metric")).toBe("1+234");
    expect(stationText(30.45, "us")).toBe("1+00");
    expect(stationText(0, "us")).toBe("0+00");
  });

  it("rounds what is measured to the nearest", () => {
    expect(cellText(lengthCell(304.81, "us"))).toBe("1,000");
    expect(cellText(lengthCell(45.06, "metric"))).toBe("45.1");
  });

  it("sorts T2 before T10", () => {
    expect(["T10", "T2", "A1", "T2-1"].sort(byName)).toEqual(["A1", "T2", "T2-1", "T10"]);
  });
});
