import type { Guy, StrengthLimit } from "../../model/tables.ts";
import { extremeCases, extremeRow } from "../../plant/extremeWeather.ts";
import { governingOfGuy } from "../../plant/guyStrength.ts";
import { loadFactorFor } from "../../plant/loadFactors.ts";
import type { Plant } from "../../plant/plant.ts";
import { turnAtPole } from "../../plant/poleGuys.ts";
import { strengthLimitFor } from "../../plant/strength.ts";
import { catalogueBasis, isUnverified } from "../../rules/rule.ts";
import { isOver } from "../../rules/withinLimit.ts";
import { fixedText } from "../../units/fixedText.ts";
import type { Draft } from "../book.ts";
import { type Cell, cellText, type Figure, figure, forceCell, heightCell } from "../paper/figure.ts";
import { noteFoot } from "../paper/noteFoot.ts";
import type { Paper } from "../paper/paper.ts";
import { forceUnit, lengthUnit } from "../paper/quantityText.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";
import { caseWords } from "../tradeWords.ts";
import type { Schedule } from "./schedule.ts";
import { tableDrafts } from "./tableSheets.ts";

/** So many poles that want a guy stand under the guys; more have sheets of their own, in columns. */
const mostUnder = 20;
const wantedColumns: readonly Column[] = [
  { heading: "Pole", share: 24 },
  { heading: "Strand", share: 30 },
  { heading: "Guy wanted towards", unit: "° from north", share: 36, align: "right" },
];
const wantedMm = 90;

/** Every guy with its pull and the part of its strength, then the poles that want one and have none. */
export function guyDrafts(plant: Plant, paper: Paper, poleIds: readonly string[]): readonly Draft[] {
  const { columns, rows, notes } = guySchedule(plant, poleIds);
  const foot = noteFoot(notes, paper.drawing);
  const sheets = { kind: "guy", box: foot.rest, beside: foot.marks } as const;
  const wanted = poleIds.flatMap((id) => wantedRow(plant, id));
  const isApart = wanted.length > mostUnder;
  const own = isApart ? rows.slice(0, rows.length - wanted.length - 1) : rows;
  return [
    ...tableDrafts({ ...sheets, title: "Guy schedule", columns, rows: own }),
    ...tableDrafts({
      ...sheets,
      key: "guys wanted",
      title: `Guys wanted at ${wanted.length} poles`,
      columns: wantedColumns,
      rows: isApart ? wanted : [],
      leastMm: wantedMm,
    }),
  ];
}

export function guySchedule(plant: Plant, poleIds: readonly string[]): Schedule {
  const guyed = poleIds.flatMap((id) => plant.where("guy", "poleId", id)).map((id) => guyRow(plant, id));
  const wanting = poleIds.flatMap((id) => wantingRow(plant, id));
  const rows: readonly TableRow[] = [
    ...(guyed.length > 0 ? [{ group: `Guys and anchors: ${guyed.length}`, of: "guyed" }, ...guyed] : []),
    ...(wanting.length > 0
      ? [{ group: `Without a guy against the pull: ${wanting.length}`, of: "wanting" }, ...wanting]
      : []),
  ];
  return { name: "Guys and anchors", grouped: "Standing", columns: columnsOf(plant), rows, notes: footNotes(plant) };
}

function columnsOf(plant: Plant): readonly Column[] {
  const force = forceUnit(plant.settings().unitSystem);
  const innerUnit = lengthUnit(plant.settings().unitSystem);
  return [
    { heading: "Pole", share: 22 },
    { heading: "Guy strand", share: 48 },
    { heading: "Direction", unit: "° from north", share: 24, align: "right" },
    { heading: "Height", innerUnit, share: 28, align: "right" },
    { heading: "Lead", innerUnit, share: 28, align: "right" },
    { heading: "Governing case", share: 26 },
    { heading: "Level pull", unit: force, share: 22, align: "right" },
    { heading: "Guy tension", unit: force, share: 24, align: "right" },
    { heading: "Breaking", unit: force, share: 22, align: "right" },
    { heading: "Guy used", unit: "%", share: 20, align: "right" },
    { heading: "Guy allowed", unit: "%", share: 40, align: "right" },
    { heading: "Anchor holds", unit: force, share: 26, align: "right" },
    { heading: "Anchor used", unit: "%", share: 20, align: "right" },
    { heading: "Anchor allowed", unit: "%", share: 40, align: "right" },
  ];
}

function guyRow(plant: Plant, guyId: string): TableRow {
  const system = plant.settings().unitSystem;
  const guy = plant.rowOf("guy", guyId);
  const strand = plant.rowOf("strandType", guy.strandTypeId);
  const { condition, tensionN: guyN } = governingOfGuy(plant, guyId);
  const force = (valueN: number | null) => (valueN === null ? "unknown" : forceCell(valueN, system));
  return {
    cells: [
      plant.rowOf("pole", guy.poleId).tag,
      strand.name,
      azimuthCell(guy.directionRad),
      heightCell(guy.heightM, system),
      heightCell(guy.leadM, system),
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
): readonly [Cell, Cell] {
  const allowed = limit
    ? percentCell(limit.limitFrac, isUnverified(catalogueBasis(limit)) ? { after: ", unverified" } : {})
    : "no limit";
  if (pullN === null || strengthN === null) return ["unknown", allowed];
  const isTooMuch = limit !== undefined && isOver(pullN, limit.limitFrac * strengthN);
  return [percentCell(pullN / strengthN, isTooMuch ? { before: "◆ " } : {}), allowed];
}

function percentCell(frac: number, marks: Pick<Figure, "before" | "after">): Figure {
  return figure(frac * 100, 1, marks);
}

/** A direction as its angle from grid north, clockwise: 005, 270. */
function azimuthText(directionRad: number): string {
  return cellText(azimuthCell(directionRad));
}

function azimuthCell(directionRad: number): Figure {
  const degrees = Math.round(90 - (directionRad * 180) / Math.PI);
  const clockwise = ((degrees % 360) + 360) % 360;
  return figure(clockwise, 0, { paper: String(clockwise).padStart(3, "0") });
}

/** How the strand turns at a pole where a guy is wanted and none stands; null elsewhere. */
function unguyedTurn(plant: Plant, poleId: string) {
  const turn = turnAtPole(plant, poleId);
  return turn && !turn.isHeld && isOver(turn.turnRad, plant.settings().unguyedAngleRad) ? turn : null;
}

function wantedRow(plant: Plant, poleId: string): readonly TableRow[] {
  const turn = unguyedTurn(plant, poleId);
  if (!turn) return [];
  const strand = turn.isDeadEnd ? "dead-ends" : `turns by ${degreeText(turn.turnRad)}`;
  return [{ cells: [plant.rowOf("pole", poleId).tag, strand, azimuthCell(turn.guyRad)] }];
}

function wantingRow(plant: Plant, poleId: string): readonly TableRow[] {
  const turn = unguyedTurn(plant, poleId);
  if (!turn) return [];
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
