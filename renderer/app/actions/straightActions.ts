import { MoveHorizontal, Rows3 } from "lucide-react";
import { setDrawnAs } from "../../canvas/straight/drawing.ts";
import { type Action, action, beyondDiagram } from "./action.ts";

/** How the route is laid on the page. */
export const straightActions: readonly Action[] = [
  action("straighten", {
    name: (s) => (s.view.getState().drawnAs === "ground" ? "Straighten the route" : "Draw true to the ground"),
    keys: ["R"],
    icon: MoveHorizontal,
    blocked: beyondDiagram,
    run: (s) => setDrawnAs(s, s.view.getState().drawnAs === "ground" ? "scale" : "ground"),
    place: "view",
  }),
  action("evenSpacing", {
    name: (s) => (s.view.getState().drawnAs === "even" ? "Space poles to scale" : "Space poles evenly"),
    keys: ["Shift+R"],
    icon: Rows3,
    blocked: (s) => beyondDiagram(s) ?? (s.view.getState().drawnAs === "ground" ? "Straighten the route first." : null),
    run: (s) => setDrawnAs(s, s.view.getState().drawnAs === "even" ? "scale" : "even"),
  }),
];
