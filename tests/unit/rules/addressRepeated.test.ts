import { describe, expect, it } from "vitest";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { findingsOf } from "../../fixtures/route/checkRoute.ts";
import { faultyRoute } from "../../fixtures/route/faultyRoutes.ts";

describe("address-repeated", () => {
  it("an address that two living units have is found", () => {
    expect(findingsOf(faultyRoute("address-repeated"), "address-repeated")).toMatchObject([
      { message: "More than one living unit has the address 1 Test Rd.", measured: 2 },
    ]);
  });

  it("the same street number with another unit is quiet", () => {
    expect(
      findingsOf(changed(smallRoute(), "livingUnit", "unit-2", { address: "1 Test Rd, unit B" }), "address-repeated"),
    ).toEqual([]);
  });
});
