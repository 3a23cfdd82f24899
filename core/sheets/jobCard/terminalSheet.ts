import type { Plant } from "../../plant/plant.ts";
import { type Draft, terminalKey } from "../book.ts";
import type { Paper, PaperBox } from "../paper/paper.ts";
import { type CardPage, cardBoxes, cardColumn, cardPages, drawCardPage } from "./cardPages.ts";
import { jobPanels } from "./jobPanels.ts";

/** A page of one terminal's card with its place on a sheet. */
type Card = {
  readonly terminalId: string;
  readonly page: CardPage;
  /** From 1, and of how many. */
  readonly number: number;
  readonly count: number;
};

/** The job cards of terminals: one a sheet, on small paper over several sheets, on large paper several on one. */
export function terminalDrafts(
  plant: Plant,
  { drawing }: Paper,
  terminalIds: readonly string[],
  designed: Plant | null = null,
): readonly Draft[] {
  const boxes = cardBoxes(drawing);
  const box = boxes[0] ?? drawing;
  const cards = terminalIds.flatMap((terminalId) => {
    const pages = cardPages(jobPanels(plant, terminalId, cardColumn(box), designed), box);
    return pages.map((page, index): Card => ({ terminalId, page, number: index + 1, count: pages.length }));
  });
  return Array.from({ length: Math.ceil(cards.length / boxes.length) }, (_, index) =>
    draftOf(plant, cards.slice(index * boxes.length, (index + 1) * boxes.length), boxes),
  );
}

function draftOf(plant: Plant, cards: readonly Card[], boxes: readonly PaperBox[]): Draft {
  const [key = "", ...otherKeys] = cards.map(keyOf);
  return {
    key,
    otherKeys,
    kind: "terminal",
    title: titleOf(plant, cards),
    names: namesOf(plant, cards),
    scale: "none",
    draw: () => ({
      marks: boxes.flatMap((box, index) => {
        const card = cards[index];
        return card ? drawCardPage(card.page, box) : [];
      }),
    }),
  };
}

/** The terminals on a sheet; one whose card has several pages, with the page. */
function namesOf(plant: Plant, cards: readonly Card[]): readonly string[] {
  return cards.map(({ terminalId, number, count }) => {
    const { name } = plant.rowOf("terminal", terminalId);
    return count === 1 ? `Terminal ${name}` : `Terminal ${name}, ${number} of ${count}`;
  });
}

function titleOf(plant: Plant, cards: readonly Card[]): string {
  const names = [...new Set(cards.map((one) => one.terminalId))].map((id) => plant.rowOf("terminal", id).name);
  if (names.length > 1) return `Terminals ${names[0]} to ${names.at(-1)}`;
  const [first] = cards;
  const part =
    cards.length > 1 || first === undefined || first.count === 1 ? "" : `, ${first.number} of ${first.count}`;
  return `Terminal ${names[0] ?? ""}${part}`;
}

/** The first page of a card goes by its terminal: that is where the plan leads. */
function keyOf({ terminalId, number }: Card): string {
  return number === 1 ? terminalKey(terminalId) : `${terminalKey(terminalId)} ${number}`;
}
