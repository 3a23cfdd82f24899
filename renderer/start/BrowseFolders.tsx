import { useEffect, useState } from "react";
import type { Reply } from "../../core/contract/contract.ts";
import { showFault } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import { sizeWords, timeWords, words } from "./words.ts";

export type Listing = Reply<"files.browse">;

type Props = {
  /** Told of the folder shown, to put a file into it. */
  readonly onFolder?: (listing: Listing) => void;
  /** Where given, route files are listed to choose from. */
  readonly onFile?: (entryId: string) => void;
};

/** Folders below the home folder and on the drives, as the host lists them. */
export function BrowseFolders({ onFolder, onFile }: Props) {
  const session = useSession();
  const [listing, setListing] = useState<Listing | null>(null);
  const go = async (folderId: string | null): Promise<void> => {
    const listed = await session.host.call("files.browse", { folderId });
    if (!listed.ok) return showFault(session, listed.fault);
    setListing(listed.value);
    onFolder?.(listed.value);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: the home folder is listed once, when it comes into view
  useEffect(() => {
    // oxlint-disable-next-line react/set-state-in-effect -- the state is set when the host has answered
    void go(null);
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- the home folder is listed once
  }, []);
  if (!listing) return null;
  const { folder, parentId, roots, folders, routeFiles } = listing;
  return (
    <div className="browse">
      <nav aria-label={words.roots}>
        {roots.map((root) => (
          <button key={root.entryId} type="button" className="fix" onClick={() => void go(root.entryId)}>
            {root.name}
          </button>
        ))}
        <button
          type="button"
          className="fix"
          disabled={parentId === null}
          onClick={() => void (parentId !== null && go(parentId))}
        >
          {words.up}
        </button>
      </nav>
      <p className="browse-where">{folder.name}</p>
      <ul className="browse-list" aria-label={folder.name}>
        {folders.map((one) => (
          <li key={one.entryId}>
            <button type="button" className="file" onClick={() => void go(one.entryId)}>
              <span>{one.name}/</span>
            </button>
          </li>
        ))}
        {onFile &&
          routeFiles.map((one) => (
            <li key={one.entryId}>
              <button type="button" className="file is-route" onClick={() => onFile(one.entryId)}>
                <span>{one.name}</span>
                <span className="quiet">
                  {sizeWords(one.byteCount)}, {timeWords(one.modifiedAtIso)}
                </span>
              </button>
            </li>
          ))}
      </ul>
      {onFile && routeFiles.length === 0 && <p className="quiet">{words.noFiles}</p>}
    </div>
  );
}
