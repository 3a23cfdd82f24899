import { type FormEvent, useDeferredValue, useMemo } from "react";
import { formatLength } from "../../core/units/formatLength.ts";
import { parseLengthM } from "../../core/units/parseLength.ts";
import { working } from "../app/actions/action.ts";
import { runCommand } from "../app/edits.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { tell, unitsOf } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import { setBalance } from "./balanceHand.ts";
import { type EvenPlan, evenPlan } from "./evenPlan.ts";
import { balanceWords, evenWords as words } from "./words.ts";

/** Where nothing is typed only the reach limits how much longer drops become: more than all drops of any route are long. */
const anyLengthM = 1e7;

/** By how much drops may become longer, what evening out all terminals would come to then, and doing it. */
export function EvenForm({ open, longer }: { readonly open: OpenRoute; readonly longer: string }) {
  const session = useSession();
  const units = unitsOf(open);
  const asked = useDeferredValue(longer);
  const { route, plant } = open;
  const { extraDropM, told, isReady } = useMemo(() => {
    const typed = parseLengthM(asked, units);
    if (asked.trim() !== "" && !typed.ok) return { extraDropM: 0, told: `${typed.what} ${typed.mend}`, isReady: false };
    const limitM = typed.ok ? typed.valueM : anyLengthM;
    if (!(limitM >= 0)) return { extraDropM: 0, told: words.notNegative, isReady: false };
    const plan = evenPlan(plant, [...route.terminal.keys()], limitM);
    return { extraDropM: limitM, told: plan ? planWords(plan, units) : words.already, isReady: plan !== null };
  }, [asked, units, plant, route]);
  const doIt = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    const reason = working(session);
    if (reason !== null || !isReady) return tell(session, reason ?? told);
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
      <output aria-live="polite">{told}</output>
      <button type="submit" className="fix" aria-disabled={!isReady}>
        {words.doIt}
      </button>
      <button type="button" className="fix" onClick={() => setBalance(session, { evenBy: null })}>
        {words.giveUp}
      </button>
    </form>
  );
}

function planWords({ movedCount, terminalCount, runChangeM, before, after }: EvenPlan, units: "us" | "metric"): string {
  const length = formatLength(Math.abs(runChangeM), units, "height");
  const run = runChangeM < 0 ? balanceWords.shorter(length) : balanceWords.longer(length);
  return `${words.found(movedCount, terminalCount, run)}; ${words.range(before, after)}`;
}
