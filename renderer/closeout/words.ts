import type { StandingState } from "../../core/closeout/standing.ts";
import type { BoardFilter, CloseoutTab, PunchFilter } from "./closeoutView.ts";

/** Words of the closeout. */
export const closeoutWords = {
  room: "Closeout",
  show: "Show the closeout",
  hide: "Put the closeout away",
  divider: "Height of the closeout",
  tabs: "Parts of the closeout",
  empty: "Nothing is on this route yet that could be built.",
  by: "Read and signed by",
  byNeeded: "Write first who read it.",
} as const;

export const tabWords: Readonly<Record<CloseoutTab, string>> = {
  board: "Board",
  punch: "Punch list",
  sheath: "Sheath marks",
};

export const stateWords: Readonly<Record<StandingState, string>> = {
  designed: "designed",
  issued: "issued",
  built: "built",
  tested: "tested",
  accepted: "accepted",
};

export const boardWords = {
  board: "Closeout by terminal",
  filter: "Show",
  filters: { all: "everything", missing: "what is missing", deviating: "what deviates" } as const satisfies Readonly<
    Record<BoardFilter, string>
  >,
  key: "States",
  terminal: "Terminal",
  missing: "Still to be read",
  disputed: (what: string) => `${what} disputed`,
  deviates: "Deviates",
  nothingMissing: "nothing",
  noneSo: "No row is like that.",
  atPole: (tag: string) => `at ${tag}`,
  after: (tag: string) => `to ${tag}`,
  beyond: "Beyond the last",
  long: "Strand and cable",
  whole: "Whole route",
  allOf: (count: number, state: string) => `${count} ${state}`,
  someOf: (some: number, count: number, state: string) => `${some} of ${count} ${state}`,
} as const;

export const entryWords = {
  form: (name: string) => `Readings: ${name}`,
  back: "Back to the board",
  drawn: "drawn",
  expected: "expected",
  most: "at most",
  state: "State",
  markAll: (name: string) => `Everything in ${name} is`,
  nothingAsked: "Nothing is read here; only its state is told.",
  readBy: (by: string, day: string) => `${by}, ${day}`,
  larger: "Show it larger",
  photo: (said: string) => `Photo: ${said}`,
  saidBy: (read: string, by: string) => `${read} (${by})`,
  disputed: (said: readonly string[]) => `Readings disagree: ${said.join(", ")}.`,
  decide: "Decide",
  conducts: "conducts",
  open: "does not",
  unread: "not read",
  wrongText: "Write what is on the house.",
  wrongPort: (text: string) => `${text} is no port: write a whole number from 1.`,
  wrongMark: (text: string) => `${text} is no mark: write the figure as it is printed.`,
  nearHouse: (address: string) => `${address}`,
  ohm: "ohm",
} as const;

export const punchWords = {
  list: "Punch list",
  filter: "Show",
  filters: { open: "open", done: "done", all: "all" } as const satisfies Readonly<Record<PunchFilter, string>>,
  none: "Nothing is on the list. Put something on it from a finding, or by hand for what is chosen.",
  noneSo: "Nothing on the list is like that.",
  number: "No.",
  place: "Where",
  what: "What",
  assigned: "Assigned",
  due: "Due",
  done: "Done",
  open: "open",
  overdue: "overdue",
  add: "Put on the list",
  addFor: (what: string) => `Put on the list: ${what}`,
  chooseFirst:
    "Choose a pole, span, terminal, closure or living unit on the diagram, then put on the list what is wrong with it.",
  whatNeeded: "Write what is to be mended.",
  item: (number: number) => `Punch ${number}`,
  keep: "Keep",
  close: "Close",
  markDone: "Done",
  note: "How it was mended",
  reopen: "Open it again",
  doneBy: (by: string, day: string) => `Done by ${by}, ${day}`,
  givenBy: (by: string, day: string) => `Put on the list by ${by}, ${day}`,
  before: "Before",
  after: "After",
  addPhoto: (moment: string) => `Add a photo, ${moment}`,
  removePhoto: "Remove the photo",
  photoOf: (moment: string, what: string) => `${moment}: ${what}`,
  noPicture: "The file cannot be read as a picture.",
  rework: "Rework",
  reworkTold: "Put it on the punch list: it is to be built as drawn.",
  accept: "Accept",
  onList: (number: number) => `on the punch list as ${number}`,
} as const;

export const sheathWords = {
  cable: "Cable",
  sections: "Sheath between marks",
  from: "From",
  to: "To",
  used: "Used",
  drawn: "Drawn",
  more: "Stored or missing",
  asDrawn: "as drawn",
  stored: (length: string) => `${length} stored`,
  missing: (length: string) => `${length} missing`,
  doubted: "Marks in doubt",
  doubt: (place: string, figure: number) => `${place}: ${figure} does not fit those before and after it`,
  perhaps: (figure: number) => `two digits exchanged? ${figure}`,
  take: (figure: number) => `Take it as ${figure}`,
  none: "No mark of this cable is read yet. Marks are read at both ends of a cable and before and after each opening; write them down on the board.",
  one: "One mark alone says nothing; read the next.",
  noCable: "No cable is on this route yet.",
  reel: "On the reel",
  usedAll: "Used between the first and the last mark",
  remainder: "Left on the reel",
  remainderUnknown: "not known until both ends of the cable are read",
  counts: { up: "The figures grow from the feed end.", down: "The figures fall from the feed end." },
} as const;
