/**
 * Exact factors to SI. All but the last are definitions, or follow from definitions.
 *
 * @source international yard and pound agreement of 1959 (foot, inch, pound), 3rd CGPM 1901 (standard gravity); from memory
 */
export const metresPerFoot = 0.3048;
export const metresPerInch = 0.0254;
export const metresPerSecondPerMph = (5280 * metresPerFoot) / 3600;
const kgPerPound = 0.45359237;
export const standardGravityMPerS2 = 9.80665;

export const newtonsPerPoundForce = kgPerPound * standardGravityMPerS2;

/** Weight per length: 1 lb/ft hangs as this many N/m. */
export const nPerMPerPoundPerFoot = newtonsPerPoundForce / metresPerFoot;

export const pascalsPerPsf = newtonsPerPoundForce / metresPerFoot ** 2;
export const pascalsPerPsi = newtonsPerPoundForce / metresPerInch ** 2;
export const kgPerM3PerPoundPerCubicFoot = kgPerPound / metresPerFoot ** 3;

/** Withdrawn at the end of 2022, but alive in old state plane coordinates. */
export const metresPerUsSurveyFoot = 1200 / 3937;
