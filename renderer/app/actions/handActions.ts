import { Copy, Focus, Layers, PencilLine, Ruler, RulerDimensionLine, Scaling, Trash2 } from "lucide-react";
import { anotherNow, duplicateChosen } from "../../tools/duplicate.ts";
import { openExact } from "../../tools/exact.ts";
import { nameField, openName } from "../../tools/inPlace.ts";
import { lockedWords } from "../../tools/kinds.ts";
import { oneTerminal } from "../../tools/oneTerminal.ts";
import { removalBlocked, removalName, removeChosen } from "../../tools/removal.ts";
import { fitChosen, fullScale } from "../look.ts";
import { openRouteOf, type Session } from "../session.ts";
import { type Action, action, beyondDiagram, working } from "./action.ts";
import { actionWords } from "./words.ts";

const needsTerminal = (s: Session): string | null =>
  working(s) ?? beyondDiagram(s) ?? (oneTerminal(s) === null ? actionWords.oneTerminalFirst : null);

const somethingChosen = (s: Session): string | null =>
  beyondDiagram(s) ?? (s.view.getState().selection.length === 0 ? actionWords.nothingChosen : null);

/** What hands do on the diagram. */
export const handActions: readonly Action[] = [
  action("exact", {
    name: () => actionWords.exact,
    keys: ["Enter"],
    icon: RulerDimensionLine,
    blocked: (s) => needsTerminal(s) ?? lockedWords(s.view.getState().kinds, "terminal"),
    run: (s) => openExact(s, null),
  }),
  action("rename", {
    name: () => actionWords.rename,
    keys: ["F2"],
    icon: PencilLine,
    blocked: (s) => working(s) ?? somethingChosen(s) ?? nameless(s),
    run: (s) => {
      const ref = s.view.getState().selection.at(-1);
      if (ref) openName(s, ref);
    },
  }),
  action("duplicate", {
    name: () => actionWords.duplicate,
    keys: ["Mod+D"],
    icon: Copy,
    blocked: (s) => working(s) ?? beyondDiagram(s) ?? (anotherNow(s) === null ? actionWords.oneToDuplicateFirst : null),
    run: duplicateChosen,
    isRepeatable: true,
  }),
  action("removeChosen", {
    name: removalName,
    keys: ["Delete", "Backspace"],
    icon: Trash2,
    blocked: (s) => working(s) ?? beyondDiagram(s) ?? removalBlocked(s),
    run: removeChosen,
  }),
  action("fitChosen", {
    name: () => actionWords.fitChosen,
    keys: ["2"],
    icon: Focus,
    blocked: somethingChosen,
    run: fitChosen,
  }),
  action("scale", {
    name: () => actionWords.fullScale,
    keys: ["1"],
    icon: Scaling,
    blocked: beyondDiagram,
    run: fullScale,
  }),
  action("measure", {
    name: (s) => (s.view.getState().measure ? actionWords.hideMeasure : actionWords.measure),
    keys: ["M"],
    icon: Ruler,
    blocked: (s) => beyondDiagram(s) ?? (s.view.getState().drawnAs === "ground" ? null : actionWords.noTrueDistances),
    run: (s) => s.view.setState(({ measure }) => ({ measure: measure ? null : [], hand: null, adding: null })),
    place: "view",
  }),
  action("kinds", {
    name: (s) => (s.view.getState().isKindsOpen ? actionWords.hideKinds : actionWords.showKinds),
    keys: ["K"],
    icon: Layers,
    blocked: beyondDiagram,
    run: (s) => s.view.setState(({ isKindsOpen }) => ({ isKindsOpen: !isKindsOpen })),
    place: "view",
  }),
];

function nameless(session: Session): string | null {
  const ref = session.view.getState().selection.at(-1);
  return ref && nameField(openRouteOf(session).plant, ref) ? null : actionWords.nameless;
}
