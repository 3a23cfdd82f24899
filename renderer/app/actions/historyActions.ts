import { History } from "lucide-react";
import { historyWords } from "../../panels/history/words.ts";
import { type Action, action, beyondDiagram } from "./action.ts";

/** What was done, as a list to step back through. */
export const historyActions: readonly Action[] = [
  action("history", {
    name: (s) => (s.view.getState().isHistoryOpen ? historyWords.hide : historyWords.show),
    keys: ["Mod+H"],
    icon: History,
    blocked: beyondDiagram,
    run: (s) =>
      s.view.setState((state) => ({
        isHistoryOpen: !state.isHistoryOpen,
        isLayoutOpen: false,
        isRevisionsOpen: false,
        isSignOffOpen: false,
        isPacketsOpen: false,
        isSideOpen: state.isHistoryOpen ? state.isSideOpen : true,
      })),
    place: "history",
  }),
];
