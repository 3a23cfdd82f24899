import { dropCutM, dropRunM } from "../plant/dropView.ts";
import type { Plant } from "../plant/plant.ts";
import { type Draft, type Drawn, terminalKey } from "./book.ts";
import { terminalCautions } from "./cautions.ts";
import type { Mark } from "./displayList.ts";
import { wrapText } from "./fitText.ts";
import { bodyMm, rectangle, smallMm, words } from "./marks.ts";
import { panelHead, tableUnderHead, underHead } from "./panel.ts";
import { drawingBox, type PaperBox } from "./paper.ts";
import { portFace } from "./portFace.ts";
import { lengthFigure, lengthUnit } from "./quantityText.ts";
import { readingPanel } from "./readingPanel.ts";
import { type Column, drawTable, pageRows, type TableRow } from "./table.ts";
import { terminalElevation } from "./terminalElevation.ts";
import { colourWords, type TerminalFacts, terminalFacts } from "./terminalFacts.ts";
import { terminalSteps } from "./terminalSteps.ts";
import { emptyPortWords } from "./tradeWords.ts";
import { tubePanel } from "./tubePanel.ts";

const left: PaperBox = { ...drawingBox, right: drawingBox.left + 188 };
const right: PaperBox = { ...drawingBox, left: left.right + 9 };
const faceMm = 58;
const tubesMm = 62;
const cautionMm = 17;

/** One terminal's sheet: where it hangs, what feeds it, whom it serves, and the steps to build it. */
export function terminalDraft(plant: Plant, terminalId: string): Draft {
  const { name } = plant.rowOf("terminal", terminalId);
  return {
    key: terminalKey(terminalId),
    kind: "terminal",
    title: `Terminal ${name}`,
    scale: "none",
    draw: () => drawTerminalSheet(plant, terminalId),
  };
}

function drawTerminalSheet(plant: Plant, terminalId: string): Drawn {
  const facts = terminalFacts(plant, terminalId);
  const bottom = drawingBox.bottom;
  const readings = readingPanel(plant, terminalId, left.right - left.left);
  const light = { ...left, top: bottom + readings.heightMm };
  const list = stepLines(terminalSteps(facts), left.right - left.left);
  const steps = { ...left, bottom: light.top, top: light.top + stepsMm(list) };
  const face = { ...left, bottom: steps.top, top: steps.top + faceMm };
  const place = { ...left, bottom: face.top + 2 };
  const tubes = { ...right, bottom: right.top - tubesMm };
  const fibers = { ...right, top: tubes.bottom };
  const drawnFibers = fiberTable(facts, fibers);
  const ports = { ...right, top: drawnFibers.bottom - 5, bottom: right.bottom + cautionMm + 3 };
  return {
    marks: [
      ...panelHead(
        `Terminal ${facts.terminal.name}: ${facts.model.name.toLowerCase()}, at pole ${facts.poleTag} towards ${facts.towardsTag}${facts.terminal.pinned ? ", pinned" : ""}`,
        place,
      ),
      ...terminalElevation(plant, facts, underHead(place)),
      ...panelHead("Port face, as seen from the ground", face),
      ...portFace(plant, facts, underHead(face)),
      ...panelHead("Steps", steps),
      ...stepList(list, underHead(steps)),
      ...readings.draw(light),
      ...panelHead(`Cable ${facts.cableName}: which tube to open`, tubes),
      ...tubePanel(facts, underHead(tubes)),
      ...drawnFibers.marks,
      ...portTable(plant, facts, ports),
      ...cautionBox({ ...right, top: right.bottom + cautionMm }),
    ],
  };
}

const fiberColumns: readonly Column[] = [
  { heading: "Fiber", share: 13, align: "right" },
  { heading: "Tube", share: 34 },
  { heading: "Fiber colour", share: 34 },
  { heading: "Spliced to", share: 36 },
  { heading: "Lights ports", share: 26 },
  { heading: "From", share: 42 },
];

