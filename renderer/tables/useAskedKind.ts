import { useState } from "react";
import { settingsOf } from "../../core/model/route.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import type { Kind } from "./kinds.ts";

/** A kind with the columns this route has anything to tell under; the same one as long as those are the same. */
export function useAskedKind({ route }: OpenRoute, kind: Kind): Kind {
  const settings = settingsOf(route);
  const columns = kind.columns.filter((one) => one.isAsked?.(settings) ?? true);
  const [kept, setKept] = useState({ ...kind, columns });
  if (kept.columns.length === columns.length && kept.columns.every((one, i) => one === columns[i])) return kept;
  const fresh = { ...kind, columns };
  setKept(fresh);
  return fresh;
}
