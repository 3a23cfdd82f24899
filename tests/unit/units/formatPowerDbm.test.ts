import { expect, it } from "vitest";
import { formatPowerDbm } from "../../../core/units/formatPowerDbm.ts";

it("a received power of -20.242 dBm reads -20.24 dBm", () => {
  expect(formatPowerDbm(-20.242)).toBe("-20.24 dBm");
});
