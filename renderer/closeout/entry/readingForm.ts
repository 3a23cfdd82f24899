import type { AskedReading } from "../../../core/closeout/askedReadings.ts";
import type { ReadingKind } from "../../../core/model/closeoutRows.ts";
import type { Row } from "../../../core/model/tables.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { formatPowerDbm } from "../../../core/units/formatPowerDbm.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import { type QuantityKind, quantityText, readQuantity } from "../../settings/quantity.ts";
import { entryWords as words } from "../words.ts";

const quantityOf: Partial<Readonly<Record<ReadingKind, QuantityKind>>> = {
  offset: "offset",
  slack: "run",
  height: "run",
  power: "power",
  resistance: "resistance",
};

type Read = { readonly value: number | null; readonly text: string };
type Typed = { readonly ok: true; readonly read: Read | null } | { readonly ok: false; readonly what: string };

/** What was typed for a reading; null where the field was emptied. */
export function typedReading(what: ReadingKind, typed: string, units: UnitSystem): Typed {
  const text = typed.trim();
  if (text === "") return { ok: true, read: null };
  if (what === "houseTag" || what === "note") return { ok: true, read: { value: null, text } };
  const kind = quantityOf[what];
  if (kind) {
    const read = readQuantity(text, kind, units);
    return read.ok ? figure(read.value) : read;
  }
  const value = Number(text);
  if (what === "portOfDrop")
    return Number.isInteger(value) && value >= 1 ? figure(value) : { ok: false, what: words.wrongPort(text) };
  return Number.isFinite(value) && value >= 0 ? figure(value) : { ok: false, what: words.wrongMark(text) };
}

/** A reading as its field shows it. */
export function readingText({ what, value, text }: Row<"reading">, units: UnitSystem): string {
  if (value === null) return text;
  const kind = quantityOf[what];
  return kind ? quantityText(value, kind, units) : String(value);
}

/** What was drawn or is expected, in words; empty where the drawing says nothing. */
export function drawnText({ what, drawn, wavelengthNm }: AskedReading, units: UnitSystem): string {
  switch (drawn?.kind) {
    case "figure":
      if (what === "continuity") return "";
      return `${words.drawn} ${drawnFigure(what, drawn.value, units)}`;
    case "text":
      return `${words.drawn} ${drawn.text}`;
    case "most":
      return `${words.most} ${drawn.most} ${words.ohm}`;
    case "range": {
      const [least, most] = [drawn.least, drawn.most].map(formatPowerDbm);
      return `${words.expected} ${least} to ${most} at ${wavelengthNm} nm`;
    }
    default:
      return what === "power" ? `at ${wavelengthNm} nm` : "";
  }
}

function drawnFigure(what: ReadingKind, value: number, units: UnitSystem): string {
  if (what === "offset") return formatLength(value, units, "offset");
  if (what === "height") return formatLength(value, units, "height");
  return what === "slack" ? formatLength(value, units, "span") : String(value);
}

function figure(value: number): Typed {
  return { ok: true, read: { value, text: "" } };
}
