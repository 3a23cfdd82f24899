import { LayoutPanelLeft, SlidersHorizontal } from "lucide-react";
import { setLayout } from "../panelLayout.ts";
import { plainLayout } from "../plainLayout.ts";
import { type Action, action, waiting } from "./action.ts";
import { actionWords } from "./words.ts";

/** Standards and catalogues. */
export const settingsActions: readonly Action[] = [
  action("settings", {
    name: (s) => (s.view.getState().isSettingsOpen ? actionWords.hideStandards : actionWords.standards),
    keys: ["Mod+,"],
    icon: SlidersHorizontal,
    blocked: waiting,
    run: (s) => s.view.setState((state) => ({ isSettingsOpen: !state.isSettingsOpen, sheets: null })),
    place: "view",
  }),
  action("resetLayout", {
    name: () => actionWords.resetLayout,
    icon: LayoutPanelLeft,
    run: (s) => setLayout(s, plainLayout),
    place: "view",
  }),
];
