import { describe, expect, it } from "vitest";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("guy-missing", () => {
  it("a dead end without a guy is found", () => {
    expect(findingsOf(faultyRoute("guy-missing"), "guy-missing")).toMatchObject([
      {
        message: "At pole P1 the strand dead-ends and no guy stands against it.",
        fixes: [{ command: "guy.add", input: { poleId: "pole-1", directionRad: expect.closeTo(-Math.PI, 6) } }],
      },
    ]);
  });

  it("a guy that stands across the pull is found to hold nothing", () => {
    const across = changed(smallRoute(), "guy", "guy-1", { directionRad: Math.PI / 2 });
    expect(findingsOf(across, "guy-missing")).toHaveLength(1);
  });

  it("a turn of 10 degrees is found, one of 3 degrees is not", () => {
    const turned = (angleDeg: number) => {
      const northM = 45 * Math.tan((angleDeg * Math.PI) / 180);
      return findingsOf(
        ["pole-3", "pole-4"].reduce(
          (route, id, n) => changed(route, "pole", id, { northM: northM * (n + 1) }),
          changed(smallRoute(), "guy", "guy-4", { directionRad: (angleDeg * Math.PI) / 180 }),
        ),
        "guy-missing",
      ).map((one) => one.message);
    };
    expect(turned(3)).toEqual([]);
    expect(turned(10)).toEqual(["At pole P2 the strand turns and no guy stands against it."]);
  });

  it("a dead end held by two guys that stand wide is quiet", () => {
    expect(
      findingsOf(
        withRows(changed(smallRoute(), "guy", "guy-1", { directionRad: Math.PI - 0.7 }), "guy", [
          {
            id: "guy-9",
            poleId: "pole-1",
            strandTypeId: "strand-quarter",
            heightM: 6.2,
            leadM: 6,
            directionRad: Math.PI + 0.7,
            anchorN: null,
            note: "",
          },
        ]),
        "guy-missing",
      ),
    ).toEqual([]);
  });
});
