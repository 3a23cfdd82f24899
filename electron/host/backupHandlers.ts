import { isTampered } from "../../core/closeout/signatures.ts";
import { fail, ok, type Result, refused } from "../../core/model/result.ts";
import { type Backup, backUp, listBackups } from "../../db/backup.ts";
import { history } from "../../db/history.ts";
import { restoreBackup } from "../../db/restoreBackup.ts";
import { onDisk } from "../../db/sqliteFault.ts";
import type { FileHandlers, FilePlaces, OpenRoutes } from "./fileHandlers.ts";
import { openOrLook } from "./openRoute.ts";
import type { Session } from "./session.ts";

type BackupMethod = "files.backups" | "files.backUp" | "files.restore" | "files.lookAgain";

type BackupService = {
  readonly handlers: Pick<FileHandlers, BackupMethod>;
  readonly opened: (routeId: string, session: Session) => void;
  readonly edited: (routeId: string) => void;
};

/** Time of editing after which a dated copy is made on its own, ms. */
const betweenBackupsMs = 20 * 60_000;

/** Dated copies: on opening, while editing, by hand, and putting one back. */
export function backupHandlers(routes: OpenRoutes, places: FilePlaces | null): BackupService {
  const backedUpAtMs = new Map<string, number>();
  const nativeFolder = places?.nativeFolder;

  const copyNow = (routeId: string, { file, path, stamp }: Session): Result<Backup> => {
    const atIso = stamp.nowIso();
    backedUpAtMs.set(routeId, Date.parse(atIso));
    return backUp(file.db, path, atIso);
  };
  /** A copy nobody asked for: where it fails, that is told and the work goes on. */
  const copyUnasked = (routeId: string, session: Session): void => {
    const copied = copyNow(routeId, session);
    if (!copied.ok)
      routes.say({ kind: "trouble", fault: { ...copied.fault, what: `No backup was made. ${copied.fault.what}` } });
  };
  const withRoute = <T>(routeId: string, work: (session: Session) => Result<T>): Result<T> => {
    const session = routes.sessions.get(routeId);
    return session ? work(session) : fail("no-such-route", "That route is not open.", routeId, "Open the file again.");
  };
  /** Closes a route, does what needs it closed, and opens it again under its id. */
  const reopen = (routeId: string, session: Session, whileClosed: () => Result<unknown>): Result<Session> => {
    session.close();
    const done = whileClosed();
    const again = openOrLook(session.path, session.stamp, nativeFolder);
    if (again.ok) routes.sessions.set(routeId, again.value);
    else routes.sessions.delete(routeId);
    routes.say(again.ok ? { kind: "replaced", routeId } : { kind: "routes" });
    return done.ok ? again : done;
  };

  return {
    handlers: {
      "files.backups": ({ routeId }) =>
        withRoute(routeId, ({ path }) => onDisk(path, () => ok({ backups: listBackups(path).map(shown) }))),
      "files.backUp": ({ routeId }) =>
        withRoute(routeId, (session) => {
          const copied = copyNow(routeId, session);
          return copied.ok ? ok(shown(copied.value)) : copied;
        }),
      "files.restore": ({ routeId, backupId }) =>
        withRoute(routeId, (session) => {
          if (session.lookOnly && !isTampered(session.lookOnly)) return refused(session.lookOnly);
          const copy = listBackups(session.path).find((one) => one.atIso === backupId);
          if (!copy) return fail("no-backup", "That copy is gone.", backupId, "Choose another one from the list.");
          const opening = { author: session.stamp.author, atIso: session.stamp.nowIso() };
          const restored = reopen(routeId, session, () =>
            restoreBackup(session.path, copy.path, nativeFolder === undefined ? opening : { ...opening, nativeFolder }),
          );
          return restored.ok ? ok({}) : restored;
        }),
      "files.lookAgain": ({ routeId }) =>
        withRoute(routeId, (session) => {
          if (!session.lookOnly) return ok({ isEditable: true });
          const again = reopen(routeId, session, () => ok(null));
          return again.ok ? ok({ isEditable: again.value.lookOnly === null }) : again;
        }),
    },
    opened(routeId, session) {
      if (session.lookOnly) return;
      backedUpAtMs.set(routeId, Date.parse(session.stamp.nowIso()));
      const [edit] = history(session.file.db, 1);
      const [copy] = listBackups(session.path);
      const isCopied = copy !== undefined && (edit === undefined || Date.parse(edit.atIso) <= Date.parse(copy.atIso));
      if (!isCopied) copyUnasked(routeId, session);
    },
    edited(routeId) {
      const session = routes.sessions.get(routeId);
      const sinceMs = backedUpAtMs.get(routeId);
      if (!session || sinceMs === undefined) return;
      if (Date.parse(session.stamp.nowIso()) - sinceMs >= betweenBackupsMs) copyUnasked(routeId, session);
    },
  };
}

function shown({ atIso, byteCount }: Backup) {
  return { backupId: atIso, atIso, byteCount };
}
