import { fitAll, placeOfRef, placesNow, showPlace } from "../../app/look.ts";
import { openRouteOf, type Session, tell } from "../../app/session.ts";
import type { DrawnAs } from "../places.ts";

const keyOf = (fileName: string): string => `strandwright.drawnAs/${fileName}`;

/** Lays the page another way and keeps it for this file; what is chosen stays in the middle, else the whole route is shown. */
export function setDrawnAs(session: Session, drawnAs: DrawnAs): void {
  const { plant, fileName } = openRouteOf(session);
  session.view.setState({ drawnAs, adding: null });
  localStorage.setItem(keyOf(fileName), drawnAs);
  const chosen = session.view.getState().selection.at(-1);
  const at = chosen ? placeOfRef(plant, chosen, placesNow(session)) : null;
  if (at) showPlace(session, at);
  else fitAll(session, true);
  tell(session, drawnAs === "ground" ? "True to the ground." : "Straightened.");
}

/** How this file was laid on the page when it was last looked at. */
export function keptDrawnAs(fileName: string): DrawnAs {
  const kept = localStorage.getItem(keyOf(fileName));
  return kept === "scale" || kept === "even" ? kept : "ground";
}
