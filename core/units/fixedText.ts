import { requireFinite } from "./guard.ts";

/**
 * A number with a fixed count of decimals, never "-0".
 *
 * @throws RangeError when value is not finite
 */
export function fixedText(value: number, decimalCount: number): string {
  const text = requireFinite("a value to print", value).toFixed(decimalCount);
  return Number(text) === 0 ? (0).toFixed(decimalCount) : text;
}
