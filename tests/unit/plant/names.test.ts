import { describe, expect, it } from "vitest";
import { spanName } from "../../../core/plant/names.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

describe("the name of a span", () => {
  it("is the tags of its poles, first pole first", () => {
    expect(spanName(openPlant(smallRoute()), "span-2")).toBe("P2 to P3");
  });
});
