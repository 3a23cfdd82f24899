import type { ClearanceCase } from "../model/catalogueRows.ts";

/** The cases of clearance in a title. */
export const clearanceCaseWords: Readonly<Record<ClearanceCase, string>> = {
  stringing: "at stringing",
  hot: "hot",
  iced: "under ice",
};
