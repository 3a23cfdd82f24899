/** Words of the window as a whole; one place, so that they can be translated. */
export const words = {
  droppedCopy: (fileName: string, folder: string): string =>
    `A browser does not say where a dropped file lies: ${fileName} was taken in as a copy, in ${folder}.`,
  notAList: {
    what: "That kind of file cannot be taken in.",
    mend: "Drop a CSV, XLSX or GeoJSON list, or a route file.",
  },
  noRouteForList: {
    what: "There is no route to take the list into.",
    mend: "Open a route or start a new one, then drop the list again.",
  },
} as const;
