import {
  FileDown,
  FileInput,
  Files,
  ListTree,
  type LucideIcon,
  Maximize,
  PanelBottom,
  PanelRight,
  Redo2,
  Ruler,
  Undo2,
  Waypoints,
  X,
  ZoomIn,
  ZoomOut,
} from "lucide-react";
import { redo, runCommand, undo } from "./edits.ts";
import { drawSet, layOut, previewSheets } from "./jobs.ts";
import { fitAll, zoomBy } from "./look.ts";
import { type Session, unitsOf } from "./session.ts";

/** One thing a person can ask for: buttons, keys and tooltips are all made from these. */
export type Action = {
  readonly id: string;
  /** Verb first, sentence case; names the step where there is one. */
  readonly name: (session: Session) => string;
  /** Keys that run it, as `Mod+Shift+Z`; a key without Mod works while the diagram has the focus. */
  readonly keys: readonly string[];
  readonly icon: LucideIcon;
  /** Why it cannot run now, or null where it can. */
  readonly blocked: (session: Session) => string | null;
  readonly run: (session: Session) => unknown;
  /** Place in the bar, or null where keys alone reach it. */
  readonly place: "history" | "work" | "view" | null;
  /** Whether the bar shows the name beside the icon. */
  readonly isWritten: boolean;
};

const closed = (session: Session): string | null => (session.store.get() ? null : "No route is open.");

const working = (session: Session): string | null => {
  const { job } = session.view.getState();
  return closed(session) ?? (job ? `Wait for "${job.name}" to end, or stop it.` : null);
};

const beyondDiagram = (session: Session): string | null =>
  closed(session) ?? (session.view.getState().sheets ? "The sheets are shown; close them first." : null);

function action(id: string, rest: Partial<Action> & Pick<Action, "name" | "icon" | "run">): Action {
  return { id, keys: [], blocked: closed, place: null, isWritten: false, ...rest };
}

/** Every action of the window, in the order of the bar. */
export const actions: readonly Action[] = [
  action("undo", {
    name: (s) => stepName("Undo", s.store.get()?.history.undo),
    keys: ["Mod+Z"],
    icon: Undo2,
    blocked: (s) => working(s) ?? (s.store.get()?.history.undo ? null : "Nothing to undo."),
    run: undo,
    place: "history",
  }),
  action("redo", {
    name: (s) => stepName("Redo", s.store.get()?.history.redo),
    keys: ["Mod+Shift+Z", "Mod+Y"],
    icon: Redo2,
    blocked: (s) => working(s) ?? (s.store.get()?.history.redo ? null : "Nothing to redo."),
    run: redo,
    place: "history",
  }),
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
    blocked: working,
    run: (s) => (s.view.getState().sheets ? s.view.setState({ sheets: null }) : previewSheets(s)),
    place: "work",
    isWritten: true,
  }),
  action("draw", {
    name: () => "Draw the set",
    keys: ["Mod+P"],
    icon: FileDown,
    blocked: working,
    run: drawSet,
    place: "work",
    isWritten: true,
  }),
  action("zoomOut", {
    name: () => "Zoom out",
    keys: ["-", "Mod+-"],
    icon: ZoomOut,
    blocked: beyondDiagram,
    run: (s) => zoomBy(s, 1 / 1.4),
    place: "view",
  }),
  action("zoomIn", {
    name: () => "Zoom in",
    keys: ["+", "=", "Mod+=", "Mod++"],
    icon: ZoomIn,
    blocked: beyondDiagram,
    run: (s) => zoomBy(s, 1.4),
    place: "view",
  }),
  action("fit", {
    name: () => "Show the whole route",
    keys: ["0", "Mod+0"],
    icon: Maximize,
    blocked: beyondDiagram,
    run: (s) => fitAll(s),
    place: "view",
  }),
  action("units", {
    name: (s) => (unitsOf(s.store.get()) === "us" ? "Switch to metric units" : "Switch to feet and inches"),
    icon: Ruler,
    blocked: working,
    run: (s) =>
      runCommand(s, "settings.set", {
        values: { unitSystem: unitsOf(s.store.get()) === "us" ? "metric" : "us" },
      }),
    place: "view",
  }),
  action("findings", {
    name: (s) => (s.view.getState().isFindingsOpen ? "Put the findings away" : "Show the findings"),
    keys: ["Mod+J"],
    blocked: beyondDiagram,
    icon: PanelBottom,
    run: (s) => s.view.setState((state) => ({ isFindingsOpen: !state.isFindingsOpen })),
    place: "view",
  }),
  action("side", {
    name: (s) => (s.view.getState().isSideOpen ? "Put the side panel away" : "Show the side panel"),
    keys: ["Mod+B"],
    blocked: beyondDiagram,
    icon: PanelRight,
    run: (s) => s.view.setState((state) => ({ isSideOpen: !state.isSideOpen })),
    place: "view",
  }),
  action("back", {
    name: () => "Clear the selection",
    keys: ["Escape"],
    icon: X,
    run: backOut,
  }),
  action("all", {
    name: () => "Choose all terminals",
    keys: ["Mod+A"],
    icon: ListTree,
    blocked: beyondDiagram,
    run: (s) => {
      const ids = [...(s.store.get()?.route.terminal.keys() ?? [])];
      s.view.setState({ selection: ids.map((id) => `terminal/${id}` as const) });
    },
  }),
];

/** The action of an id. */
export function actionOf(id: string): Action {
  const found = actions.find((one) => one.id === id);
  if (!found) throw new Error(`no such action: ${id}`);
  return found;
}

/** Runs an action, or says why it cannot. */
export function perform(session: Session, wanted: Action): void {
  const reason = wanted.blocked(session);
  if (reason === null) void wanted.run(session);
  else session.view.setState((state) => ({ said: reason, saidCount: state.saidCount + 1 }));
}

function stepName(verb: string, step: string | null | undefined): string {
  return step ? `${verb} ${step.charAt(0).toLowerCase()}${step.slice(1)}` : verb;
}

/** Escape backs out one level: a fault, then the sheets, then the import, then the selection. */
function backOut(session: Session): void {
  const { fault, sheets, isImportOpen } = session.view.getState();
  if (fault) session.view.setState({ fault: null });
  else if (sheets) session.view.setState({ sheets: null });
  else if (isImportOpen) session.view.setState({ isImportOpen: false });
  else session.view.setState({ selection: [], hover: null });
}
