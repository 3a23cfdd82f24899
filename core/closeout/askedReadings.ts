import type { ReadingKind } from "../model/closeoutRows.ts";
import { cablePath, cablesAtPole } from "../plant/cablePath.ts";
import type { Plant } from "../plant/plant.ts";
import { portReading } from "../plant/portReading.ts";
import { coilOfTerminal } from "../plant/sheathOpening.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { portsOf, terminalHang } from "../plant/terminalView.ts";
import { readingId, type Subject, subjectOf } from "./subject.ts";

/** What was drawn or computed for a reading; figures in SI. Null where the drawing says nothing a reading could be held against. */
type Drawn =
  | { readonly kind: "figure"; readonly value: number }
  | { readonly kind: "range"; readonly least: number; readonly most: number }
  | { readonly kind: "most"; readonly most: number }
  | { readonly kind: "text"; readonly text: string }
  | null;

/** A reading a thing needs before it counts as tested. */
export type AskedReading = {
  /** Of the row that holds it: `readingId`. */
  readonly id: string;
  readonly subject: Subject;
  readonly what: ReadingKind;
  readonly wavelengthNm: number;
  readonly drawn: Drawn;
};

/**
 * The readings a thing needs. Which are asked is common practice, no source: the height at a pole, marks where a cable begins, ends
 * or is opened, offset and coil of a terminal, light of every port with light, tag and port of a drop, continuity and ground of a bond.
 */
export function askedReadings(plant: Plant, subject: Subject): readonly AskedReading[] {
  switch (subject.kind) {
    case "pole":
      return [
        asked(subject, "height", figure(strandAtPole(plant, subject.subjectId).heightM)),
        ...cableEnds(plant, subject.subjectId).map((id) =>
          asked(subjectOf("pole", subject.subjectId, 0, id), "mark", null),
        ),
      ];
    case "closure":
      return openingMarks(subject);
    case "terminal":
      return terminalReadings(plant, subject);
    case "port":
      return portPower(plant, subject);
    case "drop":
      return dropReadings(plant, subject);
    case "bond":
      return [
        asked(subject, "continuity", figure(1)),
        asked(subject, "resistance", { kind: "most", most: plant.settings().groundMaxOhm }),
      ];
    case "span":
    case "strandSection":
    case "cable":
      return [];
  }
}

/** What is written on the house of a drop: its terminal and port. */
export function houseTagOf(plant: Plant, dropId: string): string {
  const { terminalId, port } = plant.rowOf("drop", dropId);
  return `${plant.rowOf("terminal", terminalId).name}-${port}`;
}

function asked(subject: Subject, what: ReadingKind, drawn: Drawn, wavelengthNm = 0): AskedReading {
  return { id: readingId(subject, what, wavelengthNm), subject, what, wavelengthNm, drawn };
}

function figure(value: number): Drawn {
  return { kind: "figure", value };
}

function openingMarks(subject: Subject): readonly AskedReading[] {
  return [asked(subject, "markBefore", null), asked(subject, "markAfter", null)];
}

function terminalReadings(plant: Plant, subject: Subject): readonly AskedReading[] {
  const coil = coilOfTerminal(plant, subject.subjectId);
  return [
    asked(subject, "offset", figure(terminalHang(plant, subject.subjectId).fromPoleM)),
    ...(coil ? [asked(subject, "slack", figure(coil.storedM)), ...openingMarks(subject)] : []),
  ];
}

function portPower(plant: Plant, subject: Subject): readonly AskedReading[] {
  if (!portsOf(plant, subject.subjectId).some((one) => one.port === subject.port)) return [];
  const reading = portReading(plant, subject.subjectId, subject.port);
  if (reading.kind === "unknown") return [];
  const { downNm } = plant.rowOf("opticalClass", reading.opticalClassId);
  const { arrives } = reading;
  const drawn: Drawn = arrives && { kind: "range", least: arrives.leastDbm, most: arrives.mostDbm };
  return [asked(subject, "power", drawn, downNm)];
}

function dropReadings(plant: Plant, subject: Subject): readonly AskedReading[] {
  return [
    asked(subject, "houseTag", { kind: "text", text: houseTagOf(plant, subject.subjectId) }),
    asked(subject, "portOfDrop", figure(plant.rowOf("drop", subject.subjectId).port)),
  ];
}

/** Ids of the cables that begin or end at a pole. */
function cableEnds(plant: Plant, poleId: string): readonly string[] {
  return cablesAtPole(plant, poleId).filter((id) => {
    const { steps } = cablePath(plant, id);
    return steps[0]?.inPoleId === poleId || steps.at(-1)?.outPoleId === poleId;
  });
}
