import { subjectOf } from "../../closeout/subject.ts";
import type { ReadingKind } from "../../model/closeoutRows.ts";
import type { PortView } from "../../plant/terminalView.ts";
import { formatLength } from "../../units/formatLength.ts";
import { type FieldsRead, nothingRead } from "../asBuilt/fieldsRead.ts";
import { lengthUnit, stationText } from "../paper/quantityText.ts";
import { colourWords, type TerminalFacts } from "./terminalFacts.ts";

/** A field of a step: what is measured, and what was read; empty to be written in. */
export type StepField = { readonly label: string; readonly read: string };

/** One step of a job card, with the fields it leaves for what is measured; done where what was read says so. */
export type JobStep = { readonly text: string; readonly fields: readonly StepField[]; readonly isDone: boolean };

/** The steps to build one terminal, in order; what the route does not know yet is said as such. */
export function terminalSteps(facts: TerminalFacts, read: FieldsRead = nothingRead): readonly JobStep[] {
  const { settings, place, terminal, coil, openTubes, fibers } = facts;
  const system = settings.unitSystem;
  const unit = lengthUnit(system);
  const length = (valueM: number) => formatLength(valueM, system, "span");
  const standoff = formatLength(place.fromPoleM, system, "offset");
  const mark = facts.opening
    ? ` from sheath mark ${length(facts.opening.fromM)} to ${length(facts.opening.toM)}, counted from the feed end`
    : "";
  const { poleStationM } = facts;
  const station = poleStationM === null ? "" : `, station ${stationText(poleStationM, system)}`;
  const kept =
    openTubes.length === 1 ? "The other fibers of the tube stay whole." : "The other fibers of these tubes stay whole.";
  const subject = subjectOf("terminal", terminal.id);
  const open = (label: string): StepField => ({ label, read: "" });
  const field = (label: string, what: ReadingKind): StepField => ({ label, read: read.text(subject, what) });
  const step = (text: string, ...fields: readonly StepField[]): JobStep => ({
    text,
    fields,
    isDone: fields.length > 0 && fields.every((one) => one.read !== ""),
  });
  return [
    step(
      `Find pole ${facts.poleTag}${station}. Test the pole and its fixtures; set up traffic control.`,
      open("Fixture, V"),
    ),
    step(
      `Mark the strand ${standoff} from the pole's centre line towards ${facts.towardsTag} and hang the terminal there${terminal.reason === "" ? "" : ` (${terminal.reason})`}.`,
      field(`As hung, ${system === "us" ? "in" : "mm"}`, "offset"),
    ),
    coil === null
      ? step("No coil is drawn for this terminal: ask the office before opening the sheath.")
      : step(`Take down the coil of ${length(coil.storedM)}. It gives the loop that the opening needs.`),
    step(
      `Open ${length(settings.openingM)} of sheath${mark}.`,
      field("Marks read, from", "markBefore"),
      field("to", "markAfter"),
    ),
    ...(openTubes.length === 0
      ? [step("No fiber is given to this terminal yet: do not open a tube.")]
      : [
          step(
            `Open tube ${openTubes.map((tube) => `${tube} ${colourWords(tube)}`).join(" and tube ")}; coil the other tubes closed.`,
          ),
          step(
            `Cut only ${fibers.map((one) => `fiber ${one.use.fiber}, ${colourWords(one.place)}`).join("; ")}. ${kept}`,
          ),
          step(
            `Splice the feed side of ${fibers.map((one) => (one.splitter ? `fiber ${one.use.fiber} to splitter ${one.splitter.position}` : `fiber ${one.use.fiber}`)).join(", ")}; park the far side.`,
          ),
        ]),
    step("Bond the housing to the strand with No. 6 AWG copper; close and seal it."),
    step("Coil what remains and tag the coil with its length.", field(`Coil left, ${unit}`, "slack")),
    {
      text: "Measure the light at every port and write it down beside what is expected. Then connect the drops by the table; cap the others.",
      fields: [],
      isDone: facts.ports.length > 0 && facts.ports.every((one) => isReadWhole(facts, one, read)),
    },
  ];
}

/** Whether light and drop of a port were read; of one without a drop nobody reads that it is capped. */
function isReadWhole({ terminal }: TerminalFacts, { port, dropIds }: PortView, read: FieldsRead): boolean {
  const isLit = read.lightText(terminal.id, port) !== "";
  return isLit && dropIds.length > 0 && dropIds.every((id) => read.value(subjectOf("drop", id), "portOfDrop") === port);
}

/** What the crew takes along for one terminal. */
export const terminalTools =
  "Tools: voltage detector, tape, sheath cutter and ring tool, tube cutter, cleaver, fusion splicer, cleaning kit, end-face microscope, power meter, No. 6 AWG bond wire and clamps, tags, sharps container. Common practice, no source.";
