import { actionOf } from "../app/actions.ts";
import { keysOf } from "../app/keyBindings.ts";
import { isMac, shownKey } from "../app/keys.ts";
import { chooseAndShow } from "../app/look.ts";
import { type RefKey, refKey } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession } from "../app/useSession.ts";
import { pinMarks } from "../canvas/pinMarks.ts";
import { layoutWords as words } from "./words.ts";

/** The signs of what people decided, how much of it there is, and a way to choose it all. */
export function DecidedLegend({ open: { route } }: { readonly open: OpenRoute }) {
  const session = useSession();
  const { terminals, units, poles } = pinMarks(route);
  const lines = [
    { name: words.pinnedTerminals, glyph: <TerminalGlyph />, refs: refsAmong("terminal", terminals) },
    { name: words.pinnedUnits, glyph: <HouseGlyph />, refs: refsAmong("livingUnit", units) },
    { name: words.barredPoles, glyph: <PoleGlyph />, refs: refsAmong("pole", poles) },
  ];
  return (
    <>
      <h3>{words.decided}</h3>
      <ul className="lines decided">
        {lines.map(({ name, glyph, refs }) => (
          <li key={name}>
            {glyph}
            <span>{name}</span>
            <button
              type="button"
              className="fix"
              disabled={refs.length === 0}
              aria-label={words.choose(name, refs.length)}
              onClick={() => chooseAndShow(session, refs)}
            >
              {refs.length}
            </button>
          </li>
        ))}
      </ul>
      <p className="quiet">{words.decidedHow(keyOf("pin"), keyOf("bar"))}</p>
    </>
  );
}

function keyOf(actionId: string): string {
  const [key] = keysOf(actionOf(actionId));
  return key === undefined ? actionOf(actionId).topic : shownKey(key, isMac());
}

function refsAmong(table: "terminal" | "livingUnit" | "pole", ids: ReadonlySet<string>): readonly RefKey[] {
  return [...ids].map((id) => refKey(table, id));
}

const nail = (x: number, y: number) => (
  <>
    <path d={`M${x} ${y}v-8`} />
    <circle cx={x} cy={y - 8} r="2.4" className="is-filled" />
  </>
);

function TerminalGlyph() {
  return (
    <svg className="decided-glyph" viewBox="0 0 32 22" aria-hidden="true">
      <rect x="3" y="9" width="21" height="9" rx="3" />
      {nail(28, 17)}
    </svg>
  );
}

function HouseGlyph() {
  return (
    <svg className="decided-glyph" viewBox="0 0 32 22" aria-hidden="true">
      <path d="M9 12l7-6 7 6v7h-14z" />
      {nail(21, 11)}
    </svg>
  );
}

function PoleGlyph() {
  return (
    <svg className="decided-glyph" viewBox="0 0 32 22" aria-hidden="true">
      <circle cx="16" cy="11" r="5" />
      <path d="M7 18l18-14" />
    </svg>
  );
}
