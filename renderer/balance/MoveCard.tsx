import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import type { BalanceHand } from "./balanceView.ts";
import { trialWords } from "./tell.ts";
import { balanceWords as words } from "./words.ts";

/** What is in the hand, and what letting go here would come to: cost, reach, fill and light, or why it cannot be. */
export function MoveCard({ open, hand }: { readonly open: OpenRoute; readonly hand: BalanceHand }) {
  const { target } = hand;
  const told = target ? trialWords(open.plant, target, unitsOf(open)) : [words.overNothing];
  const isRefused = target?.trial.kind === "refused";
  return (
    <div className="balance-foot" data-card="move">
      <b>{words.inHand(hand.dropIds.length)}</b>
      <ul className={isRefused ? "move-told hand-refusal" : "move-told"}>
        {told.map((one, index) => (
          <li key={one}>{isRefused && index === 0 ? `✕ ${one}` : one}</li>
        ))}
      </ul>
    </div>
  );
}
