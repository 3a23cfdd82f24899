import { X } from "lucide-react";
import { frozenFault } from "../../core/closeout/signatures.ts";
import { closeRoute, lookAgain, showRoute } from "../app/files.ts";
import { besideShown } from "../app/sideRoom.ts";
import { useOpenRoute, useSession, useView } from "../app/useSession.ts";
import { words as faultWords } from "../panels/faults/words.ts";
import { Tip } from "../panels/Tip.tsx";
import { savedWords, withLocalTimes, words } from "./words.ts";

/** The routes open at once, where there is more than one. */
export function RouteTabs() {
  const session = useSession();
  const open = useOpenRoute();
  const routes = useView((state) => state.routes);
  const isWorking = useView((state) => state.job !== null);
  if (routes.length < 2) return null;
  return (
    <nav className="route-tabs" aria-label={words.openRoutes}>
      {routes.map(({ routeId, routeName, fileName }) => (
        <span key={routeId} className={routeId === open?.routeId ? "route-tab is-shown" : "route-tab"}>
          <button
            type="button"
            title={fileName}
            aria-current={routeId === open?.routeId}
            disabled={isWorking}
            onClick={() => void showRoute(session, routeId)}
          >
            {routeName}
          </button>
          <Tip name={words.closeNamed(routeName)}>
            <button
              type="button"
              aria-label={words.closeNamed(routeName)}
              disabled={isWorking}
              onClick={() => void closeRoute(session, routeId)}
            >
              <X size={14} aria-hidden="true" />
            </button>
          </Tip>
        </span>
      ))}
    </nav>
  );
}

/** That all is saved, and when the last edit was. */
export function SavedState() {
  const state = useView((view) => view.fileState);
  if (!state || state.lookOnly) return null;
  return <span className="saved">{savedWords(state.editedAtIso)}</span>;
}

/** Why nothing can be changed now: somebody else has the file, a signature froze the route, or the host is away. */
export function StandingBanner() {
  const session = useSession();
  const lookOnly = useView((state) => state.fileState?.lookOnly ?? null);
  const isAway = useView((state) => state.isHostAway);
  const open = useOpenRoute();
  const frozen = open && frozenFault(open.route)?.what;
  const isFrozen = !isAway && !lookOnly && frozen != null;
  return (
    <section
      aria-live="polite"
      aria-label={words.stateOfRoute}
      className={lookOnly || isAway || isFrozen ? "standing" : "only-heard"}
    >
      {isAway && <p>{words.away}</p>}
      {isFrozen && (
        <>
          <p>{frozen}</p>
          <button type="button" className="fix" onClick={() => session.view.setState(besideShown("signOff"))}>
            {faultWords.signOff}
          </button>
        </>
      )}
      {!isAway && lookOnly && (
        <>
          <p>
            <strong>{withLocalTimes(lookOnly.what)}</strong> {words.look}
          </p>
          <button type="button" className="fix" onClick={() => void lookAgain(session)}>
            {words.lookAgain}
          </button>
        </>
      )}
    </section>
  );
}
