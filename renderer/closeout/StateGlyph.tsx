import type { StandingState } from "../../core/closeout/standing.ts";
import { stateWords } from "./words.ts";

/** The sign of a state: a box that fills as the thing comes on; designed is no box yet but a dash. */
function StateGlyph({ state }: { readonly state: StandingState }) {
  return (
    <svg className="state-glyph" viewBox="0 0 14 14" aria-hidden="true">
      {state === "designed" ? <path d="M3 7h8" /> : <rect x="2" y="2" width="10" height="10" />}
      {state === "built" && <rect x="2" y="7" width="10" height="5" className="is-filled" />}
      {(state === "tested" || state === "accepted") && (
        <rect x="2" y="2" width="10" height="10" className="is-filled" />
      )}
      {state === "accepted" && <path d="M4.2 7.2l2 2 3.6-4.4" className="is-tick" />}
    </svg>
  );
}

/** A state in words with its sign. */
export function StateChip({ state, told }: { readonly state: StandingState; readonly told?: string }) {
  return (
    <span className="state-chip">
      <StateGlyph state={state} />
      {told ?? stateWords[state]}
    </span>
  );
}
