import { describe, expect, it } from "vitest";
import { metresPerFoot, metresPerInch } from "../../core/units/constants.ts";
import { catalogueFigure, settingsFigure } from "./catalogueFigure.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const limitM = (id: string) => catalogueFigure("clearanceLimit", id, "limitM");

const climbing: Source = {
  document: "California PUC General Order 95, Rules 84.7-A and 91.4, climbing space on joint poles",
  edition: "texts of resolutions and Decision 15-01-005",
  mark: "seen",
  tolerance: "half the last digit",
};

describe(sourceTitle(climbing), () => {
  it("30 in from the pole centre line are kept, 27.5 in at a line angle", () => {
    expectPrinted(limitM("go95-climbingSpace") / metresPerInch, "30");
    expectPrinted(limitM("go95-climbingSpaceAtAngle") / metresPerInch, "27.5");
  });

  it("30 in of climbing space end 6 in before the hanging point of a terminal 36 in from the pole", () => {
    expectPrinted(settingsFigure("climbingSpaceM") / metresPerInch, "30");
    expectPrinted((settingsFigure("standoffM") - settingsFigure("climbingSpaceM")) / metresPerInch, "6");
  });

  it("every terminal of the catalogue 36 in from the pole ends outside it: 6 in are more than half its length", () => {
    for (const id of ["terminal-4", "terminal-8", "terminal-12"]) {
      const halfM = catalogueFigure("terminalModel", id, "lengthM") / 2;
      expect(settingsFigure("standoffM") - halfM).toBeGreaterThan(settingsFigure("climbingSpaceM"));
    }
  });

  it("the lowest stand-off bracket of a riser is 8 ft over the ground", () => {
    expectPrinted(limitM("go95-riserBracket") / metresPerFoot, "8.0");
  });
});
