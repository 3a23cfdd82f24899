import { X } from "lucide-react";
import { type FormEvent, type KeyboardEvent, useEffect, useRef } from "react";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { focusDiagram } from "../DiagramField.tsx";
import { ModelChoice } from "../ModelChoice.tsx";
import { closeArranging, runArrangement } from "./arrange.ts";
import type { Arrangement } from "./arrangement.ts";
import { type Arranging, waysFor } from "./arranging.ts";
import { arrangeWords } from "./words.ts";

type CardProps = { readonly open: OpenRoute; readonly asked: Arranging; readonly arrangement: Arrangement };

/** How what is chosen is to be arranged, and what comes of it; Enter carries it out, Escape gives it up. */
export function ArrangeCard({ open, asked, arrangement }: CardProps) {
  const session = useSession();
  const selection = useView((state) => state.selection);
  // ready for Enter: what is offered first is what one mostly wants
  const doIt = useRef<HTMLButtonElement>(null);
  useEffect(() => doIt.current?.focus(), []);
  const ask = (part: Partial<Arranging>): void =>
    session.view.setState(({ arranging }) => ({ arranging: arranging && { ...arranging, ...part } }));
  const submit = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    if (await runArrangement(session, asked)) focusDiagram();
  };
  const ways = waysFor(selection);
  return (
    <section className="tool-card arrange-card" aria-label={arrangeWords.arrange}>
      <header>
        <h2>{arrangeWords.arrange}</h2>
        <button
          type="button"
          className="act"
          aria-label={arrangeWords.close}
          onClick={() => {
            closeArranging(session);
            focusDiagram();
          }}
        >
          <X size={16} aria-hidden="true" />
        </button>
      </header>
      <form onSubmit={(event) => void submit(event)}>
        <label>
          {arrangeWords.way}
          <select
            value={asked.way}
            onKeyDown={submitOnEnter}
            onChange={(event) => {
              const way = ways.find((one) => one === event.target.value);
              if (way) ask({ way });
            }}
          >
            {(ways.includes(asked.way) ? ways : [asked.way, ...ways]).map((way) => (
              <option key={way} value={way}>
                {arrangeWords.ways[way]}
              </option>
            ))}
          </select>
        </label>
        {asked.way === "alignTerminals" && (
          <label>
            {arrangeWords.distance}
            <input size={9} value={asked.distance} onChange={(event) => ask({ distance: event.target.value })} />
          </label>
        )}
        {asked.way === "evenTerminals" && (
          <label title={arrangeWords.longerHelp}>
            {arrangeWords.longer}
            <input size={9} value={asked.longer} onChange={(event) => ask({ longer: event.target.value })} />
          </label>
        )}
        {asked.way === "hangAlong" && <AlongFields open={open} asked={asked} ask={ask} />}
        <output className={arrangement.isReady ? undefined : "hand-refusal"} aria-live="polite">
          {arrangement.isReady ? arrangement.words : arrangement.reason}
        </output>
        <button ref={doIt} type="submit" className="fix" aria-disabled={!arrangement.isReady}>
          {arrangeWords.doIt}
        </button>
      </form>
    </section>
  );
}

type FieldsProps = {
  readonly open: OpenRoute;
  readonly asked: Arranging;
  readonly ask: (part: Partial<Arranging>) => void;
};

function AlongFields({ open, asked, ask }: FieldsProps) {
  const whole = (text: string): number => Math.max(1, Math.floor(Number(text)) || 1);
  return (
    <>
      <label title={arrangeWords.everyHelp}>
        {arrangeWords.every}
        <input
          type="number"
          min={1}
          value={asked.everyNth}
          onChange={(event) => ask({ everyNth: whole(event.target.value) })}
        />
      </label>
      <label>
        {arrangeWords.startAt}
        <input
          type="number"
          min={1}
          value={asked.startAt}
          onChange={(event) => ask({ startAt: whole(event.target.value) })}
        />
      </label>
      <label>
        {arrangeWords.side}
        <select
          value={asked.side}
          onKeyDown={submitOnEnter}
          onChange={(event) => ask({ side: event.target.value === "before" ? "before" : "beyond" })}
        >
          <option value="beyond">{arrangeWords.sides.beyond}</option>
          <option value="before">{arrangeWords.sides.before}</option>
        </select>
      </label>
      <ModelChoice
        open={open}
        modelId={asked.modelId}
        choose={(modelId) => ask({ modelId })}
        onKeyDown={submitOnEnter}
      />
    </>
  );
}

/** A list keeps Enter for itself otherwise. */
function submitOnEnter(event: KeyboardEvent<HTMLSelectElement>): void {
  if (event.key !== "Enter") return;
  event.preventDefault();
  event.currentTarget.form?.requestSubmit();
}
