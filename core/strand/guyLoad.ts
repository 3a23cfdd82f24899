import { requireFinite, requireNotNegative, requirePositive } from "../units/guard.ts";

/** A guyed pole and what pulls on it in the plane of its guy, level, away from the anchor. */
export type GuyedPole = {
  /** horizontal pulls and the heights above ground they act at; each pull 0 or more, each height > 0, m */
  readonly pulls: readonly { readonly pullN: number; readonly heightM: number }[];
  /** where the guy is fixed to the pole, above ground, m, > 0 */
  readonly guyHeightM: number;
  /** horizontal distance from pole to anchor, m, > 0 */
  readonly leadM: number;
};

/** Forces of a guy. The anchor bears them too: it is pulled with guyN, dragged by horizontalN and lifted by verticalN. */
export type GuyLoad = {
  readonly horizontalN: number;
  /** tension along the guy */
  readonly guyN: number;
  /** what the guy presses the pole down with */
  readonly verticalN: number;
  /** from the level, rad */
  readonly slopeRad: number;
};

/**
 * Load of a guy and of its anchor on level ground.
 *
 * The pole is taken as hinged at the ground, so the guy holds every pull by its leverage; a pole set in the ground bears part itself,
 * and its guy less. Load and strength factors are not in it.
 *
 * @throws RangeError when an argument is out of its range
 * @source moments about the ground line, G = F sqrt(h^2 + l^2) / l, vertical F h / l; checked in tests/standards/guy.test.ts
 */
export function guyLoad({ pulls, guyHeightM, leadM }: GuyedPole): GuyLoad {
  requirePositive("guyHeightM", guyHeightM);
  requirePositive("leadM", leadM);
  let horizontalN = 0;
  for (const { pullN, heightM } of pulls) {
    requireNotNegative("pullN", pullN);
    requirePositive("heightM", heightM);
    horizontalN += pullN * (heightM / guyHeightM);
  }
  const steepness = guyHeightM / leadM;
  return {
    horizontalN: requireFinite("horizontalN", horizontalN),
    guyN: requireFinite("guyN", horizontalN * Math.hypot(1, steepness)),
    verticalN: requireFinite("verticalN", horizontalN * steepness),
    slopeRad: Math.atan(steepness),
  };
}
