import { Check, X } from "lucide-react";
import { useState } from "react";
import type { Gate } from "../../../core/closeout/gates.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useSession } from "../../app/useSession.ts";
import { goToRow } from "../../finder/goTo.ts";
import { type MissingThing, missingThings } from "./missingThings.ts";
import { signOffWords } from "./words.ts";

const firstShown = 4;
/** More than this nobody reads in a list; the count is told. */
const mostShown = 200;

/** The gates of one stage, each with what it is missing; a press on one goes there. */
export function GateList({ open, gates }: { readonly open: OpenRoute; readonly gates: readonly Gate[] }) {
  return (
    <ul className="gates">
      {gates.map((one) => (
        <GateLine key={one.id} open={open} gate={one} />
      ))}
    </ul>
  );
}

function GateLine({ open, gate }: { readonly open: OpenRoute; readonly gate: Gate }) {
  const [isAll, setIsAll] = useState(false);
  const isOpen = gate.missing.length === 0;
  const shown = missingThings(open.route, gate, isAll ? mostShown : firstShown);
  const restCount = gate.missing.length - shown.length;
  const Glyph = isOpen ? Check : X;
  return (
    <li className={isOpen ? "gate" : "gate is-shut"}>
      <Glyph size={15} aria-hidden />
      <span>{gate.title}</span>
      <span className={isOpen ? "only-heard" : "quiet"}>{isOpen ? signOffWords.open : signOffWords.missing(gate)}</span>
      {!isOpen && (
        <ul className="gate-missing">
          {shown.map((one) => (
            <li key={one.key}>
              <Place thing={one} />
            </li>
          ))}
          {restCount > 0 && (
            <li>
              {isAll ? (
                <span className="quiet">{signOffWords.more(restCount)}</span>
              ) : (
                <button type="button" className="fix" onClick={() => setIsAll(true)}>
                  {signOffWords.more(restCount)}
                </button>
              )}
            </li>
          )}
        </ul>
      )}
    </li>
  );
}

function Place({ thing: { says, to } }: { readonly thing: MissingThing }) {
  const session = useSession();
  if (to === null) return <span>{says}</span>;
  return (
    <button type="button" className="ref" onClick={() => goToRow(session, to)}>
      {says}
    </button>
  );
}
