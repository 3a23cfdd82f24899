/** Words of the start screen, the copies and the guided look; one place, so that they can be translated. */
export const words = {
  startTitle: "Open or start a route",
  back: "Back to the route",
  demo: "Open the demo route",
  demoWhy: "A whole route to look at and play with.",
  recent: "Recent routes",
  noRecent: "Routes you open are listed here.",
  missing: "not found where it was",
  browse: "Open another file",
  newRoute: "Start a new route",
  routeName: "Route name",
  place: "Place",
  units: "Units",
  us: "Feet and inches",
  metric: "Metric",
  clearanceSet: "Clearance set",
  loadingDistrict: "Loading district",
  fileName: "File name",
  ownStandards: "Starts with the program's own standards and catalogues.",
  startsWith: (fileName: string): string => `Starts with the standards, catalogues and logo of ${fileName}.`,
  chooseTemplate: "Start from a template",
  otherTemplate: "Choose another template",
  noTemplate: "Without a template",
  chosenFolder: "Folder",
  make: "Make the route",
  makeAndImport: "Make it and bring in poles",
  needsName: "Give the route a name first.",
  up: "Up one folder",
  roots: "Where to look",
  noFiles: "No route file in this folder.",
  copies: "Copies and backups",
  others: "For other programs",
  othersWhy: "The schedules of the sheets as a workbook; the route as a drawing at its true size, or on the globe.",
  close: "Close",
  saveCopy: "Save a copy as",
  save: "Save the copy",
  backUp: "Make a backup now",
  backups: "Backups",
  backupsWhy: "Made on opening, every 20 minutes of editing, and here. The ten newest are kept.",
  restore: "Restore",
  restoreWhy: "The route as it is now is kept as a backup first.",
  noBackups: "No backup yet.",
  openRoutes: "Open routes",
  lookAgain: "Look again",
  look: "You may look at this route; nothing can be changed here.",
  away: "The program behind this window does not answer. Every edit that was answered is in the file. Trying again.",
  stateOfRoute: "State of the route",
  closeNamed: (routeName: string): string => `Close ${routeName}`,
  backupMade: (size: string): string => `Backup made, ${size}.`,
  restored: (time: string): string => `Restored the route of ${time}; what it was before is in the list.`,
  copySaved: (fileName: string, folder: string): string => `Copy saved as ${fileName} in ${folder}.`,
  fileIn: (fileName: string, folder: string): string => `${fileName} in ${folder}`,
  stepOf: (step: number, count: number): string => `${step} of ${count}`,
  guide: "A look round",
  next: "Next",
  skip: "Skip",
  done: "Done",
} as const;

/** The guided look: what to see, and what to try. */
export const guideSteps = [
  {
    title: "The route",
    text: "Each ring is a pole, each bar a terminal with its ports. The wheel zooms, a drag moves the ground, a click tells what a thing is at the side.",
  },
  {
    title: "What is not right yet",
    text: "The findings below are checked again after every edit. A click goes to the place; the button beside it mends it, and undo takes that back.",
  },
  {
    title: "The drawings",
    text: "Lay out terminals hangs them and assigns ports. Preview sheets shows the set as it will print. Every edit is saved as you make it.",
  },
] as const;

/** That nothing is waiting to be saved, and since when. */
export function savedWords(editedAtIso: string | null): string {
  return editedAtIso === null ? "All changes saved" : `All changes saved, last edit ${timeWords(editedAtIso)}`;
}

/** A time as a person reads it here: the clock for today, the day before it otherwise. */
export function timeWords(iso: string): string {
  const at = new Date(iso);
  const clock = at.toLocaleTimeString(undefined, { hour: "2-digit", minute: "2-digit" });
  if (at.toDateString() === new Date().toDateString()) return clock;
  return `${at.toLocaleDateString(undefined, { day: "numeric", month: "short", year: "numeric" })}, ${clock}`;
}

/** A sentence of the host's with its times as a person reads them. */
export function withLocalTimes(text: string): string {
  return text.replace(/\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?Z/g, timeWords);
}

/** A file's size. */
export function sizeWords(byteCount: number): string {
  return byteCount < 1e6 ? `${Math.max(1, Math.round(byteCount / 1e3))} kB` : `${(byteCount / 1e6).toFixed(1)} MB`;
}
