import { Scale } from "lucide-react";
import { balanceWords } from "../../balance/words.ts";
import { type Action, action, beyondDiagram } from "./action.ts";

/** Ports, fibers and hub outputs in balance. */
export const balanceActions: readonly Action[] = [
  action("balance", {
    name: (s) => (s.view.getState().balance.isOpen ? balanceWords.hide : balanceWords.show),
    keys: ["Mod+U"],
    icon: Scale,
    blocked: beyondDiagram,
    run: (s) => {
      s.view.setState(({ balance }) => ({
        balance: { ...balance, isOpen: !balance.isOpen, hand: null, marked: [], evenBy: null },
      }));
    },
    place: "view",
  }),
];
