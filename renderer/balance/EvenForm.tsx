import type { FormEvent } from "react";
import { formatLength } from "../../core/units/formatLength.ts";
import { parseLengthM } from "../../core/units/parseLength.ts";
import { working } from "../app/actions/action.ts";
import { runCommand } from "../app/edits.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { tell, unitsOf } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import { setBalance } from "./balanceHand.ts";
import type { EvenPlan } from "./evenPlan.ts";
import { useEvenPlan } from "./useEvenPlan.ts";
import { balanceWords, evenWords as words } from "./words.ts";

/** Where nothing is typed only the reach limits how much longer drops become: more than all drops of any route are long. */
const anyLengthM = 1e7;

/** By how much drops may become longer, what evening out all terminals would come to then, and doing it. */
export function EvenForm({ open, longer }: { readonly open: OpenRoute; readonly longer: string }) {
  const session = useSession();
  const units = unitsOf(open);
  const typed = parseLengthM(longer, units);
  const refusal = refusalOf(longer, typed);
  const extraDropM = refusal !== null ? null : typed.ok ? typed.valueM : anyLengthM;
  const plan = useEvenPlan(open, extraDropM);
  const told = refusal ?? (plan === undefined ? words.working : plan ? planWords(plan, units) : words.already);
  const doIt = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    const reason = working(session);
    // what it comes to need not be known yet: who is sure need not wait
    if (reason !== null || extraDropM === null || plan === null) return tell(session, reason ?? told);
    setBalance(session, { evenBy: null, marked: [] });
    await runCommand(session, "drops.even", { extraDropM });
  };
  return (
    <form className="balance-foot" onSubmit={(event) => void doIt(event)}>
      <label title={words.longerHelp}>
        {words.longer}
        <input
          // ready to be typed into: one asked for it by the button
          ref={(field) => field?.focus()}
          size={9}
          value={longer}
          onChange={(event) => setBalance(session, { evenBy: event.target.value })}
          onKeyDown={(event) => {
            if (event.key !== "Escape") return;
            event.stopPropagation();
            setBalance(session, { evenBy: null });
          }}
        />
      </label>
      <output aria-live="polite" aria-busy={refusal === null && plan === undefined}>
        {told}
      </output>
      <button type="submit" className="fix" aria-disabled={extraDropM === null || plan === null}>
        {words.doIt}
      </button>
      <button type="button" className="fix" onClick={() => setBalance(session, { evenBy: null })}>
        {words.giveUp}
      </button>
    </form>
  );
}

/** Why what is typed is no length drops may become longer by; null where it is one, or nothing. */
function refusalOf(longer: string, typed: ReturnType<typeof parseLengthM>): string | null {
  if (longer.trim() === "") return null;
  if (!typed.ok) return `${typed.what} ${typed.mend}`;
  return typed.valueM >= 0 ? null : words.notNegative;
}

function planWords({ movedCount, terminalCount, runChangeM, before, after }: EvenPlan, units: "us" | "metric"): string {
  const length = formatLength(Math.abs(runChangeM), units, "height");
  const run = runChangeM < 0 ? balanceWords.shorter(length) : balanceWords.longer(length);
  return `${words.found(movedCount, terminalCount, run)}; ${words.range(before, after)}`;
}
