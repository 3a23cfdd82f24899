/** Degrees Celsius from degrees Fahrenheit. */
export function degCFromDegF(temperatureDegF: number): number {
  return (temperatureDegF - 32) / 1.8;
}

/** Degrees Fahrenheit from degrees Celsius. */
export function degFFromDegC(temperatureDegC: number): number {
  return temperatureDegC * 1.8 + 32;
}
