import { grouped } from "../../core/sheets/paper/quantityText.ts";

/** Words of the window as a whole; one place, so that they can be translated. */
export const words = {
  undone: "Undone: ",
  redone: "Redone: ",
  yoursNow: "The route is yours to edit now.",
  shownAsNow: "Shown as it is now.",
  lookOnly: "This route may be looked at only.",
  frozen: "This route is accepted and frozen; open it again in the sign-off to change it.",
  answersAgain: "The program answers again; this is what the file holds.",
  hostAway: {
    what: "The program behind this window does not answer.",
    mend: "Start the program again; every edit that was answered is in the file.",
  },
  strangeAnswer: {
    what: "The program behind this window answered in a form this window does not know.",
    mend: "Close the program and start it again, so that both are of one version.",
  },
  takenIn: (newCount: number, changedCount: number, skippedCount: number): string =>
    `Taken in: ${newCount} new, ${changedCount} changed, ${skippedCount} left as they were.`,
  cancel: "Cancel",
  keepBest: "Stop and keep the best",
  laidOut: (unservedCount: number, gap: string, isStopped: boolean): string => {
    const done = isStopped ? "Stopped and laid out as it was best so far" : "Laid out";
    return unservedCount === 0
      ? `${done}; terminals and drops: ${gap}.`
      : `${done}; ${unservedCount} living ${unservedCount === 1 ? "unit" : "units"} could not be served; the others: ${gap}.`;
  },
  gapUnknown: "cost not compared, for want of fibers",
  setInViewer: (fileName: string): string => `Drawing set ${fileName} is shown in the viewer; print it from there.`,
  exported: (fileName: string): string => `Exported as ${fileName}.`,
  delivered: (fileName: string): string => `Delivered as ${fileName}.`,
  setSaved: (fileName: string): string => `Drawing set saved as ${fileName}.`,
  printing: "Print sheets",
  sheetOf: (number: number, count: number): string => `sheet ${grouped(number)} of ${grouped(count)}`,
  savingPictures: "Save sheets as PNG",
  picturesSaved: (fileName: string): string => `Sheets saved as ${fileName}.`,
  stopped: (work: string): string => `${work}: stopped, nothing was changed.`,
  sideWidth: "Width of the side panel",
  findingsHeight: "Height of the findings",
  dividerTold: (name: string): string => `${name}: drag, or use the arrow keys; a double click puts it back`,
  droppedCopy: (fileName: string, folder: string): string =>
    `A browser does not say where a dropped file lies: ${fileName} was taken in as a copy, in ${folder}.`,
  notAList: {
    what: "That kind of file cannot be taken in.",
    mend: "Drop a CSV, XLSX, GeoJSON, KML or GPX list, or a route file.",
  },
  noRouteForList: {
    what: "There is no route to take the list into.",
    mend: "Open a route or start a new one, then drop the list again.",
  },
} as const;
