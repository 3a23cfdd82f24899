import type { Structure, WireSag } from "../model/tables.ts";
import { newtonsPerPoundForce } from "../units/constants.ts";
import { type CellValue, readNumber, wordReader } from "./cellValue.ts";

export const readStructureKind = wordReader<Structure["kind"]>({
  building: ["building", "house", "garage", "shed", "barn", "roof"],
  walkedRoof: ["walked roof", "walkedroof", "roof people walk on", "balcony", "deck", "flat roof"],
  sign: ["sign", "billboard"],
  litSign: ["lit sign", "litsign", "illuminated sign"],
  groundedLitSign: ["grounded lit sign", "groundedlitsign", "lit sign, grounded"],
  walkedSign: ["walked sign", "walkedsign", "sign people walk on", "catwalk"],
  chimney: ["chimney", "antenna", "tank"],
});

/** A side of the line, seen from the pole named first. */
export const readSide = wordReader<Structure["side"]>({ left: ["left", "l"], right: ["right", "r"] });

export const readWireKind = wordReader<WireSag["kind"]>({
  communication: ["communication", "communications", "comm", "telephone", "telco", "catv", "cable tv", "fiber"],
  neutral: ["neutral", "system neutral", "mgn"],
  secondary: ["secondary", "sec", "triplex", "service"],
  primary: ["primary", "pri", "high voltage"],
  supplyFiber: ["supply fiber", "supplyfiber", "supply fibre", "fiber in supply space"],
});

/** Units a force is written in. */
export type ForceUnit = "lbf" | "N" | "kN";

const force = /^([\d.,]+) ?(lbf|lbs?|pounds?|kn|n|kips?)?\.?$/i;
const newtonsPer: Readonly<Record<string, number>> = {
  n: 1,
  kn: 1000,
  lbf: newtonsPerPoundForce,
  lb: newtonsPerPoundForce,
  lbs: newtonsPerPoundForce,
  pound: newtonsPerPoundForce,
  pounds: newtonsPerPoundForce,
  kip: 1000 * newtonsPerPoundForce,
  kips: 1000 * newtonsPerPoundForce,
};

/** A force in newtons, rounded to a hundredth; a unit written in the cell goes before the column's. */
export function readForceN(text: string, unit: ForceUnit): CellValue<number> {
  const match = force.exec(text.trim());
  const plain = (match?.[1] ?? "").replace(/^(\d{1,3}(?:,\d{3})+)$/, (whole) => whole.replaceAll(",", ""));
  const number = match ? readNumber(plain) : null;
  if (!match || !number?.ok || !(number.value > 0))
    return { ok: false, what: `"${text}" cannot be read as a force.`, accepted: "a force such as 8000 lbf or 35 kN" };
  const perUnit = newtonsPer[(match[2] ?? unit).toLowerCase()] ?? 1;
  return { ok: true, value: Math.round(number.value * perUnit * 100) / 100 };
}

/** The unit a heading names, or null. */
export function headingForceUnit(heading: string): ForceUnit | null {
  if (/(?:^|[^a-z])kn(?:[^a-z]|$)/i.test(heading)) return "kN";
  if (/lbf?s?(?:[^a-z]|$)|pounds?/i.test(heading)) return "lbf";
  return /(?:^|[^a-z])n(?:[^a-z]|$)|newtons?/i.test(heading) ? "N" : null;
}
