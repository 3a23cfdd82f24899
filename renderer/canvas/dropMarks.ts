import type { Route } from "../../core/model/route.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { boxBetween, grownBox, meets } from "./box.ts";
import type { HouseMarks } from "./houseMarks.ts";
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

export type DropMarks = { readonly marks: readonly DropMark[]; readonly index: PlaceIndex };

/** Makes the drops from port to house; they keep their marks as long as no drop, terminal or house is taken away or put in between. */
export function openDropMarks(plant: Plant) {
  let former: Drawn | null = null;
  return (terminals: HungMarks<TerminalMark>, houses: HouseMarks): DropMarks => {
    const table = plant.route().drop;
    const isKept = former?.table === table && former.houses === houses && areInTheirPlaces(former.terminals, terminals);
    const drawn = former && isKept ? former : draw(table, terminals, houses);
    former = drawn;
    return { marks: drawn.marks, index: indexDrops(drawn, terminals) };
  };
}

/** Drops with the rows they were drawn from. */
type Drawn = {
  readonly table: Route["drop"];
  readonly terminals: HungMarks<TerminalMark>;
  readonly houses: HouseMarks;
  readonly marks: readonly DropMark[];
  readonly byHouse: () => ReadonlyMap<number, readonly number[]>;
};

function draw(table: Route["drop"], terminals: HungMarks<TerminalMark>, houses: HouseMarks): Drawn {
  const marks = [...table.values()].flatMap((drop): DropMark[] => {
    const terminal = terminals.positionOf.get(drop.terminalId);
    const house = houses.positionOf.get(drop.livingUnitId);
    return terminal === undefined || house === undefined ? [] : [{ id: drop.id, terminal, port: drop.port, house }];
  });
  const byHouse = onFirstUse(() => {
    const lists = new Map<number, number[]>();
    marks.forEach(({ house }, i) => {
      const here = lists.get(house);
      if (here) here.push(i);
      else lists.set(house, [i]);
    });
    return lists;
  });
  return { table, terminals, houses, marks, byHouse };
}

/** Whether every terminal that was drawn has its position still; one hung since comes after them and holds no drop yet. */
function areInTheirPlaces(former: HungMarks<TerminalMark>, now: HungMarks<TerminalMark>): boolean {
  return former.marks.every((one, i) => one.id === now.marks[i]?.id);
}

/** A drop ends at its house, so the houses' own index finds it within the reach of the longest drop. */
function indexDrops({ marks, houses, byHouse }: Drawn, terminals: HungMarks<TerminalMark>): PlaceIndex {
  const boxOf = (mark: DropMark | undefined): Box | null => {
    const [terminal, house] = [terminals.marks[mark?.terminal ?? -1], houses.marks[mark?.house ?? -1]];
    return terminal && house ? boxBetween(terminal, house) : null;
  };
  const reachM = onFirstUse(() =>
    marks.reduce((most, mark) => {
      const box = boxOf(mark);
      return box ? Math.max(most, box.eastM - box.westM, box.northM - box.southM) : most;
    }, 0),
  );
  return {
    within: (box) =>
      houses.index
        .within(grownBox(box, reachM()))
        .flatMap((house) => byHouse().get(house) ?? [])
        .filter((i) => {
          const here = boxOf(marks[i]);
          return here !== null && meets(here, box);
        })
        .sort((a, b) => a - b),
  };
}
