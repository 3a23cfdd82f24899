import { ClipboardCheck } from "lucide-react";
import { setCloseout } from "../../closeout/closeoutHand.ts";
import { closeoutWords } from "../../closeout/words.ts";
import { type Action, action, beyondDiagram } from "./action.ts";

/** How far the route has come, and what is to be mended. */
export const closeoutActions: readonly Action[] = [
  action("closeout", {
    name: (s) => (s.view.getState().closeout.isOpen ? closeoutWords.hide : closeoutWords.show),
    keys: ["D"],
    icon: ClipboardCheck,
    blocked: beyondDiagram,
    run: (s) => setCloseout(s, { isOpen: !s.view.getState().closeout.isOpen }),
    place: "closeout",
  }),
];
