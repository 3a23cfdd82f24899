import type { ReadingKind } from "../../model/closeoutRows.ts";

/** What a crew is asked for, as the field's name. */
export const askedWords: Readonly<Record<ReadingKind, string>> = {
  offset: "From the pole's centre line",
  slack: "Slack left in the coil",
  mark: "Sheath mark",
  markBefore: "Sheath mark before the opening",
  markAfter: "Sheath mark after the opening",
  height: "Height of our strand",
  power: "Light",
  continuity: "Bond conducts",
  resistance: "Resistance of the ground",
  houseTag: "House tag",
  portOfDrop: "Port of the drop",
  note: "Note",
};

/** Headings and facts of a packet's card. */
export const packetWords = {
  terminal: "Terminal",
  pole: (tag: string): string => `Pole ${tag}`,
  ports: "Ports, before the drops are plugged in",
  houses: "Houses",
  port: (port: number, wavelengthNm: number): string => `Port ${port}, ${wavelengthNm} nm`,
  house: (what: string, address: string): string => `${what}, ${address}`,
  way: "Poles on the way, where the mark can be read",
  markAt: (cable: string, pole: string): string => `Sheath mark of cable ${cable} at pole ${pole}`,
  markOf: (cable: string): string => `Sheath mark of cable ${cable}`,
  range: (least: string, most: string): string => `${least} to ${most}`,
  atMost: (most: string): string => `at most ${most}`,
  place: (pole: string, towards: string): string => `at pole ${pole} towards ${towards}`,
  model: "Model",
  station: "Station",
  cable: "Cable",
  tube: "Tube to open",
  fibers: "Fibers to cut",
  opening: "Sheath to open, from the feed end",
  openingOf: (from: string, to: string): string => `${from} to ${to}`,
  none: "none yet",
} as const;
