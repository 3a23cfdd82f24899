import { useCallback, useEffect, useState } from "react";
import { isTampered } from "../../core/closeout/signatures.ts";
import type { Reply } from "../../core/contract/contract.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { showFault, tell } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { BrowseFolders } from "./BrowseFolders.tsx";
import { ExportButtons } from "./ExportButtons.tsx";
import { savedWords, sizeWords, timeWords, words } from "./words.ts";

type Backup = Reply<"files.backups">["backups"][number];

/** How the route is kept: when it was last saved, copies elsewhere, and dated backups to put back. */
export function CopiesPanel({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const { routeId, fileName } = open;
  const state = useView((view) => view.fileState);
  const [backups, setBackups] = useState<readonly Backup[]>([]);
  const list = useCallback(async (): Promise<void> => {
    const listed = await session.host.call("files.backups", { routeId });
    if (listed.ok) setBackups(listed.value.backups);
    else showFault(session, listed.fault);
  }, [session, routeId]);
  useEffect(() => {
    // oxlint-disable-next-line react/set-state-in-effect -- the state is set when the host has answered
    void list();
  }, [list]);
  const backUp = async (): Promise<void> => {
    const made = await session.host.call("files.backUp", { routeId });
    if (!made.ok) return showFault(session, made.fault);
    tell(session, words.backupMade(sizeWords(made.value.byteCount)));
    await list();
  };
  const restore = async ({ backupId, atIso }: Backup): Promise<void> => {
    const restored = await session.host.call("files.restore", { routeId, backupId });
    if (!restored.ok) return showFault(session, restored.fault);
    tell(session, words.restored(timeWords(atIso)));
    await list();
  };
  return (
    <aside className="import copies" aria-label={words.copies}>
      <header>
        <h2>{words.copies}</h2>
        <button type="button" className="fix" onClick={() => session.view.setState({ areCopiesOpen: false })}>
          {words.close}
        </button>
      </header>
      <p className="place">{savedWords(state?.editedAtIso ?? null)}</p>
      <p className="quiet">{words.fileIn(fileName, state?.folder ?? "")}</p>
      <SaveCopy open={open} />
      <ExportButtons />
      <h3>{words.backups}</h3>
      <p className="quiet">{words.backupsWhy}</p>
      <p>
        <button type="button" className="fix" onClick={() => void backUp()}>
          {words.backUp}
        </button>
      </p>
      {backups.length === 0 && <p className="quiet">{words.noBackups}</p>}
      <ul className="lines" aria-label={words.backups}>
        {backups.map((one) => (
          <li key={one.backupId}>
            <time dateTime={one.atIso}>{timeWords(one.atIso)}</time>
            <span className="figure">{sizeWords(one.byteCount)}</span>
            <button
              type="button"
              className="fix"
              title={words.restoreWhy}
              aria-label={`${words.restore} ${timeWords(one.atIso)}`}
              disabled={state?.lookOnly != null && !isTampered(state.lookOnly)}
              onClick={() => void restore(one)}
            >
              {words.restore}
            </button>
          </li>
        ))}
      </ul>
    </aside>
  );
}

function SaveCopy({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const [fileName, setFileName] = useState(open.fileName.replace(/\.strand$/, " copy.strand"));
  const [folderId, setFolderId] = useState<string | null>(null);
  const save = async (): Promise<void> => {
    if (folderId === null) return;
    const saved = await session.host.call("files.saveCopy", { routeId: open.routeId, folderId, fileName });
    if (!saved.ok) return showFault(session, saved.fault);
    tell(session, words.copySaved(saved.value.fileName, saved.value.folder));
  };
  return (
    <form
      aria-label={words.saveCopy}
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <h3>{words.saveCopy}</h3>
      <label>
        <span>{words.fileName}</span>
        <input type="text" value={fileName} onChange={(event) => setFileName(event.target.value)} />
      </label>
      <BrowseFolders onFolder={({ folder }) => setFolderId(folder.entryId)} />
      <button type="submit" className="fix">
        {words.save}
      </button>
    </form>
  );
}
