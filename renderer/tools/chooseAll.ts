import { refKey } from "../app/ref.ts";
import { openRouteOf, type Session } from "../app/session.ts";
import { drawnKinds, isShownKind } from "./kinds.ts";

/** Chooses everything the diagram shows: all rows of every kind that is not hidden; drops go with their terminals. */
export function chooseAll(session: Session): void {
  const { route } = openRouteOf(session);
  const { kinds } = session.view.getState();
  const shown = drawnKinds.filter((kind) => kind !== "drop" && isShownKind(kinds, kind));
  session.view.setState({ selection: shown.flatMap((kind) => [...route[kind].keys()].map((id) => refKey(kind, id))) });
}
