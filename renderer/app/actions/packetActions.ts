import { ClipboardList } from "lucide-react";
import { showPackets } from "../../closeout/packets/takePackets.ts";
import { packetWords } from "../../closeout/packets/words.ts";
import { type Action, action, waiting } from "./action.ts";

/** Field packets: given to crews and brought back. */
export const packetActions: readonly Action[] = [
  action("packets", {
    name: (s) => (s.view.getState().isPacketsOpen ? packetWords.hide : packetWords.show),
    keys: ["Mod+Shift+K"],
    icon: ClipboardList,
    blocked: waiting,
    run: (s) => (s.view.getState().isPacketsOpen ? s.view.setState({ isPacketsOpen: false }) : showPackets(s)),
    place: "history",
  }),
];
