import type { Drop } from "../../model/tables.ts";
import type { Plant } from "../../plant/plant.ts";
import { facePlan, type PortView } from "../../plant/terminalView.ts";
import type { Mark, PaperPoint } from "../paper/displayList.ts";
import { shortenText } from "../paper/fitText.ts";
import { area, rectangle, roundedOutline, smallMm, stroke, words } from "../paper/marks.ts";
import type { PaperBox } from "../paper/paper.ts";
import { nailSymbol } from "../paper/pinSymbols.ts";
import { houseNumber } from "../plan/planUnits.ts";
import type { TerminalFacts } from "./terminalFacts.ts";

const portMm = 8;
const pitchMm = 15.5;

/** The terminal's face: every port at its place, filled where used, its corners struck off where reserved, a nail where its drop is pinned, with the house and the splitter leg under it. */
export function portFace(plant: Plant, facts: TerminalFacts, box: PaperBox): readonly Mark[] {
  const plan = facePlan(plant, facts.model.id);
  const along = Math.max(...plan.map((one) => one.along)) + 1;
  const ranks = Math.max(...plan.map((one) => one.rank)) + 1;
  const rankMm = Math.min(20, (box.top - box.bottom - 7) / ranks);
  const width = along * pitchMm + 5;
  const height = ranks * rankMm + 2.5;
  const corner: PaperPoint = [(box.left + box.right - width) / 2, (box.top + box.bottom - height) / 2 - 0.5];
  const small = rankMm < 17;
  const marks: Mark[] = [area("terminals", "bold", roundedOutline(corner, width, height, 3.2), { fill: 1 })];
  for (const { port, rank, along: place } of plan) {
    const x = corner[0] + 2.5 + (place + 0.5) * pitchMm;
    const top = corner[1] + height - 2 - rank * rankMm;
    marks.push(...drawPort(plant, facts, port, [x, top], small ? 6 : portMm, small));
  }
  const pins = [facts.terminal, ...facts.ports.flatMap((one) => dropsOn(plant, one))].some((one) => one.pinned);
  return pins ? [...marks, words("Nail: pinned, no layout moves it", [box.left, box.top - 2], pinWords)] : marks;
}

const pinWords = { heightMm: smallMm, grey: 0.35 } as const;

function dropsOn(plant: Plant, view: PortView | undefined): readonly Drop[] {
  return (view?.dropIds ?? []).map((id) => plant.rowOf("drop", id));
}

function drawPort(
  plant: Plant,
  facts: TerminalFacts,
  port: number,
  [x, top]: PaperPoint,
  side: number,
  small: boolean,
): readonly Mark[] {
  const view = facts.ports[port - 1];
  const used = (view?.dropIds.length ?? 0) > 0;
  const isReserved = view?.isReserved ?? false;
  const figureMm = small ? 2.6 : 3.2;
  const drops = dropsOn(plant, view);
  const houses = drops.map((one) => houseNumber(plant.rowOf("livingUnit", one.livingUnitId).address));
  const house = shortenText(
    houses.length > 0 ? houses.join(" and ") : isReserved ? "reserved" : "spare",
    used ? "narrowBold" : "narrow",
    2.3,
    pitchMm - 1,
  );
  const leg = view?.leg === null || view === undefined ? "" : `leg ${view.leg}`;
  const under = (
    text: string,
    row: number,
    lettering: { face: "narrow" | "narrowBold"; heightMm: number; grey: number },
  ) => (text === "" ? [] : [words(text, [x, top - side - 3.2 - row * 3.4], { align: "middle", ...lettering })]);
  return [
    rectangle("terminals", "medium", [x - side / 2, top - side], side, side, { fill: used ? 0 : 1 }),
    ...(drops.some((one) => one.pinned) ? nailSymbol("terminals", [x + side / 2 + 1.6, top - 3.2]) : []),
    ...(isReserved ? cornerStrokes([x - side / 2, top - side], side) : []),
    words(String(port), [x, top - side / 2 - figureMm / 2], {
      face: "narrowBold",
      heightMm: figureMm,
      align: "middle",
      grey: used ? 1 : 0,
    }),
    ...under(house, 0, { face: used ? "narrowBold" : "narrow", heightMm: 2.3, grey: used ? 0 : 0.35 }),
    ...(small ? [] : under(leg, 1, { face: "narrow", heightMm: smallMm, grey: 0.35 })),
  ];
}

/** A reserved port's corners struck off, so that its number stays readable. */
function cornerStrokes([left, bottom]: PaperPoint, side: number): readonly Mark[] {
  const cut = side * 0.35;
  return [
    stroke("terminals", "thin", [
      [left, bottom + cut],
      [left + cut, bottom],
    ]),
    stroke("terminals", "thin", [
      [left + side - cut, bottom + side],
      [left + side, bottom + side - cut],
    ]),
  ];
}
