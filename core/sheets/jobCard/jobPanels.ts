import type { Plant } from "../../plant/plant.ts";
import { facePlan } from "../../plant/terminalView.ts";
import { fieldsRead, nothingRead } from "../asBuilt/fieldsRead.ts";
import type { Block } from "../paper/flow.ts";
import { asFigure } from "../paper/marks.ts";
import { panelHead, panelHeadMm, underHead } from "../paper/panel.ts";
import type { PaperBox } from "../paper/paper.ts";
import { kindAndName } from "../tradeWords.ts";
import { cautionBlock, stepBlock } from "./jobSteps.ts";
import { fiberBlock, portBlocks } from "./jobTables.ts";
import { photoBox } from "./photoBox.ts";
import { portFace } from "./portFace.ts";
import { readingPanel } from "./readingPanel.ts";
import { terminalElevation } from "./terminalElevation.ts";
import { numberRanges, type TerminalFacts, terminalFacts } from "./terminalFacts.ts";
import { terminalSteps } from "./terminalSteps.ts";
import { tubePanel, tubePanelMm } from "./tubePanel.ts";

const placeMm = 69;
const photoMm = 40;
const faceRankMm = { usual: 20, many: 15 } as const;
const faceWhiteMm = 5;

/** What a terminal's job card tells, in two groups: the place and what to do there; cable, fibers and ports. */
export function jobPanels(
  plant: Plant,
  terminalId: string,
  column: PaperBox,
  designed: Plant | null,
): readonly (readonly Block[])[] {
  const facts = terminalFacts(plant, terminalId, designed);
  const read = designed ? fieldsRead(plant) : nothingRead;
  const widthMm = column.right - column.left;
  const place = [
    placeBlock(plant, facts),
    faceBlock(plant, facts),
    stepBlock(terminalSteps(facts, read), widthMm),
    cautionBlock(widthMm),
  ];
  const cable = [tubeBlock(facts), fiberBlock(facts, column), ...portBlocks(plant, facts, column, read)];
  const readings = readingPanel(plant, terminalId, widthMm, read);
  return heightOf(place) < heightOf(cable) ? [[...place, readings], cable] : [place, [...cable, readings]];
}

function heightOf(blocks: readonly Block[]): number {
  return blocks.reduce((sum, one) => sum + one.heightMm, 0);
}

/** Where the terminal hangs, and a frame for the photo of it. */
function placeBlock(plant: Plant, facts: TerminalFacts): Block {
  const { terminal, model, poleTag, towardsTag } = facts;
  const title = `Terminal ${terminal.name}: ${model.name.toLowerCase()}, at pole ${poleTag} towards ${towardsTag}${terminal.pinned ? ", pinned" : ""}`;
  return {
    heightMm: placeMm,
    draw(box) {
      const body = { ...underHead(box), bottom: box.top - placeMm + 3 };
      const photo = { ...body, left: body.right - photoMm };
      return [
        ...panelHead(title, box),
        ...asFigure(
          `${title}, seen from the side`,
          terminalElevation(plant, facts, { ...body, right: photo.left - 5 }),
        ),
        ...photoBox("Photo of the finished place", photo),
      ];
    },
  };
}

function faceBlock(plant: Plant, facts: TerminalFacts): Block {
  const rankCount = Math.max(...facePlan(plant, facts.model.id).map((one) => one.rank)) + 1;
  const rankMm = rankCount > 2 ? faceRankMm.many : faceRankMm.usual;
  const heightMm = panelHeadMm + rankCount * rankMm + faceWhiteMm;
  return {
    heightMm,
    draw: (box) => [
      ...panelHead("Port face, as seen from the ground", box),
      ...asFigure(faceWords(facts), portFace(plant, facts, { ...underHead(box), bottom: box.top - heightMm })),
    ],
  };
}

/** Ports of the face in words; the port table tells what is on each. */
function faceWords({ terminal, ports }: TerminalFacts): string {
  const used = ports.filter((one) => one.dropIds.length > 0).map((one) => one.port);
  return `The face of ${terminal.name}: ${ports.length} ports, ${used.length === 0 ? "none used" : `used ${numberRanges(used)}`}`;
}

function tubeBlock(facts: TerminalFacts): Block {
  const heightMm = panelHeadMm + tubePanelMm(facts);
  return {
    heightMm,
    draw: (box) => [
      ...panelHead(`${kindAndName("Cable", facts.cableName)}: which tube to open`, box),
      ...tubePanel(facts, { ...underHead(box), bottom: box.top - heightMm }),
    ],
  };
}
