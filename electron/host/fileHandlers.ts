import { existsSync, mkdirSync, realpathSync, rmSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import type { HostEvent } from "../../core/contract/contract.ts";
import type { fileMethods } from "../../core/contract/fileMethods.ts";
import { fail, ok, type Result } from "../../core/model/result.ts";
import { saveCopyAs } from "../../db/backup.ts";
import { history } from "../../db/history.ts";
import { saveCopyLookedInto } from "../../db/lookInto.ts";
import { onDisk } from "../../db/sqliteFault.ts";
import { backupHandlers } from "./backupHandlers.ts";
import { placeDropped } from "./droppedFile.ts";
import { openFolders } from "./folders.ts";
import type { RunJob } from "./jobs.ts";
import { openKept } from "./keptHere.ts";
import { makeDemoRoute } from "./makeDemoRoute.ts";
import { newRoute } from "./newRoute.ts";
import { createFromTemplate, createRoute, openOrLook } from "./openRoute.ts";
import type { Handlers } from "./serve.ts";
import type { Session, Stamp } from "./session.ts";

/** Where the door lets the host find and keep files; none of it comes from the page. */
export type FilePlaces = {
  /** The person's own folder for what the program remembers. */
  readonly configFolder: string;
  /** Folders the page may list and choose below: home first, then the drives. */
  readonly roots: readonly string[];
  readonly assetsFolder: string;
  readonly demoPath: string;
  readonly stamp: Stamp;
  readonly nativeFolder?: string;
};

/** The routes a host has open. */
export type OpenRoutes = {
  readonly sessions: Map<string, Session>;
  readonly add: (session: Session) => string;
  readonly say: (event: HostEvent) => void;
};

export type FileHandlers = Pick<Handlers, keyof typeof fileMethods>;

type FileService = {
  readonly handlers: FileHandlers;
  /** To be told of every route that was opened. */
  readonly opened: (routeId: string, session: Session) => void;
  /** To be told of every edit that was written. */
  readonly edited: (routeId: string) => void;
};

/** Opening, making and closing route files. Without places only what is open already can be asked about. */
export function openFileService(routes: OpenRoutes, places: FilePlaces | null, runJob: RunJob): FileService {
  const folders = openFolders(places?.roots ?? []);
  const kept = openKept(places?.configFolder ?? null);
  const backups = backupHandlers(routes, places);

  const withPlaces = async <T>(
    work: (places: FilePlaces) => Result<T> | Promise<Result<T>>,
    asked = "Files",
  ): Promise<Result<T>> =>
    places === null
      ? fail(
          "no-files",
          `${asked} cannot be opened from this window.`,
          "files",
          "Start the program with the file's name.",
        )
      : work(places);
  const shown = (opened: Result<Session>): Result<{ routeId: string }> =>
    opened.ok ? ok({ routeId: routes.add(opened.value) }) : opened;
  const open = (path: string, { stamp, nativeFolder }: FilePlaces): Result<{ routeId: string }> => {
    const present = [...routes.sessions].find(([, session]) => isSameFile(session.path, path));
    if (!present) return shown(openOrLook(path, stamp, nativeFolder));
    kept.note(present[1]);
    return ok({ routeId: present[0] });
  };
  const withRoute = <T>(routeId: string, work: (session: Session) => Result<T>): Result<T> => {
    const session = routes.sessions.get(routeId);
    return session ? work(session) : fail("no-such-route", "That route is not open.", routeId, "Open the file again.");
  };
  /** Path of a route file that does not have to be there yet, in a folder that was listed. */
  const pathIn = (folderId: string, fileName: string): Result<string> => {
    const folder = folders.pathOf(folderId);
    if (!folder.ok) return folder;
    const name = routeFileName(fileName);
    return name.ok ? ok(join(folder.value, name.value)) : name;
  };

  const handlers: FileHandlers = {
    ...backups.handlers,
    "files.start": () => ok({ recent: kept.recent(), isGuideDue: kept.isGuideDue(), ...choices(places) }),
    "files.browse": ({ folderId }) => withPlaces(() => folders.browse(folderId)),
    "files.open": ({ entryId }) =>
      withPlaces((given) => {
        const path = folders.pathOf(entryId);
        return path.ok ? open(path.value, given) : path;
      }),
    "files.openRecent": ({ recentId }) =>
      withPlaces((given) => {
        const path = kept.pathOf(recentId);
        if (path === null)
          return fail("not-listed", "That file is not in the list.", recentId, "Look for it on the disk.");
        return open(path, given);
      }),
    "files.openDemo": () =>
      withPlaces(async (given) => {
        const { demoPath, assetsFolder, stamp, nativeFolder } = given;
        if (existsSync(demoPath)) return open(demoPath, given);
        const folder = onDisk(demoPath, () => ok(mkdirSync(dirname(demoPath), { recursive: true })));
        return folder.ok ? shown(await makeDemoRoute(demoPath, assetsFolder, stamp, runJob, nativeFolder)) : folder;
      }),
    "files.openDropped": ({ fileName, contentBase64 }) =>
      withPlaces((given) => {
        const name = routeFileName(fileName);
        if (!name.ok) return name;
        const bytes = Buffer.from(contentBase64, "base64");
        const placed = placeDropped(name.value, bytes, kept.recentPaths(), given.roots[0] ?? given.configFolder);
        if (!placed.ok) return placed;
        const { path, isCopy } = placed.value;
        const opened = open(path, given);
        // bytes that are no route are not kept
        if (!opened.ok && isCopy) rmSync(path, { force: true });
        return opened.ok ? ok({ ...opened.value, copyFolder: isCopy ? dirname(path) : null }) : opened;
      }, fileName),
    "files.create": ({ folderId, fileName, template, ...values }) =>
      withPlaces(async ({ assetsFolder, stamp, nativeFolder }) => {
        const path = pathIn(folderId, fileName);
        if (!path.ok) return path;
        const made = template
          ? await createFromTemplate(path.value, assetsFolder, values, template, stamp, nativeFolder)
          : createRoute(path.value, assetsFolder, values, stamp, { nativeFolder });
        return shown(made);
      }),
    "files.close": ({ routeId }) =>
      withRoute(routeId, (session) => {
        session.close();
        routes.sessions.delete(routeId);
        routes.say({ kind: "routes" });
        return ok({});
      }),
    "files.state": ({ routeId }) =>
      withRoute(routeId, ({ path, file, lookOnly }) =>
        onDisk(path, () => ok({ folder: dirname(path), editedAtIso: history(file.db, 1)[0]?.atIso ?? null, lookOnly })),
      ),
    "files.saveCopy": ({ routeId, folderId, fileName }) =>
      withRoute(routeId, (session) => {
        const path = pathIn(folderId, fileName);
        if (!path.ok) return path;
        const save = session.lookOnly ? saveCopyLookedInto : saveCopyAs;
        const saved = save(session.file.db, path.value);
        return saved.ok ? ok({ folder: dirname(saved.value), fileName: basename(saved.value) }) : saved;
      }),
    "files.columns": (list) => ok({ columns: kept.columns(list) }),
    "files.keepColumns": ({ columns, ...list }) => {
      kept.keepColumns(list, columns);
      return ok({});
    },
    "files.guideSeen": () => {
      kept.guideSeen();
      return ok({});
    },
  };
  return {
    handlers,
    opened(routeId, session) {
      if (places === null) return;
      kept.note(session);
      backups.opened(routeId, session);
    },
    edited: backups.edited,
  };
}

function choices(places: FilePlaces | null) {
  if (places === null) return { clearanceSets: [], loadingDistricts: [] };
  const { clearanceSet, loadingDistrict } = newRoute(places.assetsFolder, { routeName: "" });
  const named = (rows: Iterable<{ readonly id: string; readonly name: string }>) =>
    [...rows].map(({ id, name }) => ({ id, name }));
  return { clearanceSets: named(clearanceSet.values()), loadingDistricts: named(loadingDistrict.values()) };
}

/** A name every system takes, with the ending of a route file. */
function routeFileName(name: string): Result<string> {
  const bare = name.trim().replace(/\.strand$/i, "");
  const hasControl = [...bare].some((character) => character < " ");
  if (bare === "" || bare.length > 120 || hasControl || /[\\/:*?"<>|]|^\.|[. ]$/.test(bare)) {
    return fail(
      "bad-name",
      "A file cannot have this name.",
      name,
      'Leave out \\ / : * ? " < > | and a dot at either end.',
    );
  }
  return ok(`${bare}.strand`);
}

function isSameFile(a: string, b: string): boolean {
  try {
    return realpathSync(a) === realpathSync(b);
  } catch {
    return false;
  }
}
