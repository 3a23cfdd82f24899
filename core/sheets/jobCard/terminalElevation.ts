import type { Plant } from "../../plant/plant.ts";
import { strandAtPole } from "../../plant/strandHeight.ts";
import { formatLength } from "../../units/formatLength.ts";
import type { Mark, PaperPoint } from "../paper/displayList.ts";
import { shortenText } from "../paper/fitText.ts";
import { slant } from "../paper/furniture.ts";
import { rectangle, smallMm, stroke, words } from "../paper/marks.ts";
import { textWidthMm } from "../paper/measureText.ts";
import type { PaperBox } from "../paper/paper.ts";
import { attachmentWords, kindAndName } from "../tradeWords.ts";
import { attachmentsOn, type TerminalFacts } from "./terminalFacts.ts";
import { hungMarks, type Scene } from "./terminalHung.ts";

/** Least height of our strand over the ground, mm: what hangs from it is told in between, however much higher the pole is. */
const leastUnderMm = 25;

/** Sketch of the place: the pole with everybody's attachments, our strand, the terminal with its dimension, its coil. Not to scale. */
export function terminalElevation(plant: Plant, facts: TerminalFacts, box: PaperBox): readonly Mark[] {
  const poleX = box.left + 62;
  const groundY = box.bottom + 9;
  const poleM = plant.rowOf("pole", facts.place.poleId).aboveGroundM;
  const attachments = attachmentsOn(plant, facts.place.poleId);
  const ours = strandAtPole(plant, facts.place.poleId);
  const topM = Math.max(poleM ?? 0, ours.heightM * 1.25, ...attachments.map((one) => one.heightM * 1.06));
  const [poleMm, oursFrac] = [box.top - 4 - groundY, ours.heightM / topM];
  const underMm = Math.max(leastUnderMm, poleMm * oursFrac);
  const heightAt = (valueM: number) => {
    const over = valueM - ours.heightM;
    const part = over <= 0 ? valueM / ours.heightM : over / (topM - ours.heightM);
    return groundY + (over <= 0 ? part * underMm : underMm + part * (poleMm - underMm));
  };
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
/** Arms end before the words of the dimension. */
const armMm = 7;

/** Other parties' wires: a short arm at the true height, its words led aside where heights crowd. */
function others(
  { box, poleX, facts }: Scene,
  attachments: ReturnType<typeof attachmentsOn>,
  heightAt: (valueM: number) => number,
  ownId: string | null,
): readonly Mark[] {
  const system = facts.settings.unitSystem;
  const roomMm = poleX - box.left - 15.5;
  let lastY = Number.POSITIVE_INFINITY;
  return attachments
    .filter((one) => one.id !== ownId)
    .flatMap((one, index, all) => {
      const y = heightAt(one.heightM);
      const textY = Math.min(y, lastY - partyRowMm);
      lastY = textY;
      const what = [attachmentWords[one.kind], formatLength(one.heightM, system, "height")]
        .filter((part) => part !== "")
        .join(", ");
      const text = ownedText(one.owner, what, all[index - 1]?.owner === one.owner, roomMm);
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
            [poleX + armMm, y],
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

/** Whose an attachment is and what; where that is too long, the owner is left out under one of its own, else shortened. */
function ownedText(owner: string, what: string, isUnderOwn: boolean, roomMm: number): string {
  const whole = owner === "" ? what : `${owner}, ${what}`;
  if (textWidthMm(whole, "narrow", partyMm) <= roomMm) return whole;
  if (isUnderOwn) return shortenText(what, "narrow", partyMm, roomMm);
  const behind = `, ${what}`;
  return `${shortenText(owner, "narrow", partyMm, roomMm - textWidthMm(behind, "narrow", partyMm))}${behind}`;
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
    words(kindAndName("Cable", facts.cableName), [box.right, strandY + 1.8], {
      face: "narrow",
      heightMm: 2.2,
      align: "right",
    }),
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
