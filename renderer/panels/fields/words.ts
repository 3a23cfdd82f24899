/** Words of the fields in the side panel. */
export const fieldWords = {
  facts: "Facts that can be changed",
  shared: "Change all of them",
  several: "several values",
  changeRows: (heading: string, count: number) => `Change ${heading.toLowerCase()} of ${count}`,
  touches: "Touches",
  history: "History",
  neverTouched: "No edit has touched it by itself.",
  noLonger: "This has changed meanwhile; the value typed was not kept.",
} as const;
