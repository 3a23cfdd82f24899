import { History } from "lucide-react";
import { historyWords } from "../../panels/history/words.ts";
import { besideTurned } from "../sideRoom.ts";
import { type Action, action, beyondDiagram } from "./action.ts";

/** What was done, as a list to step back through. */
export const historyActions: readonly Action[] = [
  action("history", {
    name: (s) => (s.view.getState().sideRoom === "history" ? historyWords.hide : historyWords.show),
    keys: ["Mod+H"],
    icon: History,
    blocked: beyondDiagram,
    run: (s) => s.view.setState(besideTurned("history")),
    place: "history",
  }),
];
