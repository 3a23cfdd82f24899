import {
  kgPerM3PerPoundPerCubicFoot,
  metresPerFoot,
  metresPerInch,
  metresPerSecondPerMph,
  newtonsPerPoundForce,
  nPerMPerPoundPerFoot,
  pascalsPerPsf,
  pascalsPerPsi,
} from "../../core/units/constants.ts";
import { parseLengthM } from "../../core/units/parseLength.ts";
import { degCFromDegF, degFFromDegC } from "../../core/units/temperature.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { wrongWords } from "./words.ts";

/** What kind of figure a column holds, and so the units it is shown and read in. */
export type QuantityKind =
  | "run"
  | "offset"
  | "thickness"
  | "area"
  | "force"
  | "line"
  | "pressure"
  | "speed"
  | "modulus"
  | "density"
  | "expansion"
  | "temperature"
  | "angle"
  | "part"
  | "lengthPerVolt"
  | "voltage"
  | "loss"
  | "resistance"
  | "lossPerKm"
  | "wavelength"
  | "power"
  | "moneyPerLength"
  | "money"
  | "count"
  | "plain";

type Unit = { readonly unit: string /** SI for one of it. */; readonly si: number };

/** The unit of each kind in US practice and in metric; the first of the two lists is what is shown. */
const units: Readonly<Record<Exclude<QuantityKind, "temperature">, Readonly<Record<UnitSystem, Unit>>>> = {
  run: { us: { unit: "ft", si: metresPerFoot }, metric: { unit: "m", si: 1 } },
  offset: { us: { unit: "in", si: metresPerInch }, metric: { unit: "m", si: 1 } },
  thickness: { us: { unit: "in", si: metresPerInch }, metric: { unit: "mm", si: 0.001 } },
  area: { us: { unit: "in²", si: metresPerInch ** 2 }, metric: { unit: "mm²", si: 1e-6 } },
  force: { us: { unit: "lbf", si: newtonsPerPoundForce }, metric: { unit: "N", si: 1 } },
  line: { us: { unit: "lb/ft", si: nPerMPerPoundPerFoot }, metric: { unit: "N/m", si: 1 } },
  pressure: { us: { unit: "psf", si: pascalsPerPsf }, metric: { unit: "Pa", si: 1 } },
  speed: { us: { unit: "mph", si: metresPerSecondPerMph }, metric: { unit: "m/s", si: 1 } },
  modulus: { us: { unit: "ksi", si: pascalsPerPsi * 1000 }, metric: { unit: "GPa", si: 1e9 } },
  density: { us: { unit: "lb/ft³", si: kgPerM3PerPoundPerCubicFoot }, metric: { unit: "kg/m³", si: 1 } },
  expansion: { us: { unit: "per °F", si: 1.8 }, metric: { unit: "per °C", si: 1 } },
  moneyPerLength: { us: { unit: "per ft", si: 1 / metresPerFoot }, metric: { unit: "per m", si: 1 } },
  angle: same("°", Math.PI / 180),
  part: same("%", 0.01),
  lengthPerVolt: {
    us: { unit: "in/kV", si: metresPerInch / 1000 },
    metric: { unit: "mm/kV", si: 1e-6 },
  },
  voltage: same("kV", 1000),
  loss: same("dB", 1),
  resistance: same("Ω", 1),
  lossPerKm: same("dB/km", 1),
  wavelength: same("nm", 1),
  power: same("dBm", 1),
  money: same("", 1),
  count: same("", 1),
  plain: same("", 1),
};

const lengths: ReadonlySet<QuantityKind> = new Set(["run", "offset", "thickness"]);
const shownDigitCount = 6;

function same(unit: string, si: number): Readonly<Record<UnitSystem, Unit>> {
  return { us: { unit, si }, metric: { unit, si } };
}

/** Kind of a figure by the name of its column, whose ending is its unit. */
export function quantityKind(column: string): QuantityKind {
  const special = specialKinds.get(column);
  if (special) return special;
  const [, kind] = endings.find(([ending]) => column.endsWith(ending)) ?? ["", "plain" as const];
  return kind;
}

