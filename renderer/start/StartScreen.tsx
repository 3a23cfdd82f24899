import { useEffect, useState } from "react";
import type { Reply } from "../../core/contract/contract.ts";
import { openAndShow, openDemo } from "../app/files.ts";
import { showFault } from "../app/session.ts";
import { useOpenRoute, useSession } from "../app/useSession.ts";
import { BrowseFolders } from "./BrowseFolders.tsx";
import { NewRouteForm } from "./NewRouteForm.tsx";
import { timeWords, words } from "./words.ts";

type Start = Reply<"files.start">;

/** Where a route is opened or started; shown while none is open, and whenever it is asked for. */
export function StartScreen() {
  const session = useSession();
  const open = useOpenRoute();
  const [start, setStart] = useState<Start | null>(null);
  const [way, setWay] = useState<"browse" | "new" | null>(null);
  useEffect(() => {
    let isHere = true;
    void session.host.call("files.start", {}).then((answer) => {
      if (!answer.ok) showFault(session, answer.fault);
      else if (isHere) setStart(answer.value);
    });
    return () => {
      isHere = false;
    };
  }, [session]);
  if (!start) return null;
  const toggle = (next: "browse" | "new"): void => setWay(way === next ? null : next);
  return (
    <section className="start" aria-label={words.startTitle}>
      <header>
        <h2>{words.startTitle}</h2>
        {open && (
          <button type="button" className="fix" onClick={() => session.view.setState({ isStartOpen: false })}>
            {words.back}
          </button>
        )}
      </header>
      <div className="start-ways">
        <button type="button" className="take" title={words.demoWhy} onClick={() => void openDemo(session)}>
          {words.demo}
        </button>
        <button type="button" className="fix" aria-expanded={way === "new"} onClick={() => toggle("new")}>
          {words.newRoute}
        </button>
        <button type="button" className="fix" aria-expanded={way === "browse"} onClick={() => toggle("browse")}>
          {words.browse}
        </button>
      </div>
      {way === "new" && <NewRouteForm {...start} />}
      {way === "browse" && (
        <BrowseFolders onFile={(entryId) => void openAndShow(session, session.host.call("files.open", { entryId }))} />
      )}
      <Recent recent={start.recent} />
    </section>
  );
}

function Recent({ recent }: { readonly recent: Start["recent"] }) {
  const session = useSession();
  const openIt = ({ recentId }: Start["recent"][number]): void =>
    void openAndShow(session, session.host.call("files.openRecent", { recentId }));
  return (
    <>
      <h3>{words.recent}</h3>
      {recent.length === 0 && <p className="quiet">{words.noRecent}</p>}
      <ul className="browse-list" aria-label={words.recent}>
        {recent.map((one) => (
          <li key={one.recentId}>
            <button type="button" className={one.isMissing ? "file is-missing" : "file"} onClick={() => openIt(one)}>
              <span>
                <strong>{one.routeName}</strong>
                {one.place === "" ? "" : `, ${one.place}`}
              </span>
              <span className="quiet">{words.fileIn(one.fileName, one.folder)}</span>
              <span className="quiet">{one.isMissing ? words.missing : timeWords(one.openedAtIso)}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
