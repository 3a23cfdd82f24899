import type { StrengthCase } from "../model/loadRows.ts";

/** The cases in a title. */
export const caseTitles: Readonly<Record<StrengthCase, string>> = {
  stringing: "at stringing",
  hot: "hot",
  iced: "under ice",
  loaded: "loaded",
  extremeWind: "in extreme wind",
  extremeIce: "under extreme ice",
  worker: "with a worker on the strand",
};
