import { catalogueNames } from "../../../core/model/catalogueNames.ts";
import type { Fault } from "../../../core/model/result.ts";
import { lookAgain, showRoute } from "../../app/files.ts";
import { chooseAndShow, drawnRef } from "../../app/look.ts";
import { splitRef } from "../../app/ref.ts";
import { openRouteOf, type Session, tell } from "../../app/session.ts";
import { besideShown } from "../../app/sideRoom.ts";
import { fullScalePxPerM } from "../../canvas/viewport.ts";
import { titleOf } from "../words.ts";
import { rowsNamed } from "./rowsNamed.ts";
import { words } from "./words.ts";

/** What one press can do about a fault. */
export type Mend = { readonly name: string; readonly run: () => unknown };

/** The mend of a fault as the window stands; null where only the person knows what to do. */
export function mendOf(session: Session, fault: Fault): Mend | null {
  return byCode[fault.code]?.(session) ?? bySubject(session, fault);
}

type MendHere = (session: Session) => Mend | null;

const reload: MendHere = () => ({ name: words.reload, run: () => location.reload() });

const askAgain: MendHere = ({ host, view }) => ({
  name: words.tryAgain,
  run: async () => {
    const answer = await host.call("route.list", {});
    if (answer.ok) view.setState({ fault: null });
    else view.setState({ fault: answer.fault });
  },
});

const readAgain: MendHere = (session) => {
  if (!session.store.get()) return null;
  const run = async (): Promise<void> => {
    await showRoute(session, openRouteOf(session).routeId);
    tell(session, words.readDone);
  };
  return { name: words.readAgain, run };
};

const openAnother: MendHere = ({ view }) =>
  view.getState().isStartOpen ? null : { name: words.openAnother, run: () => view.setState({ isStartOpen: true }) };

const whoHasIt: MendHere = (session) =>
  session.view.getState().fileState?.lookOnly
    ? { name: words.lookAgain, run: () => lookAgain(session) }
    : openAnother(session);

const copiesNamed =
  (name: string): MendHere =>
  ({ store, view }) =>
    store.get() && !view.getState().areCopiesOpen
      ? { name, run: () => view.setState({ areCopiesOpen: true, isImportOpen: false, isStartOpen: false }) }
      : null;
const copies = copiesNamed(words.copies);
const saveElsewhere = copiesNamed(words.saveElsewhere);

const bringIn: MendHere = ({ store, view }) =>
  store.get() && !view.getState().isImportOpen
    ? { name: words.bringIn, run: () => view.setState({ isImportOpen: true, sheets: null, isSettingsOpen: false }) }
    : null;

const standards: MendHere = ({ store, view }) =>
  store.get() && !view.getState().isSettingsOpen
    ? { name: words.standards, run: () => view.setState({ isSettingsOpen: true, sheets: null, isStartOpen: false }) }
    : null;

const signOff: MendHere = ({ store, view }) =>
  store.get() && view.getState().sideRoom !== "signOff"
    ? { name: words.signOff, run: () => view.setState(besideShown("signOff")) }
    : null;

const byCode: Readonly<Record<string, MendHere>> = {
  "host-away": askAgain,
  "strange-answer": reload,
  "bad-request": reload,
  "bad-input": readAgain,
  "unknown-method": reload,
  "unknown-command": reload,
  "program-error": readAgain,
  conflict: readAgain,
  "missing-row": readAgain,
  "taken-id": readAgain,
  "named-twice": readAgain,
  "broken-reference": readAgain,
  "no-such-route": openAnother,
  "no-file": openAnother,
  "no-files": openAnother,
  "no-folder": openAnother,
  "no-route": openAnother,
  "not-a-route": openAnother,
  "not-listed": openAnother,
  "newer-file": openAnother,
  "is-a-folder": openAnother,
  locked: whoHasIt,
  "older-file": whoHasIt,
  damaged: copies,
  "no-backup": copies,
  "disk-full": saveElsewhere,
  "disk-error": saveElsewhere,
  "read-only": saveElsewhere,
  frozen: signOff,
  signed: signOff,
  "gates-shut": signOff,
  "signed-already": signOff,
  "not-signed": signOff,
  "no-units": bringIn,
  "no-model": standards,
  "no-cable-fits": standards,
};

/** Leads to the row a fault is about: on the diagram, or in the standards. */
function bySubject(session: Session, { where }: Fault): Mend | null {
  const open = session.store.get();
  const [named] = open ? rowsNamed(open.plant, where) : [];
  if (!open || !named) return null;
  const isCatalogue = catalogueNames.some((one) => one === splitRef(named.ref).table);
  if (isCatalogue) return standards(session);
  const drawn = drawnRef(open.plant, named.ref) ?? named.ref;
  const run = (): void => {
    session.view.setState({ sheets: null, isSettingsOpen: false, isSideOpen: true });
    chooseAndShow(session, [drawn], fullScalePxPerM);
  };
  return { name: words.showRow(titleOf(open.plant, drawn)), run };
}
