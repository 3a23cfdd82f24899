import { fitAll, placeOfRef, placesNow, showPlace } from "../../app/look.ts";
import { openRouteOf, type Session, tell } from "../../app/session.ts";
import { keepWays } from "../../app/ways.ts";
import type { DrawnAs } from "../places.ts";

/** Lays the page another way and keeps it for this file; what is chosen stays in the middle, else the whole route is shown. */
export function setDrawnAs(session: Session, drawnAs: DrawnAs): void {
  const { plant } = openRouteOf(session);
  session.view.setState({ drawnAs, adding: null });
  keepWays(session, { drawnAs });
  const chosen = session.view.getState().selection.at(-1);
  const at = chosen ? placeOfRef(plant, chosen, placesNow(session)) : null;
  if (at) showPlace(session, at);
  else fitAll(session, true);
  tell(session, drawnAs === "ground" ? "True to the ground." : "Straightened.");
}
