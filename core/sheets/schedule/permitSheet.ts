import { heightReading } from "../../closeout/builtFigures.ts";
import { whyNotDrawn } from "../../closeout/whyNotDrawn.ts";
import { type MakeReady, makeReady } from "../../jointpole/makeReady.ts";
import type { Attachment } from "../../model/tables.ts";
import { clearanceSetIds } from "../../plant/clearance.ts";
import { loadFactorFor } from "../../plant/loadFactors.ts";
import type { Plant } from "../../plant/plant.ts";
import { lineOnPole } from "../../plant/poleLoad.ts";
import { carriesStrand } from "../../plant/separation.ts";
import { strandAtPole } from "../../plant/strandHeight.ts";
import { catalogueBasis, isUnverified } from "../../rules/rule.ts";
import { fixedText } from "../../units/fixedText.ts";
import { formatForce } from "../../units/formatForce.ts";
import { formatLength } from "../../units/formatLength.ts";
import type { Draft } from "../book.ts";
import { type Cell, cellText, heightCell } from "../paper/figure.ts";
import { noteFoot } from "../paper/noteFoot.ts";
import type { Paper } from "../paper/paper.ts";
import { lengthUnit } from "../paper/quantityText.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";
import { attachmentWords } from "../tradeWords.ts";
import type { Schedule } from "./schedule.ts";
import { tableDrafts } from "./tableSheets.ts";

const columnsIn = (innerUnit: string): readonly Column[] => [
  { heading: "Owner", share: 54 },
  { heading: "Attachment", share: 28 },
  { heading: "Existing", innerUnit, share: 24, align: "right" },
  { heading: "Proposed", innerUnit, share: 24, align: "right" },
  { heading: "Make-ready", share: 58 },
];

/** What the pole owner is asked: every attachment of the poles that carry our strand, as it is and as it is to be. */
export function permitDrafts(
  plant: Plant,
  paper: Paper,
  poleIds: readonly string[],
  designed: Plant | null,
): readonly Draft[] {
  const { columns, rows, notes } = designed ? permitSchedule(designed, poleIds, plant) : permitSchedule(plant, poleIds);
  const foot = noteFoot(notes, paper.drawing);
  return tableDrafts({
    kind: "permit",
    title: "Pole permit list",
    columns,
    rows,
    box: foot.rest,
    leastMm: 180,
    beside: foot.marks,
  });
}

/**
 * Every attachment of the poles that carry our strand, as it is and as it is to be.
 *
 * @param built  the route as built: our strand was asked for as designed, and stands under that as it was read
 */
export function permitSchedule(plant: Plant, poleIds: readonly string[], built: Plant | null = null): Schedule {
  const innerUnit = lengthUnit(plant.settings().unitSystem);
  const columns = columnsIn(innerUnit);
  const rows = poleIds.filter((id) => carriesStrand(plant, id)).flatMap((id) => poleRows(plant, id, built));
  return {
    name: "Pole permits",
    grouped: "Pole",
    columns,
    rows,
    notes: [...footNotes(plant), ...(built ? [struckNote] : [])],
  };
}

function poleRows(plant: Plant, poleId: string, built: Plant | null): readonly TableRow[] {
  const system = plant.settings().unitSystem;
  const pole = plant.rowOf("pole", poleId);
  const ready = makeReady(plant, poleId);
  const facts = [
    pole.owner === "" ? "owner unknown" : pole.owner,
    ...(pole.poleClass === "" ? [] : [`class ${pole.poleClass}`]),
    pole.aboveGroundM === null ? "height unknown" : `${formatLength(pole.aboveGroundM, system, "span")} above ground`,
    ...lineWords(plant, poleId),
  ];
  const others = plant
    .where("attachment", "poleId", poleId)
    .map((id) => plant.rowOf("attachment", id))
    .filter((one) => one.kind !== "ourStrand")
    .map((one) => ({ heightM: one.heightM, row: { cells: otherCells(plant, one, ready) } }));
  const own = strandAtPole(plant, poleId);
  const ownRow = { cells: ownCells(plant, own, ready) };
  const rows = [...others, { heightM: own.heightM, row: built ? builtRow(ownRow, built, poleId) : ownRow }];
  return [
    { group: `${pole.tag}   ${facts.join(", ")}`, of: pole.tag },
    ...rows.sort((a, b) => b.heightM - a.heightM).map(({ row }) => row),
    ...(ready.kind === "none" || ready.kind === "unknown" ? [{ note: `◆ ${ready.why}` }] : []),
  ];
}