const specialKinds: ReadonlyMap<string, QuantityKind> = new Map<string, QuantityKind>([
  ["standoffM", "offset"],
  ["climbingSpaceM", "offset"],
  ["hangingGapM", "offset"],
  ["offsetToleranceM", "offset"],
  ["diameterM", "thickness"],
  ["iceM", "thickness"],
  ["lengthM", "thickness"],
  ["costPerM", "moneyPerLength"],
  ["coversV", "voltage"],
  ["rankCount", "count"],
  ["quantity", "plain"],
]);

/** Longest endings first, since `NPerM` ends in `M` too. */
const endings: readonly (readonly [string, QuantityKind])[] = [
  ["KgPerM3", "density"],
  ["DbPerKm", "lossPerKm"],
  ["PerC", "expansion"],
  ["MPerV", "lengthPerVolt"],
  ["NPerM", "line"],
  ["MPerS", "speed"],
  ["DegC", "temperature"],
  ["modulusPa", "modulus"],
  ["Count", "count"],
  ["Frac", "part"],
  ["Rad", "angle"],
  ["cost", "money"],
  ["costEach", "money"],
  ["Nm", "wavelength"],
  ["Db", "loss"],
  ["Ohm", "resistance"],
  ["Dbm", "power"],
  ["M2", "area"],
  ["Pa", "pressure"],
  ["M", "run"],
  ["N", "force"],
];

/** A figure as it is shown for editing: enough digits to be told from its neighbours, and its unit. */
export function quantityText(value: number, kind: QuantityKind, system: UnitSystem): string {
  if (kind === "temperature") return system === "us" ? `${trimmed(degFFromDegC(value))} °F` : `${trimmed(value)} °C`;
  const { unit, si } = units[kind][system];
  return `${trimmed(value / si)}${unit === "" ? "" : ` ${unit}`}`;
}

export type ReadQuantity =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly what: string };

/** Reads a figure in either system; a plain number is in the unit shown. */
export function readQuantity(text: string, kind: QuantityKind, system: UnitSystem): ReadQuantity {
  const match = /^\s*([-+\u2212]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?)\s*(.*?)\s*$/i.exec(text);
  const count = Number((match?.[1] ?? "").replace("\u2212", "-"));
  const unit = (match?.[2] ?? "").replaceAll("2", "²").replaceAll("3", "³");
  if (match && kind === "temperature") return readTemperature(count, unit, system);
  if (match && kind !== "temperature") {
    const shown = units[kind][system];
    if (unit === "") return sized(count, shown);
    const named = [units[kind].us, units[kind].metric].find((one) => one.unit.toLowerCase() === unit.toLowerCase());
    if (named) return sized(count, named);
  }
  if (lengths.has(kind)) {
    const length = parseLengthM(text, system);
    return length.ok ? { ok: true, value: length.valueM } : { ok: false, what: `${length.what} ${length.mend}` };
  }
  return { ok: false, what: wrongWords.unread(text, exampleOf(kind, system)) };
}

function readTemperature(count: number, unit: string, system: UnitSystem): ReadQuantity {
  const letter = unit.replace(/[°\s]|deg/gi, "").toUpperCase();
  if (letter !== "" && letter !== "F" && letter !== "C") return { ok: false, what: wrongWords.noTemperature(unit) };
  const isF = letter === "" ? system === "us" : letter === "F";
  return { ok: true, value: isF ? degCFromDegF(count) : count };
}

function sized(count: number, { unit, si }: Unit): ReadQuantity {
  // one rounding for whole inches and feet: 36 in is 0.9144 to the last bit
  if (unit === "in") return { ok: true, value: (count * 254) / 10_000 };
  if (unit === "ft") return { ok: true, value: (count * 3048) / 10_000 };
  if (unit === "%") return { ok: true, value: count / 100 };
  return { ok: true, value: count * si };
}

function exampleOf(kind: QuantityKind, system: UnitSystem): string {
  return quantityText(kind === "modulus" ? 165e9 : 12, kind, system);
}

function trimmed(value: number): string {
  return String(Number(value.toPrecision(shownDigitCount)));
}
