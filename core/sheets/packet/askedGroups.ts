import { askedReadings, type AskedReading as Needed } from "../../closeout/askedReadings.ts";
import { marksAtPole } from "../../closeout/furtherReadings.ts";
import type { AskedReading, PacketCard } from "../../closeout/packet/packetFile.ts";
import { readingText } from "../../closeout/packet/readingText.ts";
import { stretches } from "../../closeout/stretches.ts";
import { readingId, type Subject, subjectOf } from "../../closeout/subject.ts";
import type { ReadingKind } from "../../model/closeoutRows.ts";
import type { Settings } from "../../model/tables.ts";
import { bondsOfRoute } from "../../plant/bondPlaces.ts";
import type { Plant } from "../../plant/plant.ts";
import { portsOf } from "../../plant/terminalView.ts";
import type { TerminalFacts } from "../jobCard/terminalFacts.ts";
import { askedWords, packetWords } from "./words.ts";

/** How far a height may be from the drawn one before the page asks again, m: 6 in, common practice, no source. */
const heightToleranceM = 0.1524;

type Group = PacketCard["groups"][number];

/** Everything a crew is to read for one terminal, group by group. */
export function askedGroups(plant: Plant, facts: TerminalFacts, wavelengthsNm: readonly number[]): Group[] {
  const { terminal, place, poleTag } = facts;
  const named = (one: Needed) => field(plant, one, askedWords[one.what]);
  const markOf = (one: Needed, label: (cable: string) => string) => {
    const isNeeded = askedReadings(plant, subjectOf("pole", one.subject.subjectId)).some(({ id }) => id === one.id);
    return field(plant, one, label(plant.rowOf("cable", one.subject.alongId).name), !isNeeded);
  };
  const own = subjectOf("terminal", terminal.id);
  const pole = subjectOf("pole", place.poleId);
  const bonds = [
    ...new Set(bondsOfRoute(plant, "").flatMap((one) => (one.poleId === place.poleId ? [one.sectionId] : []))),
  ];
  return [
    {
      title: packetWords.terminal,
      asked: [...askedReadings(plant, own).map(named), field(plant, bare(own, "note"), askedWords.note, true)],
    },
    {
      title: packetWords.pole(poleTag),
      asked: [
        ...askedReadings(plant, pole)
          .filter((one) => one.what === "height")
          .map(named),
        ...marksAtPole(plant, place.poleId).map((one) => markOf(one, packetWords.markOf)),
        ...bonds.flatMap((id) => askedReadings(plant, subjectOf("bond", place.poleId, 0, id)).map(named)),
      ],
    },
    { title: packetWords.ports, asked: portFields(plant, terminal.id, wavelengthsNm) },
    { title: packetWords.houses, asked: houseFields(plant, terminal.id) },
    {
      title: packetWords.way,
      asked: polesOnTheWay(plant, terminal.id, place.poleId).flatMap((poleId) =>
        marksAtPole(plant, poleId).map((one) =>
          markOf(one, (cable) => packetWords.markAt(cable, plant.rowOf("pole", poleId).tag)),
        ),
      ),
    },
  ].filter((one) => one.asked.length > 0);
}

/** Poles passed since the terminal before, and behind the last terminal those to the end, in the order of the way. */
function polesOnTheWay(plant: Plant, terminalId: string, ownPoleId: string): readonly string[] {
  const all = stretches(plant, "");
  const at = all.findIndex((one) => one.terminalId === terminalId);
  const [own, next] = [all[at], all[at + 1]];
  const behind = next?.terminalId === null && next.cableId === own?.cableId ? next.things : [];
  return [...(own?.things ?? []), ...behind]
    .filter((one) => one.kind === "pole" && one.subjectId !== ownPoleId)
    .map((one) => one.subjectId);
}

function portFields(plant: Plant, terminalId: string, wavelengthsNm: readonly number[]): AskedReading[] {
  return portsOf(plant, terminalId).flatMap(({ port }) => {
    const subject = subjectOf("port", terminalId, port);
    const needed = askedReadings(plant, subject);
    const more = wavelengthsNm.filter((one) => !needed.some(({ wavelengthNm }) => wavelengthNm === one));
    return [...needed, ...more.map((one) => bare(subject, "power", one))].map((one) =>
      field(plant, one, packetWords.port(port, one.wavelengthNm)),
    );
  });
}

function houseFields(plant: Plant, terminalId: string): AskedReading[] {
  return portsOf(plant, terminalId)
    .flatMap((one) => one.dropIds)
    .flatMap((dropId) => {
      const { address } = plant.rowOf("livingUnit", plant.rowOf("drop", dropId).livingUnitId);
      return askedReadings(plant, subjectOf("drop", dropId)).map((one) =>
        field(plant, one, packetWords.house(askedWords[one.what], address)),
      );
    });
}

function bare(subject: Subject, what: ReadingKind, wavelengthNm = 0): Needed {
  return { id: readingId(subject, what, wavelengthNm), subject, what, wavelengthNm, drawn: null };
}

function field(
  plant: Plant,
  { id, subject, what, wavelengthNm, drawn }: Needed,
  label: string,
  isFurther = false,
): AskedReading {
  const settings = plant.settings();
  const before = plant.row("reading", id);
  const range = rangeOf(drawn);
  return {
    ...subject,
    what,
    wavelengthNm,
    label,
    drawnText: drawnText(what, drawn, settings),
    drawn: range,
    tolerance: range && toleranceOf(what, range.mostValue, settings),
    before: before ? { value: before.value, text: before.text, by: before.by, atIso: before.atIso } : null,
    isFurther,
  };
}

function rangeOf(drawn: Needed["drawn"]): AskedReading["drawn"] {
  if (drawn === null || drawn.kind === "text") return null;
  if (drawn.kind === "figure") return { leastValue: drawn.value, mostValue: drawn.value };
  return { leastValue: drawn.kind === "most" ? 0 : drawn.least, mostValue: drawn.most };
}

/** What a reading is held against, as it is written; empty where nothing is. */
export function drawnText(
  what: ReadingKind,
  drawn: Needed["drawn"],
  { unitSystem }: Pick<Settings, "unitSystem">,
): string {
  const text = (value: number) => readingText(what, { value, text: "" }, unitSystem);
  // that a bond conducts goes without saying
  if (drawn === null || what === "continuity") return "";
  if (drawn.kind === "text") return drawn.text;
  if (drawn.kind === "figure") return text(drawn.value);
  return drawn.kind === "most"
    ? packetWords.atMost(text(drawn.most))
    : packetWords.range(text(drawn.least), text(drawn.most));
}

/** How far a reading may be from the drawn figure before the page asks again, in SI: the closeout's own limits where it has one. */
function toleranceOf(what: ReadingKind, drawnValue: number, settings: Settings): number {
  if (what === "offset") return settings.offsetToleranceM;
  if (what === "slack") return settings.markToleranceFrac * drawnValue + settings.markToleranceM;
  if (what === "height") return heightToleranceM;
  return what === "power" ? settings.readingToleranceDb : 0;
}
