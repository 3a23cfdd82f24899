import type { LivingUnit, Pole } from "../model/tables.ts";
import { metresPerFoot } from "../units/constants.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { layerHeading } from "./exportedRows.ts";

/** What a cell or a property may hold. */
type Cell = string | number | boolean | null;

/** Named values of one row, in the order they are written. */
export type Cells = Readonly<Record<string, Cell>>;

/** A length under a heading that names its unit: the shortest figure that reads back to the same tenth of a millimetre. */
export function lengthCell(heading: string, valueM: number | null, system: UnitSystem): Cells {
  const [unit, metresPerUnit] = system === "us" ? ["ft", metresPerFoot] : ["m", 1];
  return { [`${heading}_${unit}`]: valueM === null ? null : shortest(valueM, metresPerUnit) };
}

/** Five decimals always hold a tenth of a millimetre; most lengths were typed with fewer. */
function shortest(valueM: number, metresPerUnit: number): number {
  const tenths = Math.round(valueM * 10_000);
  for (let decimalCount = 0; decimalCount < 5; decimalCount += 1) {
    const short = Number((valueM / metresPerUnit).toFixed(decimalCount));
    if (Math.round(short * metresPerUnit * 10_000) === tenths) return short;
  }
  return Number((valueM / metresPerUnit).toFixed(5));
}

/**
 * A pole's cells but for its place, under headings its own import knows.
 *
 * @param fromTag  tag of the pole it is joined to beside its neighbours in order; empty for none
 */
export function poleCells(pole: Pole, fromTag: string, system: UnitSystem): Cells {
  return {
    tag: pole.tag,
    ...lengthCell("ground_elevation", pole.groundM, system),
    ...lengthCell("height_above_ground", pole.aboveGroundM, system),
    class: pole.poleClass,
    owner: pole.owner,
    line: pole.line,
    order: pole.order,
    from_pole: fromTag,
    terminal_allowed: pole.terminalAllowed,
    note: pole.note,
  };
}

/** A living unit's cells but for its place, under headings its own import knows. */
export function livingUnitCells(unit: LivingUnit, system: UnitSystem): Cells {
  return {
    address: unit.address,
    kind: unit.kind,
    building: unit.building,
    ...lengthCell("attach_height", unit.attachHeightM, system),
    ...lengthCell("ground_elevation", unit.groundM, system),
    note: unit.note,
  };
}

/** The property that names a feature's table in a file that holds several. */
export function layerCell(table: string): Cells {
  return { [layerHeading]: table };
}
