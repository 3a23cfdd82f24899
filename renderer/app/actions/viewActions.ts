import { Footprints, Maximize, PanelBottom, PanelRight, ZoomIn, ZoomOut } from "lucide-react";
import { runCommand } from "../edits.ts";
import { fitAll, zoomBy } from "../look.ts";
import { unitsOf } from "../session.ts";
import { type Action, action, beyondDiagram, working } from "./action.ts";
import { actionWords } from "./words.ts";

/** What is seen and how. */
export const viewActions: readonly Action[] = [
  action("zoomOut", {
    name: () => actionWords.zoomOut,
    keys: ["-", "Mod+-"],
    icon: ZoomOut,
    blocked: beyondDiagram,
    run: (s) => zoomBy(s, 1 / 1.4),
    place: "view",
  }),
  action("zoomIn", {
    name: () => actionWords.zoomIn,
    keys: ["+", "=", "Mod+=", "Mod++"],
    icon: ZoomIn,
    blocked: beyondDiagram,
    run: (s) => zoomBy(s, 1.4),
    place: "view",
  }),
  action("fit", {
    name: () => actionWords.fit,
    keys: ["0", "Mod+0"],
    icon: Maximize,
    blocked: beyondDiagram,
    run: (s) => fitAll(s),
    place: "view",
  }),
  action("units", {
    name: (s) => (unitsOf(s.store.get()) === "us" ? actionWords.toMetric : actionWords.toFeet),
    icon: Footprints,
    blocked: working,
    run: (s) =>
      runCommand(s, "settings.set", {
        values: { unitSystem: unitsOf(s.store.get()) === "us" ? "metric" : "us" },
      }),
    place: "view",
  }),
  action("findings", {
    name: (s) => (s.view.getState().isFindingsOpen ? actionWords.hideFindings : actionWords.showFindings),
    keys: ["Mod+J"],
    blocked: beyondDiagram,
    icon: PanelBottom,
    run: (s) => s.view.setState((state) => ({ isFindingsOpen: !state.isFindingsOpen })),
    place: "view",
  }),
  action("side", {
    name: (s) => (s.view.getState().isSideOpen ? actionWords.hideSide : actionWords.showSide),
    keys: ["Mod+B"],
    blocked: beyondDiagram,
    icon: PanelRight,
    run: (s) => s.view.setState((state) => ({ isSideOpen: !state.isSideOpen })),
    place: "view",
  }),
];
