import { asBuiltRows } from "../../core/edits/asBuiltRows.ts";
import { applyChange, invert } from "../../core/edits/change.ts";
import { routeWith } from "../../core/layout/rowSet.ts";
import { closeoutTables } from "../../core/model/closeoutRows.ts";
import { fail, ok, type Result } from "../../core/model/result.ts";
import type { Route } from "../../core/model/route.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import type { Revision } from "../../core/model/tables.ts";
import type { Finding } from "../../core/rules/finding.ts";
import type { SheetKind } from "../../core/sheets/book.ts";
import type { PaperName } from "../../core/sheets/paper/paper.ts";
import type { Picture } from "../../core/sheets/paper/picture.ts";
import { editedSince, routeAtRevision } from "../../db/revisions.ts";
import { keptLogo } from "./companyLogo.ts";
import { type KeptPhotos, mostPhotoBytes, withPhotos } from "./keptPhotos.ts";
import type { Session } from "./session.ts";

/** A state of the route to be drawn: its rows and findings, and how it stands to the revisions issued. */
export type DrawnState = {
  readonly route: Route;
  /** Null where they are still to be worked out, which takes long on a long route: by whoever draws it, in a thread of its own. */
  readonly findings: readonly Finding[] | null;
  /** The issued revision it is; null where it is none, or was edited since. */
  readonly revisionId: string | null;
  /** What was edited since the revision before it; null where there is none before. */
  readonly since: { readonly letter: string; readonly rows: readonly RowChange[] } | null;
  /** The company's own picture as it was then; null for none. */
  readonly logo: Picture | null;
  /** True for the route as built: `since` is then the design. */
  readonly isAsBuilt?: boolean;
};

/** The route as it stands now, or as it was when a revision was issued. Faults: no-such-revision, damaged. */
export function drawnState(session: Session, revisionId: string | null): Result<DrawnState> {
  const state = stateOf(session, revisionId);
  return state.ok ? ok({ ...state.value, logo: keptLogo(session.file.db, state.value.route) }) : state;
}

type State = Omit<DrawnState, "logo">;

function stateOf(session: Session, revisionId: string | null): Result<State> {
  if (revisionId === null) return presentState(session);
  const revision = session.route().revision.get(revisionId);
  return revision ? frozenState(session, revision) : noSuchRevision(session, revisionId);
}

/** Which sheets are wanted, of which state of the route. */
export type Wanted = {
  /** Kinds, numbers or keys of the sheets; null takes the whole set. */
  readonly only: readonly string[] | null;
  /** What on; null takes the usual paper of the route's units. */
  readonly paper: PaperName | null;
  /** Letter of a revision, to have it as it was issued; null takes the route as it stands. */
  readonly letter: string | null;
  /** True takes the route as built; not of a revision. */
  readonly isAsBuilt?: boolean;
};

/** What is composed: a state of the route, which of its sheets, what on. */
export type SetWanted = DrawnState &
  Pick<Wanted, "only" | "paper"> & {
    /** Kinds of sheets the set has; where not given, those the company does not leave out. */
    readonly kinds?: readonly SheetKind[];
    /** Photos that may be drawn; none where not given. */
    readonly photos?: KeptPhotos;
  };

/** The state of the route that is wanted, and its sheets. Faults: no-such-revision, damaged. */
export function wantedState(session: Session, { letter, isAsBuilt = false, ...wanted }: Wanted): Result<SetWanted> {
  const taken = (state: DrawnState) => ok(withPhotos(session.file.db, { ...state, ...wanted }, mostPhotoBytes.file));
  if (isAsBuilt && letter === null) return taken(asBuiltState(session));
  const revision = letter === null ? ok(null) : revisionOfLetter(session, letter);
  if (!revision.ok) return revision;
  const state = drawnState(session, revision.value?.id ?? null);
  return state.ok ? taken(state.value) : state;
}

/** The route as built: the design with what was read in its place, and what that changed. */
export function asBuiltState(session: Session): DrawnState {
  const rows = asBuiltRows(session.route());
  const route = routeWith(session.route(), rows);
  return {
    route,
    findings: null,
    revisionId: null,
    since: { letter: "", rows },
    isAsBuilt: true,
    logo: keptLogo(session.file.db, route),
  };
}

/** The revision of a letter, in capitals or not. Faults: no-such-revision. */
export function revisionOfLetter(session: Session, letter: string): Result<Revision> {
  const found = issued(session).find((one) => one.letter.toLowerCase() === letter.trim().toLowerCase());
  return found ? ok(found) : noSuchRevision(session, letter);
}

function presentState(session: Session): Result<State> {
  const inUse = issued(session).filter((one) => one.voidedBy === "");
  const [last, former] = [inUse.at(-1), inUse.at(-2)];
  const state = { route: session.route(), findings: session.findings() };
  if (!last) return ok({ ...state, revisionId: null, since: null });
  const edited = designSince(session, last.id, null);
  if (!edited.ok) return edited;
  if (edited.value.length > 0)
    return ok({ ...state, revisionId: null, since: { letter: last.letter, rows: edited.value } });
  return withFormer(session, { ...state, revisionId: last.id }, former, last);
}

/** The route as it was, with what has become of its revisions since: approved or void. */
function frozenState(session: Session, revision: Revision): Result<State> {
  const then = routeAtRevision(session.file.db, session.route(), revision.id);
  if (!then.ok) return then;
  const known = issued(session).filter((one) => one.number <= revision.number);
  const route = { ...then.value, revision: new Map(known.map((one) => [one.id, one])) };
  const former = known.filter((one) => one.voidedBy === "" && one.number < revision.number).at(-1);
  return withFormer(session, { route, findings: null, revisionId: revision.id }, former, revision);
}

function withFormer(
  session: Session,
  state: Omit<State, "since">,
  former: Revision | undefined,
  revision: Revision,
): Result<State> {
  if (!former) return ok({ ...state, since: null });
  const edited = designSince(session, former.id, revision.id);
  return edited.ok ? ok({ ...state, since: { letter: former.letter, rows: edited.value } }) : edited;
}

/** What was edited of the design itself: issuing, approving and making void leave it as it is, and so does what was built. */
function designSince(session: Session, fromId: string, untilId: string | null): Result<RowChange[]> {
  const edited = editedSince(session.file.db, fromId, untilId);
  return edited.ok
    ? ok(edited.value.filter(({ table }) => table !== "revision" && !(table in closeoutTables)))
    : edited;
}

function issued(session: Session): Revision[] {
  return [...session.route().revision.values()].sort((a, b) => a.number - b.number);
}

function noSuchRevision(session: Session, asked: string): Result<never> {
  const letters = issued(session).map((one) => one.letter);
  const mend = letters.length === 0 ? "Issue one first." : `Choose one of ${letters.join(", ")}.`;
  return fail("no-such-revision", "No revision of that letter was issued.", asked, mend);
}

/**
 * The route before what was edited since a revision.
 *
 * @throws Error where those edits did not lead to this route
 */
export function routeBefore(route: Route, rows: readonly RowChange[]): Route {
  const before = applyChange(route, invert({ label: "", author: "", atIso: "", rows }));
  if (!before.ok) throw new Error(`the edits did not lead to this route: ${before.fault.where}`);
  return before.value;
}
