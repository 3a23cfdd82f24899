import type { OpticalClass } from "../../model/tables.ts";
import type { Plant } from "../../plant/plant.ts";
import { type PortReading, portReading } from "../../plant/portReading.ts";
import { portsOf } from "../../plant/terminalView.ts";
import { fixedText } from "../../units/fixedText.ts";
import { markWords } from "../sourceWords.ts";
import { numberRanges } from "./terminalFacts.ts";

/** A port and what a meter should show at it. */
export type PortAndReading = { readonly port: number; readonly reading: PortReading };

/** The expected reading at every port of a terminal, port 1 first. */
export function terminalReadings(plant: Plant, terminalId: string): readonly PortAndReading[] {
  return portsOf(plant, terminalId).map(({ port }) => ({ port, reading: portReading(plant, terminalId, port) }));
}

/** The wavelength a meter is set to, ` at 1490 nm`, where it is one for all ports; empty where it is not. */
export function waveWords(plant: Plant, ports: readonly PortAndReading[]): string {
  const waves = new Set(classesOf(plant, ports).map((one) => one.downNm));
  return waves.size === 1 ? ` at ${[...waves].join("")} nm` : "";
}

function classesOf(plant: Plant, ports: readonly PortAndReading[]): readonly OpticalClass[] {
  const ids = new Set(ports.flatMap(({ reading }) => (reading.kind === "known" ? [reading.opticalClassId] : [])));
  return [...ids].map((id) => plant.rowOf("opticalClass", id));
}

/** What the figures lean on, port by port alike said once: loss both ways, and why there is no figure where there is none. */
export function readingNotes(plant: Plant, ports: readonly PortAndReading[]): readonly string[] {
  const alike = new Map<string, number[]>();
  for (const { port, reading } of ports) {
    const text = readingNote(plant, reading);
    alike.set(text, [...(alike.get(text) ?? []), port]);
  }
  const notes = [...alike].map(
    ([text, numbers]) => `${numbers.length === 1 ? "Port" : "Ports"} ${numberRanges(numbers)}: ${text}`,
  );
  const sources = readingSources(plant, ports);
  return sources.length === 0 ? notes : [...notes, `By ${sources.join("; ")}.`];
}

/** The optical classes the readings lean on, each with its document and how far that was read. */
export function readingSources(plant: Plant, ports: readonly PortAndReading[]): readonly string[] {
  return classesOf(plant, ports).map(
    (one) => `class ${one.system} ${one.name}, ${one.basisDocument} (${markWords[one.basisMark]})`,
  );
}

function readingNote(plant: Plant, reading: PortReading): string {
  if (reading.kind === "unknown") return `not known. ${reading.why}`;
  const { system, name, downNm, upNm } = plant.rowOf("opticalClass", reading.opticalClassId);
  const { least, most } = reading;
  const between = (leastDb: number, mostDb: number) => `${fixedText(leastDb, 1)} to ${fixedText(mostDb, 1)} dB`;
  const loss = `loss from the hub's output ${between(least.downDb, most.downDb)} at ${downNm} nm, ${between(least.upDb, most.upDb)} at ${upNm} nm.`;
  return reading.arrives
    ? loss
    : `power not known, class ${system} ${name} does not say what the hub launches; ${loss}`;
}
