import type { Hardware } from "../../model/tables.ts";
import { cablesInOrder } from "../../plant/cableOrder.ts";
import { sheathLength } from "../../plant/cablePath.ts";
import { dropCutM } from "../../plant/dropView.ts";
import type { Plant } from "../../plant/plant.ts";
import { byName, byText } from "../../plant/sorting.ts";
import { metresPerFoot } from "../../units/constants.ts";
import { fixedText } from "../../units/fixedText.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";
import { cellText, lengthCell } from "../paper/figure.ts";
import { grouped, lengthUnit } from "../paper/quantityText.ts";
import { kindAndName } from "../tradeWords.ts";

/** One line of the bill: what, what it is counted by, and how much of it the route takes before any allowance. */
export type BillLine = {
  readonly group: "Strand and cable" | "Terminals" | "Drops" | "Guys" | "Hardware";
  /** What the line is built into and how many of those there are; empty for what is counted by itself. */
  readonly assembly: string;
  readonly item: string;
  readonly counted: string;
  /** Metres where `unit` is "length", else a count. */
  readonly quantity: number;
  readonly unit: "length" | string;
  /** Part added for waste or as spares; 0 for what is bought as counted. */
  readonly allowanceFrac: number;
  /** Price of a metre or of a piece; 0 where the catalogue has none. */
  readonly price: number;
};

/** Bill of materials of the route as drawn. */
export function billOf(plant: Plant): readonly BillLine[] {
  const { billAllowanceFrac: allowanceFrac, pieceAllowanceFrac } = plant.settings();
  return [
    ...strandLines(plant, allowanceFrac),
    ...cableLines(plant, allowanceFrac),
    ...terminalLines(plant, pieceAllowanceFrac),
    ...dropLines(plant, allowanceFrac),
    ...guyLines(plant, allowanceFrac),
    ...hardwareLines(plant, allowanceFrac, pieceAllowanceFrac),
  ];
}

/** What is bought by length and drawn as a line: strand, cables with their coils, drops, guys; quantities in m, nothing allowed for. */
export function lengthLines(plant: Plant) {
  return {
    strand: strandLines(plant, 0),
    cables: cableLines(plant, 0),
    drops: dropLines(plant, 0),
    guys: guyLines(plant, 0),
  };
}

function strandLines(plant: Plant, allowanceFrac: number): readonly BillLine[] {
  const lengths = new Map<string, number>();
  for (const span of plant.route().span.values()) {
    if (span.strandSectionId === null) continue;
    const type = plant.rowOf("strandSection", span.strandSectionId).strandTypeId;
    lengths.set(type, (lengths.get(type) ?? 0) + span.lengthM);
  }
  return namedLines([...lengths].map(([id, quantity]) => ({ ...plant.rowOf("strandType", id), quantity }))).map(
    (one) => ({
      group: "Strand and cable",
      assembly: "",
      price: one.costPerM,
      item: kindAndName("Strand", one.name),
      counted: "length of the spans",
      quantity: one.quantity,
      unit: "length",
      allowanceFrac,
    }),
  );
}

function cableLines(plant: Plant, allowanceFrac: number): readonly BillLine[] {
  return cablesInOrder(plant)
    .map((cable) => ({ ...cable, type: plant.rowOf("cableType", cable.cableTypeId) }))
    .map((cable) => ({
      group: "Strand and cable",
      assembly: "",
      price: cable.type.costPerM,
      item: `${kindAndName("Cable", cable.name)}: ${cable.type.name}`,
      counted: "spans and coils",
      quantity: sheathLength(plant, cable.id).totalM,
      unit: "length",
      allowanceFrac,
    }));
}

function terminalLines(plant: Plant, allowanceFrac: number): readonly BillLine[] {
  const models = countBy([...plant.route().terminal.values()].map((one) => one.terminalModelId));
  const named = namedLines([...models].map(([id, quantity]) => ({ ...plant.rowOf("terminalModel", id), quantity })));
  return named.map(({ name, quantity, cost }) => ({
    group: "Terminals",
    assembly: "",
    price: cost,
    item: name,
    counted: "with splitters inside",
    quantity,
    unit: "piece",
    allowanceFrac,
  }));
}

