import { createContext, useCallback, useContext, useSyncExternalStore } from "react";
import { useStore } from "zustand";
import { machine } from "./machine.ts";
import type { OpenRoute } from "./routeStore.ts";
import type { Session } from "./session.ts";
import type { ViewState } from "./viewStore.ts";

/** The window's session, for every component under it. */
export const SessionContext = createContext<Session | null>(null);

/** The session this component works in. */
export function useSession(): Session {
  const session = useContext(SessionContext);
  if (!session) throw new Error("a component stands outside its session");
  return session;
}

/** The route as it is now; draws again after every edit. */
export function useOpenRoute(): OpenRoute | null {
  const { store } = useSession();
  return useSyncExternalStore(store.subscribe, store.get);
}

/** A part of the view; draws again when that part changes. */
export function useView<T>(select: (state: ViewState) => T): T {
  return useStore(useSession().view, select);
}

/** Words that hang on route, view and machine: told anew with every change of them, drawn again only where they differ. */
export function useTold<Told extends string | null>(tell: (session: Session) => Told): Told {
  const session = useSession();
  const subscribe = useCallback(
    (hear: () => void) => {
      const stops = [session.store.subscribe(hear), session.view.subscribe(hear), machine.subscribe(hear)];
      return () => {
        for (const stop of stops) stop();
      };
    },
    [session],
  );
  return useSyncExternalStore(subscribe, () => tell(session));
}
