import { colourAt } from "../../fiber/colourCode.ts";
import type { FiberUse, Settings, Slack, Terminal, TerminalModel } from "../../model/tables.ts";
import { poleStationM, sheathToM } from "../../plant/cablePath.ts";
import { feedOfUse } from "../../plant/fiberTrace.ts";
import { tubeOf, usesOfTerminal } from "../../plant/fiberView.ts";
import { farPoleId } from "../../plant/geometry.ts";
import type { Plant } from "../../plant/plant.ts";
import { coilOfTerminal, type SheathOpening, sheathOpening } from "../../plant/sheathOpening.ts";
import { byText } from "../../plant/sorting.ts";
import { type PortView, portsOf, type TerminalPlace, terminalPlace } from "../../plant/terminalView.ts";

/** A fiber that feeds the terminal. */
type FeedFiber = {
  readonly use: FiberUse;
  readonly tube: number;
  readonly place: number;
  /** Position of the splitter it is spliced to, and the ports that splitter lights; null where it feeds none. */
  readonly splitter: { readonly position: number; readonly legCount: number; readonly firstPort: number } | null;
  /** The hub's output that lights it, through however many closures; empty where none does. */
  readonly feedName: string;
};

/** Everything one terminal's sheet tells. */
export type TerminalFacts = {
  readonly settings: Settings;
  readonly terminal: Terminal;
  readonly model: TerminalModel;
  readonly place: TerminalPlace;
  readonly poleTag: string;
  /** Along the terminal's cable from its feed end, m; null where the cable does not pass the pole. */
  readonly poleStationM: number | null;
  readonly towardsTag: string;
  readonly cableName: string;
  readonly fiberCount: number;
  readonly fibersPerTube: number;
  readonly ports: readonly PortView[];
  readonly fibers: readonly FeedFiber[];
  /** Tubes to open, lowest first. */
  readonly openTubes: readonly number[];
  readonly coil: Slack | null;
  /** Sheath from the cable's feed end to the pole and, where the terminal has a coil, to what is opened of it; null where it is not on its cable. */
  readonly poleSheathM: number | null;
  readonly opening: SheathOpening | null;
  /** Where it was to hang and what its coil was to hold, where the route is drawn as built; null where it is drawn as designed. */
  readonly designed: { readonly fromPoleM: number; readonly storedM: number | null } | null;
};

/** Gathers what a terminal's sheet tells. */
export function terminalFacts(plant: Plant, terminalId: string, designed: Plant | null = null): TerminalFacts {
  const terminal = plant.rowOf("terminal", terminalId);
  const place = terminalPlace(plant, terminalId);
  const cable = plant.rowOf("cable", terminal.cableId);
  const type = plant.rowOf("cableType", cable.cableTypeId);
  const fibers = usesOfTerminal(plant, terminalId).map((id) => feedFiber(plant, plant.rowOf("fiberUse", id)));
  const settings = plant.settings();
  return {
    settings,
    terminal,
    place,
    model: plant.rowOf("terminalModel", terminal.terminalModelId),
    poleTag: plant.rowOf("pole", place.poleId).tag,
    poleStationM: poleStationM(plant, cable.id, place.poleId),
    towardsTag: plant.rowOf("pole", farPoleId(plant, terminal.spanId, place.poleId)).tag,
    cableName: cable.name,
    fiberCount: type.fiberCount,
    fibersPerTube: type.fibersPerTube,
    ports: portsOf(plant, terminalId),
    fibers,
    openTubes: [...new Set(fibers.map((one) => one.tube))].sort((a, b) => a - b),
    coil: coilOfTerminal(plant, terminalId),
    poleSheathM: sheathToM(
      plant,
      cable.id,
      terminal.spanId,
      place.atFirstPole ? 0 : plant.rowOf("span", terminal.spanId).lengthM,
    ),
    opening: sheathOpening(plant, terminalId),
    designed: designed && designedHang(designed, terminalId),
  };
}

function designedHang(plant: Plant, terminalId: string): TerminalFacts["designed"] {
  if (!plant.row("terminal", terminalId)) return null;
  const storedM = coilOfTerminal(plant, terminalId)?.storedM ?? null;
  return { fromPoleM: terminalPlace(plant, terminalId).fromPoleM, storedM };
}

/** A colour as a person reads it: its word and its two letters. */
export function colourWords(position: number): string {
  const { name, abbreviation } = colourAt(position);
  return `${name} ${abbreviation}`;
}

/** Numbers in a row told as ranges: 1 to 3, 7. */
export function numberRanges(numbers: readonly number[]): string {
  const ranges: [number, number][] = [];
  for (const one of [...new Set(numbers)].sort((a, b) => a - b)) {
    const last = ranges.at(-1);
    if (last && last[1] === one - 1) last[1] = one;
    else ranges.push([one, one]);
  }
  return ranges.map(([from, to]) => (from === to ? `${from}` : `${from} to ${to}`)).join(", ");
}

function feedFiber(plant: Plant, use: FiberUse): FeedFiber {
  const splitter = use.splitterId === null ? undefined : plant.row("splitter", use.splitterId);
  const feedId = feedOfUse(plant, use.id);
  return {
    use,
    ...tubeOf(plant, use.cableId, use.fiber),
    splitter: splitter
      ? {
          position: splitter.position,
          legCount: plant.rowOf("splitterType", splitter.splitterTypeId).legCount,
          firstPort: splitter.firstPort,
        }
      : null,
    feedName: feedId === null ? "" : plant.rowOf("feed", feedId).name,
  };
}

/** Heights of everybody's attachments on the terminal's pole, highest first. */
export function attachmentsOn(plant: Plant, poleId: string) {
  return plant
    .where("attachment", "poleId", poleId)
    .map((id) => plant.rowOf("attachment", id))
    .sort((a, b) => b.heightM - a.heightM || byText(a.id, b.id));
}
