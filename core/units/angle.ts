/** Degrees from radians. */
export function degFromRad(angleRad: number): number {
  return (angleRad * 180) / Math.PI;
}

/** Radians from degrees. */
export function radFromDeg(angleDeg: number): number {
  return (angleDeg * Math.PI) / 180;
}
