import { requireFinite } from "./guard.ts";

/**
 * A number with so many digits that count and no more, written out: 1234567 with 4 is `1235000`, 0.0000115 is `0.0000115`.
 *
 * @throws RangeError when value is not finite
 */
export function significantText(value: number, digitCount: number): string {
  const rounded = Number(requireFinite("a value to print", value).toPrecision(digitCount));
  if (rounded === 0) return "0";
  const decimalCount = Math.max(0, digitCount - 1 - Math.floor(Math.log10(Math.abs(rounded))));
  return rounded
    .toFixed(Math.min(decimalCount, 20))
    .replace(/(\.\d*?)0+$/, "$1")
    .replace(/\.$/, "");
}
