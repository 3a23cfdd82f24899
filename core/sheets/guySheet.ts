import type { Guy, StrengthLimit } from "../model/tables.ts";
import { extremeCases, extremeRow } from "../plant/extremeWeather.ts";
import { governingOfGuy } from "../plant/guyStrength.ts";
import { loadFactorFor } from "../plant/loadFactors.ts";
import type { Plant } from "../plant/plant.ts";
import { turnAtPole } from "../plant/poleGuys.ts";
import { strengthLimitFor } from "../plant/strength.ts";
import { catalogueBasis, isUnverified } from "../rules/rule.ts";
import { isOver } from "../rules/withinLimit.ts";
import { fixedText } from "../units/fixedText.ts";
import { formatLength } from "../units/formatLength.ts";
import type { Draft } from "./book.ts";
import { noteFoot } from "./noteFoot.ts";
import type { Paper } from "./paper.ts";
import { forceFigure, forceUnit } from "./quantityText.ts";
import type { Column, TableRow } from "./table.ts";
import { tableDrafts } from "./tableSheets.ts";
import { caseWords } from "./tradeWords.ts";

/** Every guy with its pull and the part of its strength, then the poles that want one and have none. */
export function guyDrafts(plant: Plant, paper: Paper, poleIds: readonly string[]): readonly Draft[] {
  const foot = noteFoot(footNotes(plant), paper.drawing);
  const guyed = poleIds.flatMap((id) => plant.where("guy", "poleId", id)).map((id) => guyRow(plant, id));
  const wanting = poleIds.flatMap((id) => wantingRow(plant, id));
  const rows: readonly TableRow[] = [
    ...(guyed.length > 0 ? [{ group: `Guys and anchors: ${guyed.length}` }, ...guyed] : []),
    ...(wanting.length > 0 ? [{ group: `Without a guy against the pull: ${wanting.length}` }, ...wanting] : []),
  ];
  return tableDrafts({
    kind: "guy",
    title: "Guy schedule",
    columns: columnsOf(plant),
    rows,
    box: foot.rest,
    beside: foot.marks,
  });
}

function columnsOf(plant: Plant): readonly Column[] {
  const force = forceUnit(plant.settings().unitSystem);
  return [
    { heading: "Pole", share: 22 },
    { heading: "Guy strand", share: 56 },
    { heading: "Direction", unit: "° from north", share: 24, align: "right" },
    { heading: "Height", share: 22, align: "right" },
    { heading: "Lead", share: 22, align: "right" },
    { heading: "Governing case", share: 26 },
    { heading: "Level pull", unit: force, share: 22, align: "right" },
    { heading: "Guy tension", unit: force, share: 24, align: "right" },
    { heading: "Breaking", unit: force, share: 22, align: "right" },
    { heading: "Part used", unit: "%", share: 20, align: "right" },
    { heading: "Part allowed", unit: "%", share: 40, align: "right" },
    { heading: "Anchor holds", unit: force, share: 26, align: "right" },
    { heading: "Part used", unit: "%", share: 20, align: "right" },
    { heading: "Part allowed", unit: "%", share: 40, align: "right" },
  ];
}

function guyRow(plant: Plant, guyId: string): TableRow {
  const system = plant.settings().unitSystem;
  const guy = plant.rowOf("guy", guyId);
  const strand = plant.rowOf("strandType", guy.strandTypeId);
  const { condition, tensionN: guyN } = governingOfGuy(plant, guyId);
  const force = (valueN: number | null) => (valueN === null ? "unknown" : forceFigure(valueN, system));
  return {
    cells: [
      plant.rowOf("pole", guy.poleId).tag,
      strand.name,
      azimuthText(guy.directionRad),
      formatLength(guy.heightM, system, "height"),
      formatLength(guy.leadM, system, "height"),
      caseWords[condition],
      force(guyN === null ? null : levelN(guy, guyN)),
      force(guyN),
      force(strand.breakingN),
      ...partCells(guyN, strand.breakingN, strengthLimitFor(plant, "guy", condition)),
      force(guy.anchorN),
      ...partCells(guyN, guy.anchorN, strengthLimitFor(plant, "anchor", condition)),
    ],
  };
}

