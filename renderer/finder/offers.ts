import { actions, perform } from "../app/actions.ts";
import { keysOf, tableKeyOf } from "../app/keyBindings.ts";
import { isMac, shownKey } from "../app/keys.ts";
import type { Session } from "../app/session.ts";
import { openRouteOf, unitsOf } from "../app/session.ts";
import { glossary } from "../help/glossary.ts";
import { helpPages } from "../help/pages.ts";
import { hintOf } from "../panels/words.ts";
import { standardWords } from "../settings/words.ts";
import { goToRow, goToSetting, goToSheet } from "./goTo.ts";
import type { RowPlace } from "./routeIndex.ts";
import { words } from "./words.ts";

/** One line of the finder: what it is, and what Enter does. */
export type Offer = {
  readonly key: string;
  readonly kind: string;
  readonly name: string;
  readonly hint: string;
  /** Key that does the same; empty for none. */
  readonly shortcut: string;
  /** Why it cannot be had now, or null. */
  readonly blocked: string | null;
  readonly go: (session: Session) => void;
};

export type SheetTitle = { readonly number: string; readonly title: string };

/** Actions, settings, sheets and help as lines. */
export function fixedOffers(session: Session, sheets: readonly SheetTitle[]): readonly Offer[] {
  const line = (key: string, kind: string, name: string, go: Offer["go"], rest: Partial<Offer> = {}): Offer => ({
    key,
    kind,
    name,
    hint: "",
    shortcut: "",
    blocked: null,
    go,
    ...rest,
  });
  const acts = actions.map((one) => {
    const key = keysOf(one)[0] ?? tableKeyOf(one) ?? undefined;
    return line(`action/${one.id}`, words.action, one.name(session), (s) => void perform(s, one), {
      shortcut: key === undefined ? "" : shownKey(key, isMac()),
      blocked: one.blocked(session),
      hint: one.topic,
    });
  });
  const standards = session.store.get()
    ? Object.entries(standardWords).map(([column, [name, meaning]]) =>
        line(`setting/${column}`, words.setting, name, (s) => goToSetting(s, name), { hint: meaning }),
      )
    : [];
  const drawn = sheets.map(({ number, title }) =>
    line(`sheet/${number}`, words.sheet, `${words.sheet} ${number} ${title}`, (s) => void goToSheet(s, number)),
  );
  const pages = helpPages.map(({ id, title, about }) =>
    line(`help/${id}`, words.help, title, (s) => s.view.setState({ helpPage: id, helpSought: "" }), { hint: about }),
  );
  const terms = glossary.map(({ term, meaning }) =>
    line(`term/${term}`, words.help, term, (s) => s.view.setState({ helpPage: "glossary", helpSought: term }), {
      hint: meaning,
    }),
  );
  return [...acts, ...standards, ...drawn, ...pages, ...terms];
}

/** A row of the route as a line. */
export function rowOffer(session: Session, { key, ref, port, text }: RowPlace): Offer {
  const open = openRouteOf(session);
  const kind = ref.startsWith("livingUnit/") ? words.unit : (text.split(" ")[0] ?? "");
  return {
    key,
    kind: port === null ? kind : words.terminal,
    name: text,
    hint: port === null ? hintOf(open.plant, ref, unitsOf(open)) : "",
    shortcut: "",
    blocked: null,
    go: (s) => goToRow(s, ref),
  };
}
