import { metresPerFoot, metresPerInch, newtonsPerPoundForce } from "../../units/constants.ts";
import { fixedText } from "../../units/fixedText.ts";
import { formatLength } from "../../units/formatLength.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";
import { grouped, stationText } from "./quantityText.ts";

/**
 * A number in a schedule, in the unit of its column and rounded as it is printed, so that paper and spreadsheet say the same.
 */
export type Figure = {
  readonly value: number;
  readonly decimalCount: number;
  /** What stands before and after the number, such as a mark that it is over its limit. */
  readonly before?: string;
  readonly after?: string;
  /** What paper prints instead, where the trade writes the figure otherwise than as one number: 18 ft 6 in, 12+34. */
  readonly paper?: string;
};

/** What a cell holds: words, or a number. */
export type Cell = string | Figure;

/** A number rounded to what is printed. */
export function figure(
  value: number,
  decimalCount: number,
  marks: Pick<Figure, "before" | "after" | "paper"> = {},
): Figure {
  return { value: Number(value.toFixed(decimalCount)) + 0, decimalCount, ...marks };
}

/** A cell as paper prints it. */
export function cellText(cell: Cell): string {
  if (typeof cell === "string") return cell;
  const { value, decimalCount, before = "", after = "", paper } = cell;
  if (paper !== undefined) return paper;
  return `${before}${decimalCount === 0 ? grouped(value) : fixedText(value, decimalCount)}${after}`;
}

/** A long length: whole feet, or metres to one decimal. */
export function lengthCell(valueM: number, system: UnitSystem): Figure {
  return system === "us" ? figure(valueM / metresPerFoot, 0) : figure(valueM, 1);
}

/** A height, in feet to the nearest inch and printed as 18 ft 6 in, or in metres to two decimals. */
export function heightCell(valueM: number, system: UnitSystem): Figure {
  const paper = formatLength(valueM, system, "height");
  const shownM = system === "us" ? Math.round(valueM / metresPerInch) * metresPerInch : valueM;
  return system === "us" ? figure(shownM / metresPerFoot, 3, { paper }) : figure(shownM, 2, { paper });
}

/** A distance along a route, printed as surveyors write it. */
export function stationCell(alongM: number, system: UnitSystem): Figure {
  return figure(system === "us" ? alongM / metresPerFoot : alongM, 0, { paper: stationText(alongM, system) });
}

/** A force: whole pounds-force, or kilonewtons to two decimals. */
export function forceCell(valueN: number, system: UnitSystem): Figure {
  return system === "us" ? figure(valueN / newtonsPerPoundForce, 0) : figure(valueN / 1000, 2);
}

/** A sag: inches to one decimal, or whole millimetres. */
export function sagCell(valueM: number, system: UnitSystem): Figure {
  return system === "us" ? figure(valueM / metresPerInch, 1) : figure(valueM * 1000, 0);
}
