import { ok, type Result } from "../../core/model/result.ts";
import type { Session } from "../host/session.ts";

/** Opens route files so that each is open once, however often it is named; answers with its id in the host. */
export function openOnce(
  open: (path: string) => Result<Session>,
  add: (session: Session) => string,
): (path: string) => Result<string> {
  const ids = new Map<string, string>();
  return (path) => {
    const present = ids.get(path);
    if (present !== undefined) return ok(present);
    const opened = open(path);
    if (!opened.ok) return opened;
    const routeId = add(opened.value);
    ids.set(path, routeId);
    return ok(routeId);
  };
}
