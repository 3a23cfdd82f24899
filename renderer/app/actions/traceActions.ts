import { Activity } from "lucide-react";
import { setTraces } from "../../trace/traceHand.ts";
import { traceWords } from "../../trace/words.ts";
import { type Action, action, beyondDiagram } from "./action.ts";

/** What reflectometers showed. */
export const traceActions: readonly Action[] = [
  action("traces", {
    name: (s) => (s.view.getState().traces.isOpen ? traceWords.hide : traceWords.show),
    keys: ["Mod+Shift+F"],
    icon: Activity,
    blocked: beyondDiagram,
    run: (s) => setTraces(s, { isOpen: !s.view.getState().traces.isOpen, underM: null }),
    place: "closeout",
  }),
];