/** The level pull that a guy holds, N. */
function levelN({ heightM, leadM }: Pick<Guy, "heightM" | "leadM">, guyN: number): number {
  return (guyN * leadM) / Math.hypot(heightM, leadM);
}

/** The part of a strength that a pull uses, marked where it is over what is allowed, and what is allowed. */
function partCells(
  pullN: number | null,
  strengthN: number | null,
  limit: StrengthLimit | undefined,
): readonly [string, string] {
  const allowed = limit
    ? `${percent(limit.limitFrac)}${isUnverified(catalogueBasis(limit)) ? ", unverified" : ""}`
    : "no limit";
  if (pullN === null || strengthN === null) return ["unknown", allowed];
  const isTooMuch = limit !== undefined && isOver(pullN, limit.limitFrac * strengthN);
  return [`${isTooMuch ? "◆ " : ""}${percent(pullN / strengthN)}`, allowed];
}

function percent(frac: number): string {
  return fixedText(frac * 100, 1);
}

/** A direction as its angle from grid north, clockwise: 005, 270. */
function azimuthText(directionRad: number): string {
  const degrees = Math.round(90 - (directionRad * 180) / Math.PI);
  return String(((degrees % 360) + 360) % 360).padStart(3, "0");
}

function wantingRow(plant: Plant, poleId: string): readonly TableRow[] {
  const turn = turnAtPole(plant, poleId);
  if (!turn || turn.isHeld || !isOver(turn.turnRad, plant.settings().unguyedAngleRad)) return [];
  const { tag } = plant.rowOf("pole", poleId);
  const what = turn.isDeadEnd ? "the strand dead-ends" : `the strand turns by ${degreeText(turn.turnRad)}`;
  return [{ note: `${tag}: ${what}; a guy is wanted towards ${azimuthText(turn.guyRad)}° from north.` }];
}

/** The district and the extreme weather the route is checked under, each marked where nobody has read it. */
function weatherNames(plant: Plant): string {
  const district = plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId);
  const rows = [district, ...extremeCases.flatMap((one) => extremeRow(plant, one) ?? [])];
  return rows.map((row) => `${row.name}${isUnverified(catalogueBasis(row)) ? ", unverified" : ""}`).join(" and ");
}

/** The strength set with its factors: "NESC grade B, unverified: dead end 1.65, turn 1.65, wind 2.50". */
function factorWords(plant: Plant): string {
  const set = plant.rowOf("strengthSet", plant.settings().strengthSetId);
  const named = { deadEnd: "dead end", tension: "turn", wind: "wind", windAtCrossing: "wind at crossings" } as const;
  const factors = (["deadEnd", "tension", "wind", "windAtCrossing"] as const).flatMap((load) => {
    const { factor, row } = loadFactorFor(plant, load, "loaded");
    return row ? [`${named[load]} ${fixedText(factor, 2)}`] : [];
  });
  const mark = isUnverified(catalogueBasis(set)) ? ", unverified" : "";
  return `${set.name}${mark}: ${factors.length === 0 ? "none" : `loaded ${factors.join(", ")}, else 1`}`;
}

function degreeText(angleRad: number): string {
  return `${fixedText((angleRad * 180) / Math.PI, 1)}°`;
}

function footNotes(plant: Plant): readonly string[] {
  return [
    `Pulls in the governing case of ${weatherNames(plant)}; guys of one pole share them by equilibrium, guys side by side evenly. The pole is taken as hinged at the ground.`,
    `Load factors in the pulls, by ${factorWords(plant)}.`,
    `The company lets the strand turn by ${degreeText(plant.settings().unguyedAngleRad)} at a pole without a guy. Direction on the route's grid, clockwise. Locate buried plant before digging for an anchor. Where traffic passes, an anchor guy has a guard 8 ft (2.4 m) long: GO 95 (Original) 86.9, read, historical.`,
  ];
}
