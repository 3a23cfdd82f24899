import type { PortState } from "../../core/plant/balance.ts";
import type { FiberState } from "../../core/plant/tubeUse.ts";
import type { BalanceTab } from "./balanceView.ts";
import { bandEndsDb, type LightBand } from "./lightBand.ts";

const count = (number: number, one: string): string => `${number} ${number === 1 ? one : `${one}s`}`;

/** Words of the balance. */
export const balanceWords = {
  show: "Show the balance",
  hide: "Put the balance away",
  room: "Balance",
  divider: "Size of the balance",
  tabs: "What is balanced",
  empty: "No terminal hangs on this route yet. Lay out terminals, then their ports and fibers stand here.",
  ordering: "Putting the terminals in order from the hub",
  grid: "Ports, terminal by terminal from the hub. Arrow keys walk over terminals and ports; Space marks a unit to go with others, Enter takes them up, then up and down choose where to, Enter lets go and Escape puts back. Plus and minus reserve ports.",
  headings: {
    terminal: "Terminal",
    station: "Station",
    ports: "Ports",
    used: "Used",
    reserved: "Reserved",
    kept: "Spare",
    growth: "Growth",
    longest: "Longest",
    tubes: "Tube and fibers",
    away: "Distance",
  },
  headingHelp: {
    longest: "Its longest drop",
    used: "Ports with a drop",
    reserved: "Ports held for somebody: nothing but a person's hand gives them away",
    kept: "Ports the standard keeps free",
    growth: "Ports that may still be given before the standard is touched",
  },
  atPole: (pole: string): string => `at ${pole}`,
  cable: (name: string, type: string): string => `Cable ${name}, ${type}`,
  cableSums: (used: number, total: number, reserved: number, growth: number): string =>
    `${used} of ${total} ports used${reserved === 0 ? "" : `, ${reserved} reserved`}, ${growth} to grow`,
  key: "What the cells mean",
  hint: "Choose a port. Drag its unit, or a marked block of units, to another terminal.",
  nobodyThere: "No living unit is on that port.",
  marked: (number: number): string =>
    number === 0 ? "Nothing is marked." : `${count(number, "unit")} marked to go together.`,
  carrying: (number: number): string =>
    `${count(number, "unit")} in the hand: choose a terminal, let go to move, Escape puts back.`,
  putBack: "Put back; nothing has moved.",
  noneReserved: "No port of it is reserved.",
  away: (length: string): string => `${length} away`,
  tooFar: (length: string): string => `✕ beyond reach, ${length}`,
  noPort: (spare: number, wanted: number): string =>
    `✕ ${spare === 0 ? "no port" : `${spare} ${spare === 1 ? "port" : "ports"}`} for ${wanted}`,
  isThere: "there already",
  beyondReach: (length: string, reach: string): string => `${length} of ${reach} reach`,
  overNothing: "Carry over a terminal to see what it would come to.",
  inHand: (number: number): string => `${count(number, "unit")} in the hand`,
  to: (terminal: string): string => `To ${terminal}`,
  cost: "Drop cable",
  drops: "Drops",
  reach: "Longest",
  fill: "Fill",
  light: "Light",
  costMore: (money: string): string => `${money} more`,
  costLess: (money: string): string => `${money} less`,
  costSame: "costs the same",
  longer: (length: string): string => `${length} longer`,
  shorter: (length: string): string => `${length} shorter`,
  longestOf: (length: string, reach: string): string => `longest ${length} of ${reach} reach`,
  fillOf: (terminal: string, before: number, after: number, total: number): string =>
    `${terminal} ${before} to ${after} of ${total} used`,
  spareLeft: (spare: number): string => `${spare} spare left`,
  underSpare: (spare: number, wanted: number): string => `${spare} spare left, the standard keeps ${wanted}`,
  noLight: "no light at a port there",
  lightOf: (margin: string, way: string): string => `light margin ${margin} ${way}`,
  lightBefore: (margin: string): string => `, ${margin} now`,
  overload: (by: string): string => `too much light by ${by}`,
  fiberTo: (position: number): string => `Fiber to splitter ${position}`,
  fiberHelp:
    "Number in the cable; Enter gives it. The fiber of a tap nearer the hub goes on to this terminal too, where the standard uses fiber beyond a cut again.",
  fiberAlready: "The splitter has that fiber already.",
  reservePorts: "Reserved ports",
  reserveFor: "for",
  reserve: "Reserve",
  port: (number: number): string => `Port ${number}`,
  hubOutput: (name: string, splitCount: number, opticalClass: string): string =>
    `${name}, ${splitCount === 1 ? "no splitter at the hub" : `1 × ${splitCount}`}, ${opticalClass}`,
  legsLit: (lit: number, all: number): string => `${lit} of ${all} legs light a fiber`,
  unitsServed: (used: number, ports: number): string => `${used} of ${ports} ports behind it used`,
  noFeed: "No hub output lights this route yet.",
  legSpare: "spare",
  tube: (number: number): string => `Tube ${number}`,
  opensTube: "opened at",
  notOpened: "opened nowhere",
  fibersOf: (used: number, all: number): string => `${used} of ${all} fibers used`,
} as const;

