import type { LivingUnit, Pole } from "../model/tables.ts";
import { metresPerFoot } from "../units/constants.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { layerHeading } from "./exportedRows.ts";

/** What a cell or a property may hold. */
type Cell = string | number | boolean | null;

/** Named values of one row, in the order they are written. */
export type Cells = Readonly<Record<string, Cell>>;

/** A length under a heading that names its unit; to 0.003 mm in feet and 0.1 mm in metres, so that it reads back the same. */
export function lengthCell(heading: string, valueM: number | null, system: UnitSystem): Cells {
  if (system === "us")
    return { [`${heading}_ft`]: valueM === null ? null : Number((valueM / metresPerFoot).toFixed(5)) };
  return { [`${heading}_m`]: valueM === null ? null : Number(valueM.toFixed(4)) };
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
    note: unit.note,
  };
}

/** The property that names a feature's table in a file that holds several. */
export function layerCell(table: string): Cells {
  return { [layerHeading]: table };
}
