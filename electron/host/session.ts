import { basename } from "node:path";
import { frozenFault, signatureFault } from "../../core/closeout/signatures.ts";
import type { EditReply, HistoryState } from "../../core/contract/contract.ts";
import { applyChange, type Change, invert } from "../../core/edits/change.ts";
import { findCommand } from "../../core/edits/register.ts";
import { type Fault, fail, ok, type Result, refused } from "../../core/model/result.ts";
import type { Route } from "../../core/model/route.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import { openPlant, type Plant } from "../../core/plant/plant.ts";
import { openChecker } from "../../core/rules/checker.ts";
import type { Finding } from "../../core/rules/finding.ts";
import { carryOn } from "../../db/carryOn.ts";
import { redo, redoable, undo, undoable } from "../../db/history.ts";
import { type JournalEntry, journalledChange } from "../../db/journal.ts";
import { loadRoute } from "../../db/loadRoute.ts";
import type { RouteFile } from "../../db/openRouteFile.ts";
import { writeChange } from "../../db/writeChange.ts";
import { refusedLetter } from "./spentLetters.ts";

/** Who edits and what time it is: the two things an edit needs from outside. */
export type Stamp = { readonly author: string; readonly nowIso: () => string };

/** A route file that is open for work: its rows in memory, its findings, and the file every edit is written to. */
export type Session = {
  readonly fileName: string;
  readonly path: string;
  readonly file: RouteFile;
  readonly stamp: Stamp;
  /** Why the route may be looked at only; null where it may be edited. */
  readonly lookOnly: Fault | null;
  /** Why nothing may be put into the file now: it may be looked at only, or is frozen by a signature; null where it may. */
  readonly shut: () => Fault | null;
  readonly route: () => Route;
  readonly plant: Plant;
  readonly findings: () => readonly Finding[];
  readonly history: () => HistoryState;
  /** Runs a command by name; edits of one gesture, one after the other, are one step of undo. */
  readonly run: (commandId: string, input: unknown, gestureId?: string) => Result<EditReply>;
  /** Takes rows somebody worked out, such as an import, as one edit; no rows are no edit. */
  readonly take: (label: string, rows: readonly RowChange[]) => Result<EditReply>;
  readonly undo: () => Result<EditReply>;
  readonly redo: () => Result<EditReply>;
  readonly close: () => void;
};

/**
 * Opens the rows and findings of a route file. The file stays open until `close`.
 *
 * @param lookOnly  what every edit is refused with; null where the route may be edited
 */
export function openSession(file: RouteFile, stamp: Stamp, lookOnly: Fault | null = null): Result<Session> {
  const loaded = loadRoute(file.db);
  if (!loaded.ok) return loaded;
  let route = loaded.value;
  // the gesture the newest edit belongs to; nothing else may have come between
  let gesture: string | null = null;
  const plant = openPlant(route);
  const checker = openChecker(plant);
  const signed = (): { author: string; atIso: string } => ({ author: stamp.author, atIso: stamp.nowIso() });

  const history = (): HistoryState => ({
    undo: undoable(file.db, 1)[0]?.label ?? null,
    redo: redoable(file.db, 1)[0]?.label ?? null,
  });

  /** Makes an edit that the file has taken the present state. */
  const adopt = (next: Route, change: Change): Result<EditReply> => {
    route = next;
    const { gone, found } = checker.advance(route, change.rows);
    return ok({ label: change.label, rows: change.rows, history: history(), gone, found });
  };

  const take = (label: string, rows: readonly RowChange[], gestureId?: string): Result<EditReply> => {
    const isCarriedOn = gestureId !== undefined && gestureId === gesture;
    gesture = gestureId ?? null;
    if (lookOnly) return refused(lookOnly);
    const unsignable = signatureFault(route, rows);
    if (unsignable) return refused(unsignable);
    if (rows.length === 0) return ok({ label, rows, history: history(), gone: [], found: [] });
    const spent = refusedLetter(file.db, rows);
    if (spent) return spent;
    const change = { label, rows, ...signed() };
    const next = applyChange(route, change);
    if (!next.ok) return next;
    const written = isCarriedOn ? carryOn(file.db, change) : writeChange(file.db, change, { kind: "edit" });
    return written.ok ? adopt(next.value, change) : written;
  };

  /** Why the next edit may not be taken back, or made again. */
  const held = (next: JournalEntry | undefined, isUndo: boolean): Result<never> | null => {
    if (lookOnly) return refused(lookOnly);
    const edit = next && journalledChange(file.db, next.seq);
    const rows = edit?.ok ? (isUndo ? invert(edit.value) : edit.value).rows : [];
    const unsignable = signatureFault(route, rows);
    return unsignable && refused(unsignable);
  };

  const step = (done: Result<Change>): Result<EditReply> => {
    gesture = null;
    if (!done.ok) return done;
    const next = applyChange(route, done.value);
    if (!next.ok) throw new Error(`the file and the memory disagree: ${next.fault.what}`);
    return adopt(next.value, done.value);
  };

  return ok({
    path: file.path,
    file,
    stamp,
    lookOnly,
    shut: () => lookOnly ?? frozenFault(route),
    fileName: basename(file.path),
    route: () => route,
    plant,
    findings: checker.findings,
    history,
    take: (label, rows) => take(label, rows),
    run(commandId, input, gestureId) {
      const command = findCommand(commandId);
      if (!command) return fail("unknown-command", "There is no edit of that name.", commandId, "Update the program.");
      const asked = command.ask(route, input);
      return asked.ok ? take(asked.value.label, asked.value.rows, gestureId) : asked;
    },
    undo: () => held(undoable(file.db, 1)[0], true) ?? step(undo(file.db, signed())),
    redo: () => held(redoable(file.db, 1)[0], false) ?? step(redo(file.db, signed())),
    close: file.close,
  });
}
