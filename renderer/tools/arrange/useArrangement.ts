import { useMemo } from "react";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { arrangementHere } from "./arrange.ts";
import type { Arrangement } from "./arrangement.ts";
import type { Arranging } from "./arranging.ts";

/** What is being arranged and what would come of it now; null while nothing is. */
export function useArrangement(
  open: OpenRoute,
): { readonly asked: Arranging; readonly arrangement: Arrangement } | null {
  const session = useSession();
  const asked = useView((state) => state.arranging);
  const selection = useView((state) => state.selection);
  const kinds = useView((state) => state.kinds);
  // worked out anew when the route, the choice or the wish is another one, not when the view moves
  return useMemo(
    () => (asked && open.route && selection && kinds ? { asked, arrangement: arrangementHere(session, asked) } : null),
    [session, open.route, selection, kinds, asked],
  );
}
