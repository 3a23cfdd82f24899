import type { ArrangeWay, Arranging } from "./arranging.ts";

type Plural = "terminals" | "poles" | "drops";

const count = (number: number, many: string): string => `${number} ${number === 1 ? many.slice(0, -1) : many}`;

/** Poles that were passed over, as a clause behind the count; empty for none. */
function passedOver(servedCount: number, crowdedCount: number): string {
  const served = servedCount === 0 ? "" : `; ${count(servedCount, "poles")} passed over with a terminal already`;
  const crowded = crowdedCount === 0 ? "" : `; ${count(crowdedCount, "poles")} passed over without room`;
  return `${served}${crowded}`;
}

const ways: Readonly<Record<ArrangeWay, string>> = {
  spaceTerminals: "Space terminals evenly",
  alignTerminals: "One distance from the pole",
  turnTerminals: "Other side of the pole",
  evenTerminals: "Even out how full terminals are",
  serveFrom: "Serve units from the terminal",
  spacePoles: "Space poles evenly",
  linePoles: "Poles in a straight line",
  hangAlong: "Hang terminals along the poles",
};

/** Words of arranging several things at once. */
export const arrangeWords = {
  arrange: "Arrange what is chosen",
  doIt: "Arrange",
  close: "Close",
  way: "How",
  ways,
  distance: "Distance from the pole",
  every: "Every how many poles",
  everyHelp: "2 for every other pole",
  startAt: "Starting with pole",
  side: "Side",
  sides: { beyond: "away from the feed end", before: "toward the feed end" },
  turn: "Turn to the other side of the pole",
  repeat: (name: string | null) =>
    name === null ? "Repeat the last thing" : `Repeat: ${name.charAt(0).toLowerCase()}${name.slice(1)}`,
  again: ({ way, distance }: Arranging) =>
    way === "alignTerminals" && distance !== "" ? `Hang ${distance} from the pole` : ways[way],
  nothingDone: "Nothing is done yet.",
  nothing: "Choose terminals, poles, or a terminal and living units first.",
  groundOnly: "Poles are moved on the ground: draw the route true to the ground first.",
  longer: "All drops longer by at most",
  longerHelp: "Empty: as long as the drop reach allows",
  needsTwoTerminals: "Choose two terminals or more.",
  needsUnits: "Choose one terminal and the living units or drops to serve from it.",
  notNegative: "Write a length, or nothing.",
  evenAlready: "They are as evenly filled as reach, pins, spare ports and this length allow.",
  servedAlready: "They are served from this terminal already.",
  evenedLabel: (number: number) => `Even out ${count(number, "terminals")}`,
  evened: (number: number, before: readonly number[], after: readonly number[], longer: string) =>
    `${count(number, "drops")} to another terminal, ${longer}; ports in use ${after.join(", ")} instead of ${before.join(", ")}`,
  servedLabel: (number: number, terminal: string) => `Move ${count(number, "drops")} to terminal ${terminal}`,
  served: (number: number, terminal: string, longer: string) =>
    `${count(number, "drops")} to terminal ${terminal}, ${longer}`,
  longerBy: (length: string) => `together ${length} longer`,
  shorterBy: (length: string) => `together ${length} shorter`,
  needsThree: (things: Plural) => `Choose three ${things} or more: the first and the last stay where they are.`,
  needsTerminals: "Choose one terminal or more.",
  needsPoles: "Choose two poles of one cable or more, or a span or a terminal of it.",
  oneCable: "These terminals hang on different cables; choose those of one.",
  oneLine: "Choose three poles or more that follow each other along one line, none left out between.",
  tooSharp: "The line turns back on itself too sharply to be divided evenly.",
  notPositive: "Write a distance greater than nothing.",
  noModel: "The catalogue has no terminal model.",
  spaced: (number: number, things: Plural) => `Space ${count(number, things)} evenly`,
  apart: (number: number, things: Plural, distance: string) => `${count(number, things)}, ${distance} apart`,
  alignedLabel: (number: number, distance: string) => `Hang ${count(number, "terminals")} ${distance} from the pole`,
  aligned: (number: number, distance: string) => `${count(number, "terminals")}, ${distance} from the pole`,
  turnedLabel: (number: number) => `Turn ${count(number, "terminals")} to the other side`,
  turned: (number: number) => `${count(number, "terminals")} on the other side of the pole`,
  inLineLabel: (number: number) => `Put ${count(number, "poles")} in a straight line`,
  inLine: (number: number) => `${count(number, "poles")} in a straight line`,
  hungLabel: (number: number) => `Hang ${count(number, "terminals")} along the poles`,
  hung: (number: number, of: number, served: number, crowded: number) =>
    `${count(number, "terminals")} at ${count(of, "poles")}${passedOver(served, crowded)}`,
  noneToHang: (of: number, served: number, crowded: number) =>
    of === 0 ? "No pole is counted that way." : `None to hang at ${count(of, "poles")}${passedOver(served, crowded)}.`,
} as const;