export const tabWords: Readonly<Record<BalanceTab, string>> = {
  ports: "Ports by terminal",
  fibers: "Fibers by tube",
  hub: "Hub outputs by leg",
  light: "Light by terminal",
};

export const portStateWords: Readonly<Record<PortState, string>> = {
  used: "used",
  reserved: "reserved",
  kept: "spare, kept by the standard",
  growth: "free to grow",
};

export const fiberStateWords: Readonly<Record<FiberState, string>> = {
  terminal: "cut at a terminal",
  lateral: "spliced to a lateral",
  reserved: "reserved",
  dead: "dead",
  kept: "spare, kept by the standard",
  free: "free",
};

/** Words of evening out in the balance. */
export const evenWords = {
  ask: "Even out",
  longer: "All drops longer by at most",
  longerHelp: "Empty: as long as the drop reach allows",
  doIt: "Even out",
  giveUp: "Not now",
  working: "Working out what it comes to",
  already: "They are as evenly filled as reach, pins, spare and reserved ports and this length allow.",
  notNegative: "Write a length, or nothing.",
  found: (drops: number, terminals: number, longer: string): string =>
    `${count(drops, "drop")} between ${count(terminals, "terminal")}, ${longer}`,
  range: (before: readonly [number, number], after: readonly [number, number]): string =>
    `fill ${before[0]} to ${before[1]} % becomes ${after[0]} to ${after[1]} %`,
} as const;

/** Bands of the light's scale: a sign for each, so that none is told by its ink alone. */
export const bandWords: Readonly<Record<LightBand, { readonly sign: string; readonly name: string }>> = {
  dark: { sign: "–", name: "no light" },
  over: { sign: "✕", name: "over the limit" },
  tight: { sign: "1", name: `under ${bandEndsDb.tight} dB` },
  near: { sign: "2", name: `under ${bandEndsDb.near} dB` },
  good: { sign: "3", name: `under ${bandEndsDb.good} dB` },
  ample: { sign: "4", name: `${bandEndsDb.good} dB and more` },
  overload: { sign: "!", name: "too much light" },
};

/** Words of the light of the route. */
export const lightWords = {
  key: "Scale of the light",
  scale: "Margin to the largest loss:",
  listHeads: ["Terminal", "Station", "Least margin", "Over the least"],
  list: "Light of every terminal at its worst, from the hub out",
  reckoning: "Reckoning the light of the route",
  nobody: "serves nobody",
  dark: (count: number): string => `${count} without light`,
  margin: (margin: string, way: string): string => `${margin} ${way === "up" ? "↑ up" : "↓ down"}`,
  overload: (by: string): string => `too much by ${by}`,
  overLeast: "over the least",
  sheet: (terminal: string): string => `Light at the ports of ${terminal}`,
  classOf: (name: string, least: number, most: number): string => `${name}: ${least} to ${most} dB from hub to unit`,
  unitNeeds: (range: string): string => `the unit takes ${range} dBm`,
  hubNeeds: (range: string): string => `the hub takes ${range} dBm`,
  port: "Port",
  unit: "Living unit",
  atPort: "At the port, before its drop",
  inService: "In service",
  loss: (nm: number): string => `Loss ${nm} nm, dB`,
  power: (nm: number): string => `Power ${nm} nm, dBm`,
  atUnit: (nm: number): string => `Unit ${nm} nm, dBm`,
  atHub: (nm: number): string => `Hub ${nm} nm, dBm`,
  marginHead: "Least margin",
  spare: "spare",
  reserved: "reserved",
  notKnown: "not known",
  noLight: "no light",
  range: (from: string, to: string): string => `${from} to ${to}`,
} as const;
