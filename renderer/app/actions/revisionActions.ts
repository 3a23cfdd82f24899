import { Stamp } from "lucide-react";
import { revisionWords } from "../../panels/revisions/words.ts";
import { besideTurned } from "../sideRoom.ts";
import { type Action, action, waiting } from "./action.ts";

/** Revisions: issued, approved, made void. */
export const revisionActions: readonly Action[] = [
  action("revisions", {
    name: (s) => (s.view.getState().sideRoom === "revisions" ? revisionWords.hide : revisionWords.show),
    keys: ["Mod+Shift+E"],
    icon: Stamp,
    blocked: waiting,
    run: (s) => s.view.setState(besideTurned("revisions")),
    place: "history",
  }),
];