/** Our strand as it was asked for, the height it was read at under that where it prints otherwise. */
function builtRow({ cells }: { readonly cells: readonly Cell[] }, built: Plant, poleId: string): TableRow {
  const at = heightCell(strandAtPole(built, poleId).heightM, built.settings().unitSystem);
  const asked = cellText(cells[proposedColumn] ?? "");
  const id = heightReading(poleId);
  if (!built.row("reading", id) || whyNotDrawn(built, id) || asked === cellText(at)) return { cells };
  return {
    cells: cells.with(proposedColumn, at),
    struck: cells.map((_, column) => (column === proposedColumn ? asked : null)),
  };
}

const proposedColumn = 3;

/** What our line adds to the load of a pole, with the load factors of the strength set. */
function lineWords(plant: Plant, poleId: string): readonly string[] {
  const line = lineOnPole(plant, poleId, "loaded");
  if (!line) return [];
  const force = (valueN: number) => formatForce(valueN, plant.settings().unitSystem);
  // a pole lower than its neighbours is pulled up
  const weight = `${force(Math.abs(line.downN))} ${line.downN < 0 ? "up" : "down"}`;
  return [`our line loaded: ${weight}, ${force(line.acrossN)} of wind`];
}

function otherCells(plant: Plant, { id, owner, kind, heightM }: Attachment, ready: MakeReady): readonly Cell[] {
  const height = (valueM: number) => formatLength(valueM, plant.settings().unitSystem, "height");
  const cell = (valueM: number) => heightCell(valueM, plant.settings().unitSystem);
  const move = ready.kind === "moves" ? ready.best.moves.find((one) => one.attachmentId === id) : undefined;
  const name = [owner === "" ? "unknown" : owner, attachmentWords[kind] || "communication"];
  if (!move) return [...name, cell(heightM), { ...cell(heightM), paper: "stays" }, ""];
  const way = `${move.toM < move.fromM ? "Lower" : "Raise"} by ${height(Math.abs(move.toM - move.fromM))}`;
  const warned = move.ownerOnly ? "; by its owner's own rules" : "";
  return [...name, cell(heightM), cell(move.toM), `◆ ${way}${warned}`];
}

function ownCells(
  plant: Plant,
  { heightM, attachmentId }: ReturnType<typeof strandAtPole>,
  ready: MakeReady,
): readonly Cell[] {
  const height = (valueM: number) => formatLength(valueM, plant.settings().unitSystem, "height");
  const proposedM = ourHeightM(ready) ?? heightM;
  const isMoved = height(proposedM) !== height(heightM);
  const notes = [
    ...(isMoved ? [`◆ drawn at ${height(heightM)}`] : []),
    ...(attachmentId === null ? ["usual height, assumed"] : []),
  ];
  return [
    plant.settings().company || "ours",
    "strand, new",
    "",
    heightCell(proposedM, plant.settings().unitSystem),
    notes.join("; "),
  ];
}

/** Where make-ready puts our strand; null where it leaves it as drawn. */
function ourHeightM(ready: MakeReady): number | null {
  if (ready.kind === "moves") return ready.best.ourHeightM;
  return ready.kind === "oursAlone" ? ready.ourHeightM : null;
}

function footNotes(plant: Plant): readonly string[] {
  const set = plant.rowOf("clearanceSet", plant.settings().clearanceSetId);
  const limits = clearanceSetIds(plant)
    .flatMap((id) => plant.where("clearanceLimit", "clearanceSetId", id))
    .map((id) => plant.rowOf("clearanceLimit", id));
  const doubtful = limits.filter((one) => isUnverified(catalogueBasis(one))).length;
  const mark = doubtful === 0 ? "" : ` (${doubtful} of its ${limits.length} limits from memory, unverified)`;
  return [
    `Heights above the ground at the pole. Moves by the limits of ${set.name}${mark}: fewest first, then the least distance; the poles beside stay as they are.`,
    `Our line loaded: ${weatherWords(plant)}. ◆ what must be decided or moved first. Each owner confirms heights and moves in the field.`,
  ];
}

const struckNote = "Struck heights of our strand were asked for, those under them built.";

/** Weather and factors of what our line adds: "NESC heavy on half of each span, load factors of NESC grade B, unverified: weight 1.50". */
function weatherWords(plant: Plant): string {
  const { loadingDistrictId, strengthSetId } = plant.settings();
  const [district, set] = [
    plant.rowOf("loadingDistrict", loadingDistrictId),
    plant.rowOf("strengthSet", strengthSetId),
  ];
  const mark = [district, set].some((row) => isUnverified(catalogueBasis(row))) ? ", unverified" : "";
  const loads = { vertical: "weight", wind: "wind", windAtCrossing: "wind at crossings" } as const;
  const factors = (["vertical", "wind", "windAtCrossing"] as const).flatMap((load) => {
    const { factor, row } = loadFactorFor(plant, load, "loaded");
    return row ? [`${loads[load]} ${fixedText(factor, 2)}`] : [];
  });
  return `${district.name} on half of each span, load factors of ${set.name}${mark}: ${factors.length === 0 ? "none" : factors.join(", ")}`;
}
