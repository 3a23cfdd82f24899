import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { structureBeside } from "../../../core/plant/structureClearance.ts";
import { besideStand } from "../../../core/rules/besideShort.ts";
import { smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";

/** How a building beside the small route's first span stands. */
function standAt(besideM: number, heightM: number, bottomM: number | null = null) {
  const where = { id: "barn", spanId: "span-1", name: "Barn", offsetM: 20, lengthM: 4 } as const;
  const route = withRows(smallRoute(), "structure", [
    { ...where, kind: "building", side: "left", besideM, heightM, bottomM },
  ]);
  const beside = structureBeside(openPlant(route), "barn");
  return beside && { limitM: beside.limit?.limitM ?? Number.NaN, ...besideStand(beside) };
}

describe("a building beside the line", () => {
  it("is told only where the line passes beside it, not over it", () => {
    expect(standAt(0, 4)).toBeNull();
  });

  it("stands far enough where it keeps its limit", () => {
    expect(standAt(5, 8)?.kind).toBe("enough");
  });

  it("lacks what its distance is under the limit", () => {
    const stand = standAt(0.5, 8);
    expect(stand).toMatchObject({ kind: "short", shortM: (stand?.limitM ?? 0) - 0.5 });
  });

  it("lacks nothing where it is too near but the line passes high enough over it", () => {
    expect(standAt(0.5, 0.3)?.kind).toBe("over");
  });

  it("lacks nothing where it is too near but the line passes low enough under it", () => {
    expect(standAt(0.5, 12, 9.5)?.kind).toBe("under");
    expect(standAt(0.5, 9, 6)?.kind).toBe("short");
  });
});
