import { AlignHorizontalSpaceAround, FlipHorizontal, Repeat, Waypoints } from "lucide-react";
import { openArranging, repeatOf } from "../../tools/arrange/arrange.ts";
import { plainArranging, waysFor } from "../../tools/arrange/arranging.ts";
import { arrangeWords } from "../../tools/arrange/words.ts";
import type { Session } from "../session.ts";
import { type Action, action, beyondDiagram, working } from "./action.ts";

const turn = repeatOf({ ...plainArranging, way: "turnTerminals" });

/** Several chosen things at once, and the last thing once more. */
export const arrangeActions: readonly Action[] = [
  action("arrange", {
    name: () => arrangeWords.arrange,
    keys: ["E"],
    icon: AlignHorizontalSpaceAround,
    blocked: (s) => working(s) ?? beyondDiagram(s) ?? (hasWays(s) ? null : arrangeWords.nothing),
    run: (s) => openArranging(s),
  }),
  action("turn", {
    name: () => arrangeWords.turn,
    keys: ["F"],
    icon: FlipHorizontal,
    blocked: (s) => beyondDiagram(s) ?? turn.blocked(s),
    run: turn.run,
    isRepeatable: true,
  }),
  action("hangAlong", {
    name: () => arrangeWords.ways.hangAlong,
    keys: ["Shift+T"],
    icon: Waypoints,
    blocked: (s) =>
      working(s) ??
      beyondDiagram(s) ??
      (waysFor(s.view.getState().selection).includes("hangAlong") ? null : arrangeWords.needsPoles),
    run: (s) => openArranging(s, "hangAlong"),
  }),
  action("repeat", {
    name: (s) => arrangeWords.repeat(s.view.getState().lastDone?.name ?? null),
    keys: ["F4"],
    icon: Repeat,
    blocked: (s) => {
      const { lastDone } = s.view.getState();
      return working(s) ?? beyondDiagram(s) ?? (lastDone ? lastDone.blocked(s) : arrangeWords.nothingDone);
    },
    run: (s) => s.view.getState().lastDone?.run(s),
  }),
];

function hasWays(session: Session): boolean {
  return waysFor(session.view.getState().selection).length > 0;
}
