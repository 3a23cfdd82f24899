import { ChartGantt, Columns2 } from "lucide-react";
import { whatIfWords } from "../../layout/whatIfWords.ts";
import { layoutWords } from "../../layout/words.ts";
import { besideTurned } from "../sideRoom.ts";
import { type Action, action, beyondDiagram } from "./action.ts";

/** How the layout came out. */
export const layoutActions: readonly Action[] = [
  action("layoutPanel", {
    name: (s) => (s.view.getState().sideRoom === "layout" ? layoutWords.hide : layoutWords.show),
    keys: ["Mod+L"],
    icon: ChartGantt,
    blocked: beyondDiagram,
    run: (s) => s.view.setState(besideTurned("layout")),
    place: "work",
  }),
  action("whatIf", {
    name: (s) => (s.view.getState().isWhatIfOpen ? whatIfWords.hide : whatIfWords.show),
    keys: ["W"],
    icon: Columns2,
    blocked: beyondDiagram,
    run: (s) => s.view.setState((state) => ({ isWhatIfOpen: !state.isWhatIfOpen })),
  }),
];
