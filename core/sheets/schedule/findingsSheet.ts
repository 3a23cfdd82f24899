import type { Plant } from "../../plant/plant.ts";
import { byName } from "../../plant/sorting.ts";
import type { Finding } from "../../rules/finding.ts";
import { figureText } from "../../rules/findingFigures.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";
import type { Draft, NumberedFinding } from "../book.ts";
import { type Cell, figure } from "../paper/figure.ts";
import { noteFoot } from "../paper/noteFoot.ts";
import type { Paper } from "../paper/paper.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";
import { markWords, placeWords } from "../sourceWords.ts";
import { isMarked } from "./findingNumbers.ts";
import type { Schedule } from "./schedule.ts";
import { tableDrafts } from "./tableSheets.ts";

const columns: readonly Column[] = [
  { heading: "No.", share: 15, align: "right" },
  { heading: "Severity", share: 18 },
  { heading: "Finding", share: 150 },
  { heading: "Measured", share: 26, align: "right" },
  { heading: "Limit", share: 26, align: "right" },
  { heading: "Basis of the limit", share: 104 },
  { heading: "Source", share: 32 },
];

const severityWords: Readonly<Record<Finding["severity"], string>> = {
  error: "◆ error",
  warning: "△ warning",
  note: "○ note",
};

const caution =
  "A limit read from memory is unverified until someone has read it in the document named. What is not listed here passed the checks that could be made; it is not thereby proven.";

/** Open findings by weight, those that say the same told once with all their places; then what was waived, by whom and why. */
export function findingDrafts(
  plant: Plant,
  paper: Paper,
  findings: readonly Finding[],
  open: readonly NumberedFinding[],
): readonly Draft[] {
  const system = plant.settings().unitSystem;
  const rows = [...openRows(open, system, alikeRows), ...waivedRows(plant, findings, system)];
  const { rest, marks } = noteFoot([caution], paper.drawing);
  return tableDrafts({ kind: "findings", title: "Findings and waivers", columns, rows, box: rest, beside: marks });
}

/** The same with a row for each finding, as a spreadsheet has them. */
export function findingSchedule(
  plant: Plant,
  findings: readonly Finding[],
  open: readonly NumberedFinding[],
): Schedule {
  const system = plant.settings().unitSystem;
  const rows = [...openRows(open, system, eachRow), ...waivedRows(plant, findings, system)];
  return { name: "Findings", grouped: "Standing", columns, rows, notes: [caution] };
}

type TellFinding = (one: NumberedFinding, open: readonly NumberedFinding[], system: UnitSystem) => readonly TableRow[];

function openRows(open: readonly NumberedFinding[], system: UnitSystem, tell: TellFinding): readonly TableRow[] {
  if (open.length === 0) return [{ group: "No open findings" }];
  const count = (severity: Finding["severity"]) => open.filter((one) => one.finding.severity === severity).length;
  const summary = `Open findings: ${count("error")} errors, ${count("warning")} warnings, ${count("note")} notes`;
  return [{ group: summary, of: "open" }, ...open.flatMap((one) => tell(one, open, system))];
}

const eachRow: TellFinding = ({ number, finding }, _, system) => [
  { cells: cellsOf(figure(number, 0), finding, finding.message, system) },
];

/** As many names stand in one row, which must fit the smallest sheet. */
const namesInRow = 60;

/** The first of those that are alike tells for all of them, and the rows under it where. */
const alikeRows: TellFinding = (one, open, system) => {
  const { number, finding, alike } = one;
  if (!alike) return eachRow(one, open, system);
  const same = open.filter((other) => other.number === number);
  if (same[0] !== one) return [];
  const places = same
    .flatMap((other) => (other.alike ? [{ name: other.alike.name, measured: other.finding.measured }] : []))
    .sort((a, b) => byName(a.name, b.name))
    .map(({ name, measured }) =>
      measured === null ? name : `${name} (${figureText(measured, finding.unit, system)})`,
    );
  const unmarked = isMarked(one) ? "" : ", not marked on the plans";
  const message = `${alike.shape} ${alike.count} alike${unmarked}:`;
  const rowCount = Math.ceil(places.length / namesInRow);
  return [
    { cells: cellsOf(figure(number, 0), { ...finding, measured: null }, message, system) },
    ...Array.from({ length: rowCount }, (_, at) => ({
      note: places.slice(at * namesInRow, (at + 1) * namesInRow).join(", "),
    })),
  ];
};

function waivedRows(plant: Plant, findings: readonly Finding[], system: UnitSystem): readonly TableRow[] {
  const waived = findings.flatMap((finding) => {
    const waiver = finding.waiverId === null ? undefined : plant.row("waiver", finding.waiverId);
    return waiver ? [{ finding, waiver }] : [];
  });
  if (waived.length === 0) return [{ group: "No waivers" }];
  return [
    { group: `Waived: ${waived.length}`, of: "waived" },
    ...waived.map(({ finding, waiver }) => ({
      cells: cellsOf(
        "",
        finding,
        `${finding.message} Waived by ${waiver.by}, ${waiver.atIso.slice(0, 10)}: ${waiver.reason}`,
        system,
      ),
    })),
  ];
}

function cellsOf(number: Cell, finding: Finding, message: string, system: UnitSystem): readonly Cell[] {
  const { basis, unit } = finding;
  return [
    number,
    severityWords[finding.severity],
    message,
    ...[finding.measured, finding.limit].map((one) => (one === null ? "" : figureText(one, unit, system))),
    placeWords(basis),
    markWords[basis.mark],
  ];
}
