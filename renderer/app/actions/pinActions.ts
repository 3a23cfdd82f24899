import { Ban, Pin } from "lucide-react";
import { decide, decideBlocked, decideName } from "../../tools/pins.ts";
import { type Action, action, beyondDiagram, working } from "./action.ts";

/** What a person decides for every layout to come. */
export const pinActions: readonly Action[] = [
  action("pin", {
    name: (s) => decideName(s, "pin"),
    keys: ["I"],
    icon: Pin,
    blocked: (s) => working(s) ?? beyondDiagram(s) ?? decideBlocked(s, "pin"),
    run: (s) => decide(s, "pin"),
    isRepeatable: true,
  }),
  action("bar", {
    name: (s) => decideName(s, "bar"),
    keys: ["N"],
    icon: Ban,
    blocked: (s) => working(s) ?? beyondDiagram(s) ?? decideBlocked(s, "bar"),
    run: (s) => decide(s, "bar"),
    isRepeatable: true,
  }),
];