function dropLines(plant: Plant, allowanceFrac: number): readonly BillLine[] {
  const lengths = new Map<string, { count: number; lengthM: number }>();
  for (const drop of plant.route().drop.values()) {
    const sum = lengths.get(drop.dropTypeId) ?? { count: 0, lengthM: 0 };
    lengths.set(drop.dropTypeId, { count: sum.count + 1, lengthM: sum.lengthM + dropCutM(plant, drop.id) });
  }
  return [...lengths]
    .map(([id, sum]) => ({ ...plant.rowOf("dropType", id), ...sum }))
    .sort((a, b) => byName(a.name, b.name))
    .map((one) => ({
      group: "Drops",
      assembly: "",
      price: one.costPerM,
      item: one.name,
      counted: `cut lengths of ${one.count} drops`,
      quantity: one.lengthM,
      unit: "length",
      allowanceFrac,
    }));
}

/** Guy strand along its slope; anchors and what else goes with a guy are hardware. */
function guyLines(plant: Plant, allowanceFrac: number): readonly BillLine[] {
  const lengths = new Map<string, number>();
  for (const { strandTypeId, heightM, leadM } of plant.route().guy.values())
    lengths.set(strandTypeId, (lengths.get(strandTypeId) ?? 0) + Math.hypot(heightM, leadM));
  return namedLines([...lengths].map(([id, quantity]) => ({ ...plant.rowOf("strandType", id), quantity }))).map(
    ({ name, quantity, costPerM }) => ({
      group: "Guys",
      assembly: "",
      price: costPerM,
      item: `Guy strand ${name}`,
      counted: "pole to anchor, along the guy",
      quantity,
      unit: "length",
      allowanceFrac,
    }),
  );
}

/** In the order of the bill: what goes with a guy stands under its strand. */
const perWords: Readonly<Record<Hardware["per"], string>> = {
  guy: "guy",
  pole: "pole with our strand",
  terminal: "terminal",
  drop: "drop",
  coil: "coil",
  closure: "closure",
  deadEnd: "strand end",
  strandM: "strand",
  cableM: "cable",
};

/** Hardware by what it goes with. Whole pieces at a guy, such as its anchor, are counted like terminals: each stands at a place of its own. */
function hardwareLines(plant: Plant, allowanceFrac: number, pieceAllowanceFrac: number): readonly BillLine[] {
  const route = plant.route();
  const strung = [...route.span.values()].filter((one) => one.strandSectionId !== null);
  const counts: Readonly<Record<Hardware["per"], number>> = {
    guy: route.guy.size,
    pole: new Set(strung.flatMap((one) => [one.fromPoleId, one.toPoleId])).size,
    terminal: route.terminal.size,
    drop: route.drop.size,
    coil: route.slack.size,
    closure: route.closure.size,
    deadEnd: 2 * new Set(strung.map((one) => one.strandSectionId)).size,
    strandM: strung.reduce((sum, one) => sum + one.lengthM, 0),
    cableM: [...route.cable.keys()].reduce((sum, id) => sum + sheathLength(plant, id).spansM, 0),
  };
  const order = Object.keys(perWords);
  return [...route.hardware.values()]
    .sort((a, b) => order.indexOf(a.per) - order.indexOf(b.per) || byName(a.name, b.name) || byText(a.id, b.id))
    .filter((one) => counts[one.per] > 0)
    .map((one) => ({
      group: "Hardware",
      assembly: assemblyName(one.per, counts[one.per], plant.settings().unitSystem),
      price: one.cost,
      item: one.name,
      counted: countedBy(one, plant.settings().unitSystem),
      quantity: one.quantity * counts[one.per],
      unit: one.unit === "m" ? "length" : one.unit,
      allowanceFrac: one.per === "guy" && one.unit !== "m" ? pieceAllowanceFrac : allowanceFrac,
    }));
}

/** The assembly that a part belongs to, with how many of it the route takes: "At each terminal: 23". */
function assemblyName(per: Hardware["per"], count: number, system: UnitSystem): string {
  if (per !== "strandM" && per !== "cableM") return `At each ${perWords[per]}: ${grouped(count)}`;
  return `Along the ${perWords[per]}: ${cellText(lengthCell(count, system))} ${lengthUnit(system)}`;
}

function countedBy({ quantity, unit, per }: Hardware, system: UnitSystem): string {
  if (per === "strandM" || per === "cableM") return `${quantity} times the length of ${perWords[per]}`;
  return `${amountWords(quantity, unit, system)} for each ${perWords[per]}`;
}

function amountWords(quantity: number, unit: Hardware["unit"], system: UnitSystem): string {
  if (unit === "piece") return String(quantity);
  return unit === "m" && system === "us" ? `${fixedText(quantity / metresPerFoot, 1)} ft` : `${quantity} ${unit}`;
}

function namedLines<T extends { readonly name: string }>(lines: readonly T[]): readonly T[] {
  return [...lines].sort((a, b) => byName(a.name, b.name));
}

function countBy(keys: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
}
