import type { PacketCard, PacketSheet } from "../../closeout/packet/packetFile.ts";
import { packetFormat, packetVersion } from "../../closeout/packet/packetFormat.ts";
import type { Row } from "../../model/tables.ts";
import type { Plant } from "../../plant/plant.ts";
import { formatLength } from "../../units/formatLength.ts";
import { crewCautions, sheetCaution, terminalCautions } from "../cautions.ts";
import { colourWords, type TerminalFacts, terminalFacts } from "../jobCard/terminalFacts.ts";
import { terminalSteps } from "../jobCard/terminalSteps.ts";
import { stationText } from "../paper/quantityText.ts";
import { askedGroups } from "./askedGroups.ts";
import { cardDrawings } from "./cardDrawings.ts";
import { packetWords } from "./words.ts";

type Written = {
  /** What the title blocks would say of the revision. */
  readonly revision: string;
  readonly by: string;
  readonly atIso: string;
};

/** What the page of a packet shows: the job card of each terminal that is still on the route, with a field for everything to be read. */
export function packetSheet(plant: Plant, packet: Row<"packet">, { revision, by, atIso }: Written): PacketSheet {
  const settings = plant.settings();
  const wavelengthsNm = packet.wavelengthsNm
    .split(" ")
    .filter((one) => one !== "")
    .map(Number);
  return {
    format: packetFormat,
    version: packetVersion,
    packetId: packet.id,
    number: packet.number,
    crew: packet.crew,
    routeName: settings.routeName,
    revision,
    unitSystem: settings.unitSystem,
    writtenBy: by,
    writtenIso: atIso,
    cautions: [sheetCaution, ...crewCautions.map((one) => `${one.text} ${one.source}`), ...terminalCautions],
    cards: packet.terminalIds
      .split(" ")
      .filter((id) => plant.row("terminal", id) !== undefined)
      .map((id) => cardOf(plant, id, wavelengthsNm)),
  };
}

function cardOf(plant: Plant, terminalId: string, wavelengthsNm: readonly number[]): PacketCard {
  const facts = terminalFacts(plant, terminalId);
  return {
    terminalId,
    name: facts.terminal.name,
    place: packetWords.place(facts.poleTag, facts.towardsTag),
    facts: factLines(facts),
    steps: terminalSteps(facts).map((one) => one.text),
    groups: askedGroups(plant, facts, wavelengthsNm),
    drawings: [...cardDrawings(plant, terminalId)],
  };
}

function factLines({
  settings,
  model,
  place,
  cableName,
  openTubes,
  fibers,
  opening,
}: TerminalFacts): [string, string][] {
  const system = settings.unitSystem;
  const length = (valueM: number) => formatLength(valueM, system, "span");
  const or = (text: string) => (text === "" ? packetWords.none : text);
  return [
    [packetWords.model, model.name],
    ...(place.stationM === null
      ? []
      : [[packetWords.station, stationText(place.stationM, system)] as [string, string]]),
    [packetWords.cable, cableName],
    [packetWords.tube, or(openTubes.map((tube) => `${tube} ${colourWords(tube)}`).join(", "))],
    [packetWords.fibers, or(fibers.map((one) => `${one.use.fiber} ${colourWords(one.place)}`).join(", "))],
    [packetWords.opening, or(opening ? packetWords.openingOf(length(opening.fromM), length(opening.toM)) : "")],
  ];
}
