import type { Plant } from "../../core/plant/plant.ts";
import { boxBetween, grownBox, meets } from "./box.ts";
import type { HouseMark, HouseMarks } from "./houseMarks.ts";
import type { HungMarks, TerminalMark } from "./hungMarks.ts";
import { onFirstUse } from "./onFirstUse.ts";
import type { PlaceIndex } from "./placeIndex.ts";
import type { Box } from "./viewport.ts";

export type DropMark = {
  readonly id: string;
  readonly terminal: number;
  readonly port: number;
  readonly house: number;
};

/** Drops with the terminals and houses they are drawn between. */
export type DropMarks = {
  readonly marks: readonly DropMark[];
  readonly from: { readonly terminals: HungMarks<TerminalMark>; readonly houses: HouseMarks };
  readonly index: PlaceIndex;
};

/** Drops from port to house, found by their houses. */
export function dropMarks(plant: Plant, terminals: HungMarks<TerminalMark>, houses: HouseMarks): DropMarks {
  const marks = [...plant.route().drop.values()].flatMap((drop): DropMark[] => {
    const terminal = terminals.positionOf.get(drop.terminalId);
    const house = houses.positionOf.get(drop.livingUnitId);
    return terminal === undefined || house === undefined ? [] : [{ id: drop.id, terminal, port: drop.port, house }];
  });
  return { marks, from: { terminals, houses }, index: indexDrops(marks, terminals, houses) };
}

/** Whether drops may stay as they are drawn: every terminal that was there is where it was; new ones hold no drop yet. */
export function areDropsAsDrawn({ from }: DropMarks, terminals: HungMarks<TerminalMark>): boolean {
  return from.terminals.marks.every((one, i) => {
    const now = terminals.marks[i];
    return one === now || (one.id === now?.id && one.eastM === now.eastM && one.northM === now.northM);
  });
}

/** A drop ends at its house, so the houses' own index finds it within the reach of the longest drop. */
function indexDrops(marks: readonly DropMark[], terminals: HungMarks<TerminalMark>, houses: HouseMarks): PlaceIndex {
  const boxes = marks.map(({ terminal, house }) => endsBox(terminals.marks[terminal], houses.marks[house]));
  const reachM = boxes.reduce((most, one) => Math.max(most, one.eastM - one.westM, one.northM - one.southM), 0);
  const byHouse = onFirstUse(() => {
    const lists = new Map<number, number[]>();
    marks.forEach(({ house }, i) => {
      const here = lists.get(house);
      if (here) here.push(i);
      else lists.set(house, [i]);
    });
    return lists;
  });
  return {
    within: (box) =>
      houses.index
        .within(grownBox(box, reachM))
        .flatMap((house) => byHouse().get(house) ?? [])
        .filter((i) => boxes[i] !== undefined && meets(boxes[i], box))
        .sort((a, b) => a - b),
  };
}

function endsBox(terminal: TerminalMark | undefined, house: HouseMark | undefined): Box {
  if (!terminal || !house) throw new Error("a drop is drawn between a terminal and a house that are not there");
  return boxBetween(terminal, house);
}
