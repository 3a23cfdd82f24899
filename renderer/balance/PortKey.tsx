import type { PortState } from "../../core/plant/balance.ts";
import { balanceWords, portStateWords } from "./words.ts";

const states: readonly PortState[] = ["used", "reserved", "kept", "growth"];

/** What a cell of each kind looks like, and what it means. */
export function PortKey() {
  return (
    <ul className="balance-key" aria-label={balanceWords.key}>
      {states.map((state) => (
        <li key={state}>
          <i className={`port-cell is-${state}`} aria-hidden="true" />
          {portStateWords[state]}
        </li>
      ))}
    </ul>
  );
}
