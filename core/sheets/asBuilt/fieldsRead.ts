import { askedReadings } from "../../closeout/askedReadings.ts";
import { disputeOf } from "../../closeout/disputes.ts";
import { readingId, type Subject, subjectOf } from "../../closeout/subject.ts";
import type { ReadingKind } from "../../model/closeoutRows.ts";
import type { Plant } from "../../plant/plant.ts";
import { metresPerFoot, metresPerInch } from "../../units/constants.ts";
import { fixedText } from "../../units/fixedText.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";

/** What was read of a thing, in SI; null where nothing was read, or where readings differ and nobody has decided between them. */
type ValueRead = (subject: Subject, what: ReadingKind) => number | null;

/** What stands in the fields that a sheet leaves for what is read. */
export type FieldsRead = {
  readonly value: ValueRead;
  /** As printed in a field that has its unit beside it; empty where there is no value. */
  readonly text: (subject: Subject, what: ReadingKind) => string;
  /** Light at a port at the wavelength it is asked for, dBm; empty where there is none. */
  readonly lightText: (terminalId: string, port: number) => string;
};

/** The fields of a set that is drawn to be built by: all empty. */
export const nothingRead: FieldsRead = { value: () => null, text: () => "", lightText: () => "" };

/** The fields of a set drawn as built, filled with what was read. */
export function fieldsRead(plant: Plant): FieldsRead {
  const { unitSystem } = plant.settings();
  const standing = (id: string) => (disputeOf(plant, id) === null ? (plant.row("reading", id)?.value ?? null) : null);
  const value: ValueRead = (subject, what) => standing(readingId(subject, what));
  const textOf = (what: ReadingKind, one: number | null) => (one === null ? "" : fieldText(what, one, unitSystem));
  return {
    value,
    text: (subject, what) => textOf(what, value(subject, what)),
    lightText(terminalId, port) {
      const asked = askedReadings(plant, subjectOf("port", terminalId, port)).find((one) => one.what === "power");
      return asked ? textOf("power", standing(asked.id)) : "";
    },
  };
}

/** A figure in the unit that stands beside its field: an offset in inches or millimetres, a coil in feet or metres. */
function fieldText(what: ReadingKind, value: number, system: UnitSystem): string {
  const isUs = system === "us";
  if (what === "power") return fixedText(value, 2);
  if (what === "offset") return isUs ? short(value / metresPerInch, 1) : short(value * 1000, 0);
  if (what === "slack") return short(isUs ? value / metresPerFoot : value, 2);
  return short(value, 2);
}

/** With no more decimals than it needs. */
function short(value: number, mostDecimals: number): string {
  return String(Number(fixedText(value, mostDecimals)));
}