function fiberTable(facts: TerminalFacts, box: PaperBox) {
  const rows = facts.fibers.map(({ use, tube, place, splitter, feedName }) => ({
    cells: [
      String(use.fiber),
      `${tube}  ${colourWords(tube)}`,
      `${place}  ${colourWords(place)}`,
      splitter ? `splitter ${splitter.position}, input` : use.purpose,
      splitter ? `${splitter.firstPort} to ${splitter.firstPort + splitter.legCount - 1}` : "",
      feedName,
    ],
  }));
  const drawn = drawTable(
    fiberColumns,
    rows.length > 0 ? rows : [{ group: "No fiber feeds this terminal yet" }],
    tableUnderHead(box),
  );
  return { marks: [...panelHead("Fibers to cut and splice", box), ...drawn.marks], bottom: drawn.bottom };
}

function portTable(plant: Plant, facts: TerminalFacts, box: PaperBox): readonly Mark[] {
  const unit = lengthUnit(facts.settings.unitSystem);
  const columns: readonly Column[] = [
    { heading: "Port", share: 12, align: "right" },
    { heading: "Splitter", share: 17, align: "right" },
    { heading: "Leg", share: 12, align: "right" },
    { heading: "Living unit", share: 88 },
    { heading: "Run", unit, share: 18, align: "right" },
    { heading: "Cut drop to", unit, share: 22, align: "right" },
    { heading: "House tag", share: 28 },
  ];
  const table = tableUnderHead(box);
  const [rows = [], ...more] = pageRows(columns, portRows(plant, facts), { ...table, bottom: table.bottom + 8 });
  const rest = more.length === 0 ? [] : [{ group: "The other ports stand in the port and drop schedule" }];
  return [...panelHead("Ports and drops", box), ...drawTable(columns, [...rows, ...rest], table).marks];
}

function portRows(plant: Plant, facts: TerminalFacts): readonly TableRow[] {
  const system = facts.settings.unitSystem;
  return facts.ports.flatMap((port) => {
    const splitter = port.splitterId === null ? "" : String(plant.rowOf("splitter", port.splitterId).position);
    const light = [String(port.port), splitter, port.leg === null ? "" : String(port.leg)];
    if (port.dropIds.length === 0)
      return [{ cells: [...light, `${emptyPortWords(facts.terminal, port)}, cap on`, "", "", ""] }];
    return port.dropIds.map((dropId) => ({
      cells: [
        ...light,
        plant.rowOf("livingUnit", plant.rowOf("drop", dropId).livingUnitId).address,
        lengthFigure(dropRunM(plant, dropId), system),
        lengthFigure(dropCutM(plant, dropId), system),
        `${facts.terminal.name}-${port.port}`,
      ],
    }));
  });
}

const stepIndentMm = 8;
const stepLineMm = 3.85;
const stepGapMm = 1.2;

/** Steps broken into lines that fit the width. */
function stepLines(steps: readonly string[], widthMm: number): readonly (readonly string[])[] {
  return steps.map((step) => wrapText(step, "plain", bodyMm, widthMm - stepIndentMm));
}

/** Height of the panel of steps, its heading and the white under it included, mm. */
function stepsMm(steps: readonly (readonly string[])[]): number {
  return steps.reduce((sum, lines) => sum + lines.length * stepLineMm + stepGapMm, 10);
}

function stepList(steps: readonly (readonly string[])[], box: PaperBox): readonly Mark[] {
  const marks: Mark[] = [];
  let y = box.top - 2.6;
  for (const lines of steps) {
    marks.push(rectangle("tables", "thin", [box.left, y - 0.3], 2.6, 2.6));
    for (const text of lines) {
      marks.push(words(text, [box.left + stepIndentMm - 3, y], { layer: "tables" }));
      y -= stepLineMm;
    }
    y -= stepGapMm;
  }
  return marks;
}

function cautionBox(box: PaperBox): readonly Mark[] {
  const text = terminalCautions.join("  ");
  const lines = wrapText(text, "plain", smallMm, box.right - box.left - 8);
  return [
    rectangle("tables", "medium", [box.left, box.bottom], box.right - box.left, box.top - box.bottom),
    words("Cautions", [box.left + 4, box.top - 4.8], { face: "plainBold", heightMm: bodyMm }),
    ...lines.map((line, index) => words(line, [box.left + 4, box.top - 9 - index * 3.3], { heightMm: smallMm })),
  ];
}
