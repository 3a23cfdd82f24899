import { formatLength } from "../units/formatLength.ts";
import { stationText } from "./quantityText.ts";
import { colourWords, type TerminalFacts } from "./terminalFacts.ts";

/** The steps to build one terminal, in order; what the route does not know yet is said as such. */
export function terminalSteps(facts: TerminalFacts): readonly string[] {
  const { settings, place, terminal, coil, openTubes, fibers } = facts;
  const system = settings.unitSystem;
  const length = (valueM: number) => formatLength(valueM, system, "span");
  const standoff = formatLength(place.fromPoleM, system, "offset");
  const mark = facts.sheathM === null ? "" : ` near sheath mark ${length(facts.sheathM)} from the feed end`;
  const station = place.stationM === null ? "" : `, station ${stationText(place.stationM, system)}`;
  const kept =
    openTubes.length === 1 ? "The other fibers of the tube stay whole." : "The other fibers of these tubes stay whole.";
  return [
    `Find pole ${facts.poleTag}${station}. Test the pole and its fixtures; set up traffic control.`,
    `Mark the strand ${standoff} from the pole's centre line towards ${facts.towardsTag} and hang the terminal there${terminal.reason === "" ? "" : ` (${terminal.reason})`}.`,
    coil === null
      ? "No coil is drawn for this terminal: ask the office before opening the sheath."
      : `Take down the coil of ${length(coil.storedM)}. It gives the loop that the opening needs.`,
    `Open ${length(settings.openingM)} of sheath${mark}.`,
    ...(openTubes.length === 0
      ? ["No fiber is given to this terminal yet: do not open a tube."]
      : [
          `Open tube ${openTubes.map((tube) => `${tube} ${colourWords(tube)}`).join(" and tube ")}; coil the other tubes closed.`,
          `Cut only ${fibers.map((one) => `fiber ${one.use.fiber}, ${colourWords(one.place)}`).join("; ")}. ${kept}`,
          `Splice the feed side of ${fibers.map((one) => (one.splitter ? `fiber ${one.use.fiber} to splitter ${one.splitter.position}` : `fiber ${one.use.fiber}`)).join(", ")}; park the far side.`,
        ]),
    "Bond the housing to the strand; close and seal it. Coil what remains and tag the coil with its length.",
    "Measure the light at every port and write it down below. Then connect the drops by the table; cap the others.",
  ];
}
