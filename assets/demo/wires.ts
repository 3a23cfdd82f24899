import { between, type Draw } from "./mulberry32.ts";
import { demoPlace, feet } from "./place.ts";
import { planted } from "./planted.ts";
import type { Stake } from "./poleLine.ts";

/** A pole as it stands: how long, whose. */
export type Stem = {
  readonly lengthFt: number;
  readonly classNumber: number;
  readonly aboveGroundM: number;
  readonly owner: string;
};

/** A wire or a piece of equipment on a pole. */
export type Wire = {
  readonly tag: string;
  readonly owner: string;
  readonly kind: "ourStrand" | "communication" | "neutral" | "secondary" | "primary" | "equipment" | "streetLight";
  readonly heightM: number;
  readonly voltageV: number;
};

const telephoneAboveM = feet(1.25);
const safetyZoneM = feet(40 / 12) + feet(0.1);
const neutralZoneM = feet(30 / 12) + feet(0.1);

/** Poles at the end of a lateral carry no power. */
function hasPower(stake: Stake): boolean {
  return stake.line === "Main" || stake.order <= (stake.line === "Lateral A" ? 9 : 7);
}

/** Part of a pole above ground, m: a tenth of its length and 2 ft more are in the soil. */
function aboveGroundM(lengthFt: number): number {
  return feet(lengthFt - (lengthFt / 10 + 2));
}

/** The pole a stake gets: long enough for the strand, the telephone and the power above them. */
export function stemOf(draw: Draw, stake: Stake, strandM: number): Stem {
  const power = hasPower(stake);
  const owner = power ? demoPlace.powerOwner : demoPlace.telephoneOwner;
  const topM = strandM + telephoneAboveM + (power ? feet(6) + safetyZoneM : feet(1));
  const fits = [30, 35, 40].find((lengthFt) => aboveGroundM(lengthFt) >= topM) ?? 45;
  const taller = power && draw() < 0.4 ? 5 : 0;
  const lengthFt = stake.tag === planted.lowPower.pole ? 30 : Math.min(45, fits + taller);
  return { lengthFt, classNumber: lengthFt >= 40 ? 3 : 5, aboveGroundM: aboveGroundM(lengthFt), owner };
}

function telephone(stake: Stake, strandM: number): Wire {
  const aboveM =
    stake.tag === planted.closeTelephone.pole ? feet(planted.closeTelephone.aboveStrandFt) : telephoneAboveM;
  const owner = demoPlace.telephoneOwner;
  return { tag: stake.tag, owner, kind: "communication", heightM: strandM + aboveM, voltageV: 0 };
}

function power(draw: Draw, stake: Stake, stem: Stem, strandM: number): Wire[] {
  const wire = (kind: Wire["kind"], heightM: number, voltageV: number): Wire => ({
    tag: stake.tag,
    owner: demoPlace.powerOwner,
    kind,
    heightM,
    voltageV,
  });
  const topM = stem.aboveGroundM;
  if (stake.tag === planted.lowPower.pole) {
    return [
      wire("primary", topM - feet(0.4), 7200),
      wire("neutral", strandM + feet(3.6), 0),
      wire("secondary", strandM + feet(planted.lowPower.aboveStrandFt), 120),
    ];
  }
  const clearM = strandM + telephoneAboveM;
  const wires = [
    wire("primary", topM - feet(0.5), 7200),
    wire("neutral", Math.max(topM - feet(4.5), clearM + neutralZoneM), 0),
  ];
  if (topM - feet(6) >= clearM + safetyZoneM) wires.push(wire("secondary", topM - feet(6), 120));
  const luck = between(draw, 0, 1);
  const equipmentM = topM - feet(7.5);
  if (luck < 0.3 && equipmentM >= clearM + safetyZoneM) wires.push(wire("equipment", equipmentM, 7200));
  if (luck > 0.85 && topM - feet(8.5) >= clearM + safetyZoneM) wires.push(wire("streetLight", topM - feet(8.5), 120));
  return wires;
}

/** Everything on a pole, from the top. */
export function wiresOf(draw: Draw, stake: Stake, stem: Stem, strandM: number): readonly Wire[] {
  const wires: Wire[] = hasPower(stake) ? power(draw, stake, stem, strandM) : [];
  if (stake.line !== "Lateral B") wires.push(telephone(stake, strandM));
  wires.push({ tag: stake.tag, owner: demoPlace.company, kind: "ourStrand", heightM: strandM, voltageV: 0 });
  return wires.sort((a, b) => b.heightM - a.heightM);
}
