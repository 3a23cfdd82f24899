import type { TraceLine } from "./shownTrace.ts";

/** Words of the traces. */
export const traceWords = {
  show: "Show the traces",
  hide: "Put the traces away",
  room: "Traces",
  divider: "Size of the traces",
  hand: "Trace along the fiber. Up and down walk from event to event, left and right move the mark, A and B take the other mark, 0 shows all of it, plus and minus zoom.",
  trace: "Trace",
  fit: "Show the whole trace",
  others: "With the others of its fiber",
  bring: "Bring in traces",
  remove: "Remove this trace",
  none: "No traces are kept with this route yet. Bring in the .sor files a reflectometer saved: each is matched to its fiber.",
  noCurve: "This file holds no curve that can be read.",
  waiting: "The curve is being read.",
  damaged: "Could not be read",
  give: "Say so",
  whose: "Whose trace is this?",
  whoseKnown: "Fiber, end and lead",
  cable: "Cable",
  fiber: "Fiber",
  end: "Taken from",
  ends: { feed: "the hub", far: "the far end" },
  lead: "Launch lead",
  leadUnknown: "as the trace shows",
  badLead: "That is no length of a lead.",
  mark: (name: "a" | "b") => (name === "a" ? "A" : "B"),
  between: (distance: string, loss: string) => `A to B: ${distance}, ${loss}`,
  at: (name: string, distance: string, level: string) => `${name} at ${distance}, ${level}`,
  events: "Events of the trace",
  columns: {
    at: (unit: string) => `From the hub, ${unit}`,
    what: "Place",
    more: (unit: string) => `Off, ${unit}`,
    loss: "Loss, dB",
    mean: "Mean, dB",
    reflectance: "Reflection, dB",
    slope: "Before it, dB/km",
  },
  by: "Brought by",
  byNeeded: "Write first who brings them, beside the button that brings traces in.",
  told: (by: string, day: string, operator: string) =>
    `Brought by ${by}, ${day}.${operator === "" ? "" : ` Operator as the instrument tells: ${operator}.`}`,
  tail: "lead or tail",
  event: (number: number) => `event ${number}`,
  unmatched: "nothing drawn",
  broken: (plusMinus: string) => `the fiber ends, give or take ${plusMinus}`,
  brought: (keptCount: number, askCount: number) =>
    `${keptCount} ${keptCount === 1 ? "trace" : "traces"} kept${askCount > 0 ? `; of ${askCount} nobody has said whose they are` : ""}.`,
  allThere: "All these traces are on the route already.",
} as const;

/** What a line is, where nothing drawn stands there or nothing shows. */
export const lineKinds: Readonly<Record<TraceLine["kind"], string>> = {
  untold: "",
  matched: "",
  missing: "does not show",
  beyond: "beyond the break",
  unmatched: traceWords.unmatched,
  break: "",
  lead: traceWords.tail,
};
