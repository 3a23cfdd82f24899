import type { Plant } from "../plant/plant.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { formatLength } from "../units/formatLength.ts";
import type { Mark, PaperPoint } from "./displayList.ts";
import { shortenText } from "./fitText.ts";
import { slant } from "./furniture.ts";
import { rectangle, smallMm, stroke, words } from "./marks.ts";
import { textWidthMm } from "./measureText.ts";
import type { PaperBox } from "./paper.ts";
import { attachmentsOn, type TerminalFacts } from "./terminalFacts.ts";

import { hungMarks, type Scene } from "./terminalHung.ts";
import { attachmentWords } from "./tradeWords.ts";

/** Sketch of the place: the pole with everybody's attachments, our strand, the terminal with its dimension, its coil. Not to scale. */
export function terminalElevation(plant: Plant, facts: TerminalFacts, box: PaperBox): readonly Mark[] {
  const poleX = box.left + 62;
  const groundY = box.bottom + 9;
  const poleM = plant.rowOf("pole", facts.place.poleId).aboveGroundM;
  const attachments = attachmentsOn(plant, facts.place.poleId);
  const ours = strandAtPole(plant, facts.place.poleId);
  const topM = Math.max(poleM ?? 0, ours.heightM * 1.25, ...attachments.map((one) => one.heightM * 1.06));
  const heightAt = (valueM: number) => groundY + (valueM / topM) * (box.top - 4 - groundY);
  const strandY = heightAt(ours.heightM);
  const scene = { plant, facts, box, poleX, groundY, strandY };
  return [
    ...groundMarks(scene),
    rectangle("poles", "medium", [poleX - 1.5, groundY], 3, heightAt(topM) - groundY, { fill: 1 }),
    ...strandMarks(scene, formatLength(ours.heightM, facts.settings.unitSystem, "height"), ours.attachmentId === null),
    ...others(scene, attachments, heightAt, ours.attachmentId),
    ...hungMarks(scene),
  ];
}

function groundMarks({ box, groundY, poleX, facts }: Scene): readonly Mark[] {
  const hatch = Array.from({ length: 5 }, (_, index) => {
    const x = poleX - 10 + index * 5;
    return stroke("others", "fine", [
      [x, groundY],
      [x - 2, groundY - 2],
    ]);
  });
  return [
    stroke("others", "bold", [
      [box.left, groundY],
      [box.right, groundY],
    ]),
    ...hatch,
    words(`Pole ${facts.poleTag}`, [poleX, groundY - 6.2], { face: "narrowBold", heightMm: 3, align: "middle" }),
    words("Sketch, not to scale", [box.left, groundY - 6], { heightMm: smallMm, grey: 0.35 }),
    words(`to pole ${facts.towardsTag} →`, [box.right, groundY - 6], { face: "narrow", heightMm: 2.4, align: "right" }),
  ];
}

const partyRowMm = 4.2;
const partyMm = 2.2;

/** Other parties' wires: a short arm at the true height, its words led aside where heights crowd. */
function others(
  { box, poleX, facts }: Scene,
  attachments: ReturnType<typeof attachmentsOn>,
  heightAt: (valueM: number) => number,
  ownId: string | null,
): readonly Mark[] {
  const system = facts.settings.unitSystem;
  let lastY = Number.POSITIVE_INFINITY;
  return attachments
    .filter((one) => one.id !== ownId)
    .flatMap((one) => {
      const y = heightAt(one.heightM);
      const textY = Math.min(y, lastY - partyRowMm);
      lastY = textY;
      const owner = [one.owner, attachmentWords[one.kind]].filter((part) => part !== "").join(", ");
      const height = `, ${formatLength(one.heightM, system, "height")}`;
      const widthMm = poleX - box.left - 15.5 - textWidthMm(height, "narrow", partyMm);
      const text = `${shortenText(owner, "narrow", partyMm, widthMm)}${height}`;
      return [
        stroke("others", "thin", [
          [poleX - 1.5, y],
          [poleX - 9, y],
        ]),
        stroke(
          "others",
          "fine",
          [
            [poleX + 1.5, y],
            [poleX + 9, y],
          ],
          { dashMm: [2.4, 1.2] },
        ),
        stroke("others", "fine", [
          [poleX - 9, y],
          [poleX - 14, textY],
        ]),
        ...maskedWords(text, [poleX - 15.5, textY - 1.1]),
      ];
    });
}

/** Words that end at a place, with white under them where our strand runs by. */
function maskedWords(text: string, [x, y]: PaperPoint): readonly Mark[] {
  const width = textWidthMm(text, "narrow", partyMm);
  return [
    rectangle("text", null, [x - width - 0.4, y - 0.6], width + 0.8, partyMm + 1.1, { fill: 1 }),
    words(text, [x, y], { face: "narrow", heightMm: partyMm, align: "right" }),
  ];
}

function strandMarks(
  { box, poleX, groundY, strandY, facts }: Scene,
  height: string,
  assumed: boolean,
): readonly Mark[] {
  const heightX = box.right - 6;
  const middle = (groundY + strandY) / 2;
  return [
    stroke("strand", "thick", [
      [poleX - 40, strandY],
      [box.right, strandY],
    ]),
    stroke("cable", "thin", [
      [poleX - 40, strandY - 1.1],
      [box.right, strandY - 1.1],
    ]),
    words(`Cable ${facts.cableName}`, [box.right, strandY + 1.8], { face: "narrow", heightMm: 2.2, align: "right" }),
    stroke("dimensions", "thin", [
      [heightX, groundY],
      [heightX, strandY],
    ]),
    slant([heightX, groundY], Math.PI / 2),
    slant([heightX, strandY], Math.PI / 2),
    words(`${height}${assumed ? ", assumed" : ""}`, [heightX - 1.6, middle], {
      face: "narrow",
      heightMm: 2.4,
      align: "middle",
      turnRad: Math.PI / 2,
    }),
  ];
}
