import { subjectOf } from "../../closeout/subject.ts";
import { type BondPlace, bondPlaces, farthestBondM, farthestBondPoles } from "../../plant/bondPlaces.ts";
import type { Plant } from "../../plant/plant.ts";
import type { Step } from "../../plant/spanRuns.ts";
import { strandAtPole } from "../../plant/strandHeight.ts";
import { formatLength } from "../../units/formatLength.ts";
import { type FieldsRead, fieldsRead, nothingRead } from "../asBuilt/fieldsRead.ts";
import type { Draft } from "../book.ts";
import { heightCell, lengthCell } from "../paper/figure.ts";
import { noteFoot } from "../paper/noteFoot.ts";
import type { Paper } from "../paper/paper.ts";
import { lengthUnit } from "../paper/quantityText.ts";
import { type Column, type TableRow, tickBox } from "../paper/tableRow.ts";
import { kindAndName } from "../tradeWords.ts";
import type { Schedule } from "./schedule.ts";
import { tableDrafts } from "./tableSheets.ts";

/** Where the strand is bonded and to what, section by section as the route is walked, with fields for what is found and measured there. */
export function bondingDrafts(
  plant: Plant,
  paper: Paper,
  steps: readonly Step[],
  isAsBuilt: boolean,
): readonly Draft[] {
  const { columns, rows, notes } = bondingSchedule(plant, steps, isAsBuilt ? fieldsRead(plant) : nothingRead);
  const foot = noteFoot(notes, paper.drawing);
  return tableDrafts({
    kind: "bonding",
    title: "Bonding and grounding schedule",
    columns,
    rows,
    box: foot.rest,
    leastMm: 180,
    ruled: true,
    beside: foot.marks,
  });
}

export function bondingSchedule(plant: Plant, steps: readonly Step[], read: FieldsRead = nothingRead): Schedule {
  const places = bondPlaces(plant, steps);
  const walked = steps.flatMap(({ spanId }) => plant.rowOf("span", spanId).strandSectionId ?? []);
  const sections = [...new Set(walked)].filter((id) => places.some((one) => one.sectionId === id));
  const rows = sections.flatMap((id): readonly TableRow[] => {
    const own = places.filter((one) => one.sectionId === id);
    const { name } = plant.rowOf("strandSection", id);
    return [{ group: headingOf(plant, id, own.length), of: name }, ...own.map((place) => rowOf(plant, place, read))];
  });
  return { name: "Bonds and grounds", grouped: "Strand", columns: columnsOf(plant), rows, notes: footNotes(plant) };
}

function columnsOf(plant: Plant): readonly Column[] {
  const { unitSystem } = plant.settings();
  return [
    { heading: "Pole", share: 19 },
    { heading: "Since the last", unit: lengthUnit(unitSystem), share: 18, align: "right" },
    { heading: "Bonded here for", share: 40 },
    { heading: "Strand at", share: 20, align: "right" },
    { heading: "Neutral at", share: 20, align: "right" },
    { heading: "Ground wire found", share: 18 },
    { heading: "Voltage before", unit: "V", share: 17, align: "right" },
    { heading: "Ground", unit: "ohm", share: 15, align: "right" },
    { heading: "Bonded", share: 15 },
  ];
}

function headingOf(plant: Plant, sectionId: string, count: number): string {
  const { name, strandTypeId } = plant.rowOf("strandSection", sectionId);
  return `${kindAndName("Strand", name)}: ${plant.rowOf("strandType", strandTypeId).name}; ${count} bonds`;
}

function rowOf(plant: Plant, { poleId, sectionId, sinceM, why }: BondPlace, read: FieldsRead): TableRow {
  const system = plant.settings().unitSystem;
  const bond = subjectOf("bond", poleId, 0, sectionId);
  const conducts = read.value(bond, "continuity");
  const neutrals = plant
    .where("attachment", "poleId", poleId)
    .map((id) => plant.rowOf("attachment", id))
    .filter((one) => one.kind === "neutral");
  return {
    cells: [
      plant.rowOf("pole", poleId).tag,
      sinceM === null ? "" : lengthCell(sinceM, system),
      why.join(", "),
      heightCell(strandAtPole(plant, poleId).heightM, system),
      neutrals[0] ? heightCell(neutrals[0].heightM, system) : "none",
      "□ yes  □ no",
      "",
      read.text(bond, "resistance"),
      conducts === 0 ? "no" : tickBox(conducts !== null),
    ],
  };
}

function footNotes(plant: Plant): readonly string[] {
  const gap = formatLength(farthestBondM, plant.settings().unitSystem, "span");
  return [
    `Bond the strand to the pole's ground wire, or as the pole owner tells, with No. 6 AWG copper at least: at dead ends and at most every ${gap} (GO 95 83.4, text before Decision 05-01-030 [seen, historical]); first, last and every fourth pole, counted ${farthestBondPoles} from bond to bond, and each terminal's pole (RUS 1751F-815 [from memory]). Where other communication strand hangs on the pole, bond it to ours.`,
    "Cover the bond in the climbing space; never on top of a crossarm (GO 95 83.4 [seen, historical]). Test for foreign voltage first. A made ground of 25 ohm or less, 5 ohm at the hub: practice. Armor of an armored cable is bonded through each splice (7 CFR 1755.200 [from memory]); an all-dielectric cable has nothing to bond but its strand (practice).",
  ];
}
