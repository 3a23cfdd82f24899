import { expect, test } from "vitest";
import { gapText } from "../../../core/units/gapText.ts";
import { moneyText } from "../../../core/units/moneyText.ts";

test("a cost is said to be the cheapest only where its bound meets it", () => {
  expect(gapText(120, 120)).toBe("proven the cheapest");
  expect(gapText(0, 0)).toBe("proven the cheapest");
  expect(gapText(200, 199)).toBe("at most 0.50 % above the cheapest");
  expect(gapText(200_000, 199_999.9)).toBe("at most 0.000 % above the cheapest");
  expect(gapText(200, 0)).toBe("nothing proven yet");
});

test("money has its thousands apart and two decimals", () => {
  expect([0, 7.5, 1234.567, 12345678].map(moneyText)).toEqual(["0.00", "7.50", "1,234.57", "12,345,678.00"]);
});
