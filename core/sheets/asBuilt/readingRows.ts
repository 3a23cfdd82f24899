import { type AskedReading, askedReadings } from "../../closeout/askedReadings.ts";
import { closeoutBoard } from "../../closeout/board.ts";
import { disputeOf, saidBy } from "../../closeout/disputes.ts";
import { readingText, writingOf } from "../../closeout/packet/readingText.ts";
import { thingName } from "../../closeout/thingName.ts";
import { readingWords } from "../../closeout/words.ts";
import type { Row } from "../../model/tables.ts";
import type { Plant } from "../../plant/plant.ts";
import { byText } from "../../plant/sorting.ts";
import type { Finding } from "../../rules/finding.ts";
import { metresPerInch } from "../../units/constants.ts";
import { fixedText } from "../../units/fixedText.ts";
import { formatPowerDbm } from "../../units/formatPowerDbm.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";
import type { Schedule } from "../schedule/schedule.ts";

const columns: readonly Column[] = [
  { heading: "Of", share: 52 },
  { heading: "Read", share: 40 },
  { heading: "Designed", share: 46 },
  { heading: "As read", share: 26, align: "right" },
  { heading: "Difference", share: 22, align: "right" },
  { heading: "Verdict", share: 86 },
  { heading: "Read by", share: 44 },
];

const notes = [
  "Within the limit: no check that compares the reading finds anything. Outside: the check says what it compares, and is listed under findings and waivers. Nothing to hold it against: the design gives no figure for it.",
];

/** Every reading beside what was designed, terminal by terminal along the route; what was asked for and not read is told too. */
export function readingSchedule(plant: Plant, findings: readonly Finding[]): Schedule {
  const outside = findingsByReading(findings);
  const shown = new Set<string>();
  const groups = closeoutBoard(plant, "").rows.flatMap(({ terminalId, poleId, built }): readonly TableRow[] => {
    const rows = built.flatMap(({ subject }) =>
      askedReadings(plant, subject).map((one) => {
        shown.add(one.id);
        return { cells: cellsOf(plant, one, plant.row("reading", one.id), outside) };
      }),
    );
    const tag = plant.rowOf("pole", poleId).tag;
    const name = terminalId === null ? `to pole ${tag}` : `${plant.rowOf("terminal", terminalId).name}, at pole ${tag}`;
    return rows.length === 0 ? [] : [{ group: name, of: name }, ...rows];
  });
  const others = plant
    .all("reading")
    .filter((id) => !shown.has(id))
    .sort(byText)
    .map((id) => ({ cells: readCells(plant, plant.rowOf("reading", id), "", "", outside) }));
  const rest: readonly TableRow[] =
    others.length === 0 ? [] : [{ group: "Read beside what was asked", of: "others" }, ...others];
  return { name: "Readings", grouped: "Stretch", columns, rows: [...groups, ...rest], notes };
}

function cellsOf(
  plant: Plant,
  asked: AskedReading,
  row: Row<"reading"> | undefined,
  outside: ReadonlyMap<string, string>,
): readonly string[] {
  const system = plant.settings().unitSystem;
  const designed = designedText(asked, system);
  const dispute = disputeOf(plant, asked.id);
  if (dispute) {
    const said = dispute.sides.map(saidBy);
    const read = said.map((one) => readingText(one.what, one, system)).join(" / ");
    const by = said.map((one) => one.by).join(" / ");
    return [thingName(plant, asked.subject), whatText(asked), designed, read, "", "◆ in dispute", by];
  }
  if (!row) return [thingName(plant, asked.subject), whatText(asked), designed, "", "", "◆ not read", ""];
  return readCells(plant, row, designed, differenceText(asked, row, system), outside);
}

function readCells(
  plant: Plant,
  row: Row<"reading">,
  designed: string,
  difference: string,
  outside: ReadonlyMap<string, string>,
): readonly string[] {
  const found = outside.get(row.id);
  const verdict = found ?? (designed === "" ? "nothing to hold it against" : "within the limit");
  const read = readingText(row.what, row, plant.settings().unitSystem);
  const by = `${row.by}, ${row.atIso.slice(0, 10)}`;
  return [thingName(plant, row), whatText(row), designed, read, difference, verdict, by];
}

function whatText({ what, wavelengthNm }: Pick<AskedReading, "what" | "wavelengthNm">): string {
  return wavelengthNm > 0 ? `${readingWords[what]} at ${wavelengthNm} nm` : readingWords[what];
}

function designedText({ what, drawn }: AskedReading, system: UnitSystem): string {
  if (drawn === null) return "";
  if (drawn.kind === "text") return drawn.text;
  if (drawn.kind === "most") return `${readingText(what, { value: drawn.most, text: "" }, system)} at most`;
  if (drawn.kind === "figure") return readingText(what, { value: drawn.value, text: "" }, system);
  return `${formatPowerDbm(drawn.least)} to ${formatPowerDbm(drawn.most)}`;
}

/** How much more was read than designed; light is held against the nearer end of its range. */
function differenceText({ what, drawn }: AskedReading, { value }: Row<"reading">, system: UnitSystem): string {
  if (value === null || drawn === null) return "";
  if (what === "portOfDrop" || what === "continuity") return "";
  if (drawn.kind === "range") {
    const offDb = value < drawn.least ? value - drawn.least : value > drawn.most ? value - drawn.most : 0;
    return `${signed(offDb)} dB`;
  }
  if (drawn.kind !== "figure") return "";
  const differs = value - drawn.value;
  if (writingOf(what) !== "length") return signed(differs);
  return system === "us" ? `${signed(differs / metresPerInch, 1)} in` : `${signed(differs, 3)} m`;
}

function signed(value: number, decimalCount = 2): string {
  const text = fixedText(value, decimalCount);
  return Number(text) > 0 ? `+${text}` : text;
}

/** By id of a reading what the checks found of it. */
function findingsByReading(findings: readonly Finding[]): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const { subjects, message, waiverId } of findings)
    for (const { table, id } of subjects)
      if (table === "reading" && !found.has(id))
        found.set(id, `◆ outside the limit${waiverId === null ? "" : ", waived"}: ${message}`);
  return found;
}
