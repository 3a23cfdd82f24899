import { ClipboardList } from "lucide-react";
import { packetWords } from "../../closeout/packets/words.ts";
import { besideTurned } from "../sideRoom.ts";
import { type Action, action, waiting } from "./action.ts";

/** Field packets: given to crews and brought back. */
export const packetActions: readonly Action[] = [
  action("packets", {
    name: (s) => (s.view.getState().sideRoom === "packets" ? packetWords.hide : packetWords.show),
    keys: ["Mod+Shift+K"],
    icon: ClipboardList,
    blocked: waiting,
    run: (s) => s.view.setState(besideTurned("packets")),
    place: "closeout",
  }),
];
