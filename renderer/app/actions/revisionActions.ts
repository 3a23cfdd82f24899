import { Stamp } from "lucide-react";
import { revisionWords } from "../../panels/revisions/words.ts";
import { type Action, action, waiting } from "./action.ts";

/** Revisions: issued, approved, made void. */
export const revisionActions: readonly Action[] = [
  action("revisions", {
    name: (s) => (s.view.getState().isRevisionsOpen ? revisionWords.hide : revisionWords.show),
    keys: ["Mod+Shift+E"],
    icon: Stamp,
    blocked: waiting,
    run: (s) =>
      s.view.setState((state) => ({
        isRevisionsOpen: !state.isRevisionsOpen,
        isPacketsOpen: false,
        isHistoryOpen: false,
        isSignOffOpen: false,
        isLayoutOpen: false,
        isSettingsOpen: false,
        isSideOpen: state.isRevisionsOpen ? state.isSideOpen : true,
      })),
    place: "history",
  }),
];
