/**
 * Refuses an argument that is not a positive, finite number.
 *
 * @throws RangeError, also for NaN
 */
export function requirePositive(name: string, value: number): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${name} must be more than 0 and finite, not ${value}`);
  }
}

/**
 * Refuses an argument that is negative or not finite.
 *
 * @throws RangeError, also for NaN
 */
export function requireNotNegative(name: string, value: number): void {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${name} must be 0 or more and finite, not ${value}`);
  }
}

/**
 * Passes a finite number on and refuses any other, so that no kernel hands out NaN or infinity.
 *
 * @throws RangeError when value is NaN or infinite
 */
export function requireFinite(name: string, value: number): number {
  if (!Number.isFinite(value)) {
    throw new RangeError(`${name} must be a finite number, not ${value}`);
  }
  return value;
}
