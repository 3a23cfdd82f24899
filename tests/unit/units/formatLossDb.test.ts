import { expect, it } from "vitest";
import { formatLossDb } from "../../../core/units/formatLossDb.ts";

it("a loss of 21.742 dB reads 21.74 dB, and a margin that is missing reads negative", () => {
  expect(formatLossDb(21.742)).toBe("21.74 dB");
  expect(formatLossDb(-1.5)).toBe("-1.50 dB");
});
