import type { Plant } from "../plant/plant.ts";
import type { Finding } from "../rules/finding.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { Draft, NumberedFinding } from "./book.ts";
import { type Cell, figure } from "./figure.ts";
import { noteFoot } from "./noteFoot.ts";
import type { Paper } from "./paper.ts";
import { figureText } from "./quantityText.ts";
import type { Schedule } from "./schedule.ts";
import { markWords, placeWords } from "./sourceWords.ts";
import type { Column, TableRow } from "./table.ts";
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

/** Open findings by weight, then what was waived, by whom and why. */
export function findingDrafts(
  plant: Plant,
  paper: Paper,
  findings: readonly Finding[],
  open: readonly NumberedFinding[],
): readonly Draft[] {
  const { columns, rows, notes } = findingSchedule(plant, findings, open);
  const { rest, marks } = noteFoot(notes, paper.drawing);
  return tableDrafts({ kind: "findings", title: "Findings and waivers", columns, rows, box: rest, beside: marks });
}

export function findingSchedule(
  plant: Plant,
  findings: readonly Finding[],
  open: readonly NumberedFinding[],
): Schedule {
  const system = plant.settings().unitSystem;
  const rows = [...openRows(open, system), ...waivedRows(plant, findings, system)];
  return { name: "Findings", grouped: "Standing", columns, rows, notes: [caution] };
}

function openRows(open: readonly NumberedFinding[], system: UnitSystem): readonly TableRow[] {
  if (open.length === 0) return [{ group: "No open findings" }];
  const count = (severity: Finding["severity"]) => open.filter((one) => one.finding.severity === severity).length;
  const summary = `Open findings: ${count("error")} errors, ${count("warning")} warnings, ${count("note")} notes`;
  return [
    { group: summary, of: "open" },
    ...open.map(({ number, finding }) => ({ cells: cellsOf(figure(number, 0), finding, finding.message, system) })),
  ];
}

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
    figureText(finding.measured, unit, system),
    figureText(finding.limit, unit, system),
    placeWords(basis),
    markWords[basis.mark],
  ];
}
