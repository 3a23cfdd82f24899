import type { BroughtReading, PacketFile } from "../../core/closeout/packet/packetFile.ts";
import { packetFormat, packetVersion } from "../../core/closeout/packet/packetFormat.ts";
import { readPacketFile } from "../../core/closeout/packet/readPacketFile.ts";
import { subjectOf } from "../../core/closeout/subject.ts";
import { applyChange } from "../../core/edits/change.ts";
import { packetMerge } from "../../core/edits/packet/packetMerge.ts";
import type { Route } from "../../core/model/route.ts";
import { type Figures, median } from "./measure.ts";

const packetCount = 50;
const readingCount = 200;
/** Crews read the light of the same ports again in part, and otherwise. */
const overlapCount = 20;

/**
 * Bringing back 50 packets of 200 readings, a tenth of each read by the packet before as well and otherwise: all of it, and how long merging
 * takes against reading the files.
 */
export function benchPackets(route: Route): Figures {
  const texts = packetTexts(route);
  const packets = Array.from({ length: packetCount }, (_, index) => {
    const number = index + 1;
    return {
      id: `packet-${number}`,
      number,
      crew: `Crew ${number}`,
      terminalIds: "",
      wavelengthsNm: "",
      by: "Office",
      atIso: "2030",
    };
  });
  const given: Route = { ...route, packet: new Map(packets.map((one) => [one.id, one])) };
  const runs = Array.from({ length: 5 }, () => bringBack(given, texts));
  return {
    packetsBroughtMs: median(runs.map((one) => one.readMs + one.mergeMs)),
    packetsMergeToRead: median(runs.map((one) => one.mergeMs / one.readMs)),
  };
}

function packetTexts(route: Route): readonly string[] {
  const ports = [...route.terminal.values()].flatMap(({ id, terminalModelId }) => {
    const { portCount } = route.terminalModel.get(terminalModelId) ?? { portCount: 0 };
    return Array.from({ length: portCount }, (_, index) => subjectOf("port", id, index + 1));
  });
  return Array.from({ length: packetCount }, (_, index) => {
    const from = index * (readingCount - overlapCount);
    return JSON.stringify(fileOf(index, ports.slice(from, from + readingCount)));
  });
}

function bringBack(route: Route, texts: readonly string[]): { readonly readMs: number; readonly mergeMs: number } {
  let present = route;
  let readMs = 0;
  let mergeMs = 0;
  for (const text of texts) {
    const start = performance.now();
    const file = readPacketFile(text, "crew.json");
    const read = performance.now();
    if (!file.ok) throw new Error(file.fault.what);
    const next = applyChange(
      present,
      packetMerge(present, file.value, [], () => false),
    );
    if (!next.ok) throw new Error(next.fault.what);
    present = next.value;
    readMs += read - start;
    mergeMs += performance.now() - read;
  }
  if (present.rivalReading.size !== 2 * (packetCount - 1) * overlapCount)
    throw new Error(`${present.rivalReading.size} readings disagree`);
  return { readMs, mergeMs };
}

function fileOf(index: number, ports: readonly ReturnType<typeof subjectOf>[]): PacketFile {
  const readings = ports.map(
    (subject): BroughtReading => ({
      ...subject,
      what: "power",
      wavelengthNm: 1490,
      before: null,
      sent: [],
      after: { value: -18 - index / 10, text: "", by: `Crew ${index + 1}`, atIso: "2030-05-02T10:00:00.000Z" },
    }),
  );
  return {
    format: packetFormat,
    version: packetVersion,
    packetId: `packet-${index + 1}`,
    routeName: "Long",
    crew: `Crew ${index + 1}`,
    readings,
    unread: [],
    photos: [],
  };
}
