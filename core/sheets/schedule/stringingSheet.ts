import { spanName } from "../../plant/names.ts";
import type { Plant } from "../../plant/plant.ts";
import type { Step } from "../../plant/spanRuns.ts";
import { catalogueBasis } from "../../rules/rule.ts";
import { fixedText } from "../../units/fixedText.ts";
import { formatTemperature } from "../../units/formatTemperature.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";
import type { Draft } from "../book.ts";
import type { Mark } from "../paper/displayList.ts";
import { type Cell, figure, forceCell, lengthCell, sagCell } from "../paper/figure.ts";
import { stroke, words } from "../paper/marks.ts";
import { noteFoot } from "../paper/noteFoot.ts";
import type { Paper, PaperBox } from "../paper/paper.ts";
import { forceUnit, lengthUnit, sagUnit } from "../paper/quantityText.ts";
import { columnEdges } from "../paper/tableCells.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";
import { markWords } from "../sourceWords.ts";
import type { Schedule } from "./schedule.ts";
import { crewTemperatures, type PulledSpan, returnCount, spanStringing } from "./spanStringing.ts";
import { tableDrafts } from "./tableSheets.ts";

const headMm = 7;
/** Narrowest drawing space whose sheets take all three blocks of figures side by side, mm. */
const leastMm = 330;

/** Initial sag and tension of the bare strand, section by section, span by span, with the time of the wave on it. */
export function stringingDrafts(plant: Plant, { drawing }: Paper, steps: readonly Step[]): readonly Draft[] {
  if (drawing.right - drawing.left >= leastMm) return blockDrafts(plant, drawing, steps, blocks, "Stringing tables");
  return blocks.flatMap((one) => blockDrafts(plant, drawing, steps, [one], `Stringing tables, ${one.short}`));
}

function blockDrafts(
  plant: Plant,
  drawing: PaperBox,
  steps: readonly Step[],
  shown: readonly Block[],
  title: string,
): readonly Draft[] {
  const { columns, rows, notes } = stringingSchedule(plant, steps, shown);
  const foot = noteFoot(notes, drawing);
  const box = { ...foot.rest, top: drawing.top - headMm };
  const beside = [...blockHeads(columns, box, shown), ...foot.marks];
  return tableDrafts({ kind: "stringing", title, columns, rows, box, beside });
}

/** Stringing tables with the figures asked for, all of them where not told. */
export function stringingSchedule(plant: Plant, steps: readonly Step[], shown: readonly Block[] = blocks): Schedule {
  const columns = columnsOf(plant.settings().unitSystem, shown);
  const rows = plant.all("strandSection").flatMap((id) => sectionRows(plant, id, steps, shown));
  return { name: "Stringing", grouped: "Section", columns, rows, notes: footNotes };
}

type Block = {
  readonly title: string;
  readonly short: string;
  readonly unit: (system: UnitSystem) => string;
  readonly cell: (pulled: PulledSpan, system: UnitSystem) => Cell;
};

/** The three figures of a pulled strand, a block of columns each. */
const blocks: readonly Block[] = [
  {
    title: "Sag at midspan of the bare strand",
    short: "sag",
    unit: sagUnit,
    cell: ({ sagM }, system) => sagCell(sagM, system),
  },
  {
    title: "Tension to pull to",
    short: "tension",
    unit: forceUnit,
    cell: ({ horizontalN }, system) => forceCell(horizontalN, system),
  },
  {
    short: "time of the wave",
    title: `Time of ${returnCount} returns of a wave on the strand`,
    unit: () => "s",
    cell: ({ returnsS }) => figure(returnsS, 1),
  },
];

const fixedCount = 3;

function columnsOf(system: UnitSystem, shown: readonly Block[]): readonly Column[] {
  const block = (over: string, unit: string) =>
    crewTemperatures(system).map(
      (one): Column => ({ heading: formatTemperature(one, system), over, unit, share: 14.5, align: "right" }),
    );
  return [
    { heading: "Span", share: 40 },
    { heading: "Length", unit: lengthUnit(system), share: 18, align: "right" },
    { heading: "Finished sag", unit: sagUnit(system), share: 22, align: "right" },
    ...shown.flatMap((one) => block(one.title, one.unit(system))),
  ];
}

/** What each block of columns tells, over its headings. */
function blockHeads(columns: readonly Column[], box: PaperBox, shown: readonly Block[]): readonly Mark[] {
  const edges = columnEdges(columns, box);
  const perBlock = (columns.length - fixedCount) / shown.length;
  return shown.flatMap((one, index) => {
    const first = fixedCount + index * perBlock;
    const [left, right] = [(edges[first] ?? box.left) + 4, edges[first + perBlock] ?? box.right];
    return [
      words(one.title, [(left + right) / 2, box.top + 3.2], { face: "plainBold", align: "middle" }),
      stroke("tables", "thin", [
        [left, box.top + 1.6],
        [right, box.top + 1.6],
      ]),
    ];
  });
}

function sectionRows(
  plant: Plant,
  sectionId: string,
  steps: readonly Step[],
  shown: readonly Block[],
): readonly TableRow[] {
  const spanIds = steps.map((one) => one.spanId).filter((id) => plant.rowOf("span", id).strandSectionId === sectionId);
  if (spanIds.length === 0) return [];
  const system = plant.settings().unitSystem;
  const { name, strandTypeId, stringingSagFrac, stringingDegC, atPoles } = plant.rowOf("strandSection", sectionId);
  const strand = plant.rowOf("strandType", strandTypeId);
  const of = atPoles === "slipping" ? "the ruling span, slipping at its poles," : "each span, clamped at both poles,";
  const sag = `finished sag ${fixedText(stringingSagFrac * 100, 1)} % of ${of} at ${formatTemperature(stringingDegC, system)}`;
  const figures = `figures of the strand ${markWords[catalogueBasis(strand).mark]}`;
  return [
    { group: `Section ${name}: ${strand.name}, ${sag}; ${figures}`, of: name },
    ...spanIds.map((id) => spanRow(plant, id, system, shown)),
  ];
}

function spanRow(plant: Plant, spanId: string, system: UnitSystem, shown: readonly Block[]): TableRow {
  const told = spanStringing(plant, spanId);
  const name = spanName(plant, spanId);
  if (told.kind === "unknown") return { note: told.why };
  const figures = shown.flatMap((block) => told.pulled.map((one) => block.cell(one, system)));
  const { lengthM } = plant.rowOf("span", spanId);
  return { cells: [name, lengthCell(lengthM, system), sagCell(told.finishedSagM, system), ...figures] };
}

const footNotes: readonly string[] = [
  "Pulled to these figures, the bare strand has the finished sag once its cables are lashed, before terminals and coils hang on it. Creep left out; tension is the level part.",
  `Strike the strand at a pole and take the time of ${returnCount} returns: sag = g T² / (32 · ${returnCount}²), whatever the load; RUS Bulletin 1726C-115, 1998 [seen]. Nothing may hang on the span meanwhile.`,
];
