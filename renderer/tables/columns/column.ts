import type { Step } from "../../../core/edits/runSteps.ts";
import type { FigureRef } from "../../../core/explain/explanation.ts";
import type { Settings } from "../../../core/model/tables.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";

/** A value under a heading; lengths and other quantities in SI. */
export type CellValue = string | number | boolean | null;

/** What a column is read with. */
export type Given = { readonly plant: Plant; readonly units: UnitSystem };

/** What somebody typed, as a value, or why it cannot be one. */
export type Reading = { readonly ok: true; readonly value: CellValue } | { readonly ok: false; readonly what: string };

/** How a column is written; a computed column has none. */
export type Write = {
  readonly read: (text: string, given: Given, rowId: string) => Reading;
  /** The commands that make a row hold the value. */
  readonly steps: (plant: Plant, rowId: string, value: CellValue) => readonly Step[];
  /** What a person may choose from; empty where anything may be typed. */
  readonly choices: (plant: Plant) => readonly string[];
  /** A word of caution about a value that is taken all the same. */
  readonly warn: (plant: Plant, rowId: string, value: CellValue) => string | null;
};

/** One column of a table, as data. */
export type Column = {
  readonly key: string;
  readonly heading: string;
  readonly unit: (units: UnitSystem) => string;
  readonly isFigure: boolean;
  readonly widthPx: number;
  readonly value: (plant: Plant, rowId: string) => CellValue;
  readonly show: (value: CellValue, given: Given) => string;
  /** The value as a number in the unit of the heading; null where it is none. */
  readonly figure: (value: CellValue, units: UnitSystem) => number | null;
  readonly write: Write | null;
  /** Whether a route of these standards has anything to tell under it; absent where every route has. */
  readonly isAsked?: (settings: Settings) => boolean;
  /** The figure whose explanation belongs to the cell, null where this row has none; absent where no row has. */
  readonly explains?: Explains;
};

export type Explains = (plant: Plant, rowId: string) => FigureRef | null;

/** A heading as it is read: with its unit. */
export function headingOf(column: Column, units: UnitSystem): string {
  const unit = column.unit(units);
  return unit === "" ? column.heading : `${column.heading} (${unit})`;
}

/** What a cell shows. */
export function cellText(column: Column, given: Given, rowId: string): string {
  return column.show(column.value(given.plant, rowId), given);
}
