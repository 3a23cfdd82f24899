import type { Reply } from "../../core/contract/contract.ts";
import { type FileWays, plainWays } from "../../core/contract/wayMethods.ts";

/** Route files as this window knows them: which are open, and how the one shown stands. */
export type FileView = {
  readonly routes: Reply<"route.list">["routes"];
  readonly isStartOpen: boolean;
  /** Copies and backups of the route shown. */
  readonly areCopiesOpen: boolean;
  readonly fileState: Reply<"files.state"> | null;
  readonly isHostAway: boolean;
  /** How the file shown was looked at on this machine. */
  readonly ways: FileWays;
  /** A list dropped on the window, waiting to be shown by the import. */
  readonly dropped: File | null;
  /** Step of the guided look, from 0; null while nobody is shown round. */
  readonly guideStep: number | null;
};

/** Nothing known yet. */
export const blankFileView: FileView = {
  routes: [],
  isStartOpen: false,
  areCopiesOpen: false,
  fileState: null,
  isHostAway: false,
  ways: plainWays,
  dropped: null,
  guideStep: null,
};
