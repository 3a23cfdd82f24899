/** Words of the page a crew takes along. */
export const words = {
  title: (number: number, route: string): string => `Field packet ${number}, ${route}`,
  crew: (crew: string, revision: string, by: string, date: string): string =>
    `For ${crew}. ${revision}. Written by ${by}, ${date}.`,
  cautions: "Cautions",
  cautionLine:
    "Work at height near energized lines, with steel under tension and invisible laser light. Local code and the pole owner's rules govern.",
  name: "Your name",
  nameFirst: "Write your name first: every reading is signed with it.",
  steps: "Steps",
  drawn: "The drawn card",
  drawnPage: (name: string, page: number): string => `Job card of ${name}, page ${page}`,
  count: (done: number, all: number): string => `${done} of ${all} read`,
  drawnIs: (text: string): string => `Drawn ${text}.`,
  expectedIs: (text: string): string => `Expected ${text}.`,
  standing: (text: string, by: string): string => `Read before: ${text}, ${by}.`,
  understood: (text: string): string => `Read as ${text}.`,
  limitIs: (text: string): string => `Limit: ${text}.`,
  far: (text: string, butWhat: string): string =>
    `Read as ${text}${butWhat === "" ? "" : `, but ${butWhat}`}. Is that what you measured?`,
  butDrawn: (drawn: string): string => `drawn ${drawn}`,
  butExpected: (drawn: string): string => `expected ${drawn}`,
  yes: "Yes",
  no: "No",
  photos: "Photos",
  addPhoto: "Add a photo",
  moment: "Taken",
  moments: { before: "Before the work", built: "As built", after: "After the work" },
  caption: "What it shows",
  remove: "Remove",
  removeSurely: "Remove it for good",
  notPicture: "That file is not a picture this browser can read.",
  keptHere: "Everything you type is kept in this browser at once, also when the battery dies.",
  notKept:
    "This browser refuses to keep anything. What you type is lost when the page is closed: write the file before you leave the page.",
  full: "This browser has no room left to keep what you type. Write the file now.",
  photosNotKept: "Photos cannot be kept in this browser: write the file before you close the page.",
  write: "I am done: write the file",
  written: (file: string): string => `Written: ${file}. Send it to the office. Everything stays here as well.`,
  unreadable: (count: number): string =>
    `${count} ${count === 1 ? "field" : "fields"} could not be read and ${count === 1 ? "goes" : "go"} along as typed.`,
  nothing: "Nothing is typed yet.",
} as const;
