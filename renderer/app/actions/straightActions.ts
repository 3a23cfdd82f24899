import { MoveHorizontal, Rows3 } from "lucide-react";
import { setDrawnAs } from "../../canvas/straight/drawing.ts";
import { type Action, action, beyondDiagram } from "./action.ts";
import { actionWords } from "./words.ts";

/** How the route is laid on the page. */
export const straightActions: readonly Action[] = [
  action("straighten", {
    name: (s) => (s.view.getState().drawnAs === "ground" ? actionWords.straighten : actionWords.trueToGround),
    keys: ["R"],
    icon: MoveHorizontal,
    blocked: beyondDiagram,
    run: (s) => setDrawnAs(s, s.view.getState().drawnAs === "ground" ? "scale" : "ground"),
    place: "view",
  }),
  action("evenSpacing", {
    name: (s) => (s.view.getState().drawnAs === "even" ? actionWords.spaceToScale : actionWords.spaceEvenly),
    keys: ["Shift+R"],
    icon: Rows3,
    blocked: (s) => beyondDiagram(s) ?? (s.view.getState().drawnAs === "ground" ? actionWords.straightenFirst : null),
    run: (s) => setDrawnAs(s, s.view.getState().drawnAs === "even" ? "scale" : "even"),
  }),
];
