import { FileDown, FileInput, Files, Waypoints } from "lucide-react";
import { drawSet, layOut, previewSheets } from "../jobs.ts";
import { type Action, action, waiting, working } from "./action.ts";

/** The work on a route, in the order it is done. */
export const workActions: readonly Action[] = [
  action("import", {
    name: () => "Import",
    keys: ["Mod+I"],
    icon: FileInput,
    blocked: working,
    run: (s) => s.view.setState((state) => ({ isImportOpen: !state.isImportOpen })),
    place: "work",
    isWritten: true,
  }),
  action("layout", {
    name: () => "Lay out terminals",
    icon: Waypoints,
    blocked: working,
    run: layOut,
    place: "work",
    isWritten: true,
  }),
  action("preview", {
    name: (s) => (s.view.getState().sheets ? "Close the sheets" : "Preview sheets"),
    icon: Files,
    blocked: waiting,
    run: (s) => (s.view.getState().sheets ? s.view.setState({ sheets: null }) : previewSheets(s)),
    place: "work",
    isWritten: true,
  }),
  action("draw", {
    name: () => "Draw the set",
    keys: ["Mod+P"],
    icon: FileDown,
    blocked: waiting,
    run: (s) => drawSet(s),
    place: "work",
    isWritten: true,
  }),
];
