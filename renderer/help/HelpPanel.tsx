import { useEffect, useRef } from "react";
import { crewCautions, sheetCaution, terminalCautions } from "../../core/sheets/cautions.ts";
import { useSession, useView } from "../app/useSession.ts";
import { KeyTables } from "../keys/KeySheet.tsx";
import { glossary } from "./glossary.ts";
import { type HelpPage, helpPages } from "./pages.ts";
import { ruleBook } from "./ruleBook.ts";
import { holds, searchHelp } from "./searchHelp.ts";
import { words } from "./words.ts";

/** The help beside the work: a page, the contents, and a search over both. */
export function HelpPanel() {
  const { view } = useSession();
  const pageId = useView((state) => state.helpPage);
  const sought = useView((state) => state.helpSought);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (pageId !== null) heading.current?.focus();
  }, [pageId]);
  const page = helpPages.find((one) => one.id === pageId);
  if (!page) return null;
  const found = sought === "" ? helpPages : searchHelp(sought);
  return (
    <aside className="help" aria-label={words.title} data-help="finder">
      <header>
        <input
          type="search"
          aria-label={words.search}
          placeholder={words.search}
          value={sought}
          onChange={(event) => view.setState({ helpSought: event.target.value })}
        />
        <button type="button" className="fix" onClick={() => view.setState({ helpPage: null })}>
          {words.close}
        </button>
      </header>
      <nav aria-label={sought === "" ? words.contents : words.found}>
        <ul>
          {found.map((one) => (
            <li key={one.id}>
              <button
                type="button"
                aria-current={one.id === page.id ? "page" : undefined}
                title={one.about}
                onClick={() => view.setState({ helpPage: one.id })}
              >
                {one.title}
              </button>
            </li>
          ))}
        </ul>
        {found.length === 0 && <p className="quiet">{words.none(sought)}</p>}
      </nav>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a text that scrolls is reached by keyboard */}
      <article tabIndex={0} aria-labelledby="help-heading">
        <h2 id="help-heading" ref={heading} tabIndex={-1}>
          {page.title}
        </h2>
        {page.says.map((one) => (
          <p key={one}>{one}</p>
        ))}
        <Shown shows={page.shows} sought={found.includes(page) ? sought : ""} />
      </article>
    </aside>
  );
}

function Shown({ shows, sought }: { readonly shows: HelpPage["shows"]; readonly sought: string }) {
  switch (shows) {
    case "rules":
      return <Rules sought={sought} />;
    case "glossary":
      return <Glossary sought={sought} />;
    case "keys":
      return <KeyTables />;
    case "cautions":
      return <Cautions />;
    default:
      return null;
  }
}

function Rules({ sought }: { readonly sought: string }) {
  const all = ruleBook();
  const some = all.filter((one) => holds(`${one.title} ${one.compares} ${one.limitFrom}`, sought));
  return (some.length > 0 ? some : all).map((one) => (
    <section key={one.id} className="book-rule">
      <h3>{one.title}</h3>
      <p>{one.compares}</p>
      <p>{one.means}</p>
      <p>{one.looksAt}</p>
      <p>
        {words.limit}: {one.limitFrom}
      </p>
      <p className="quiet">
        {words.mark}: {one.mark}
      </p>
    </section>
  ));
}

function Glossary({ sought }: { readonly sought: string }) {
  const some = glossary.filter(({ term, meaning }) => holds(`${term} ${meaning}`, sought));
  return (
    <dl className="glossary">
      {(some.length > 0 ? some : glossary).map(({ term, meaning }) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{meaning}</dd>
        </div>
      ))}
    </dl>
  );
}

function Cautions() {
  return (
    <>
      <h3>{words.everySheet}</h3>
      <p>{sheetCaution}</p>
      <h3>{words.crew}</h3>
      {crewCautions.map(({ text, source }) => (
        <p key={text}>
          {text} <span className="quiet">{source}</span>
        </p>
      ))}
      <h3>{words.terminal}</h3>
      {terminalCautions.map((text) => (
        <p key={text}>{text}</p>
      ))}
    </>
  );
}
