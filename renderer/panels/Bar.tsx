import { memo } from "react";
import { topicWords } from "../app/actions/words.ts";
import { type Action, actions, perform } from "../app/actions.ts";
import { keysOf } from "../app/keyBindings.ts";
import { isMac, shownKey } from "../app/keys.ts";
import { useSession, useTold, useView } from "../app/useSession.ts";
import { SavedState } from "../start/RouteTabs.tsx";
import { FindingsCount } from "./findings/FindingsCount.tsx";
import { Tip } from "./Tip.tsx";

/** The one bar: every button, its key and its tooltip come from the command table. */
export function Bar() {
  const title = useTold(({ store }) => store.get()?.plant.settings().routeName ?? "Strandwright");
  const said = useView((state) => state.said);
  const saidCount = useView((state) => state.saidCount);
  return (
    <header className="bar">
      <h1>{title}</h1>
      <Group place="file" label={topicWords.file} />
      <Group place="history" label={topicWords.history} />
      <Group place="work" label={topicWords.work} />
      <Group place="closeout" label={topicWords.closeout} />
      <SavedState />
      {/* the key makes an equal message anew, so that it is heard again */}
      <output className="said" aria-live="polite">
        <span key={saidCount}>{said}</span>
      </output>
      <FindingsCount />
      <Group place="view" label={topicWords.view} />
      <Group place="help" label={topicWords.help} />
    </header>
  );
}

type GroupProps = { readonly place: Action["place"]; readonly label: string };

const Group = memo(function Group({ place, label }: GroupProps) {
  return (
    <fieldset className="group" aria-label={label}>
      {actions
        .filter((one) => one.place === place)
        .map((one) => (
          <ActionButton key={one.id} action={one} />
        ))}
    </fieldset>
  );
});

/** A button for an action: says its key and, where it cannot run, why not. */
export function ActionButton({ action }: { readonly action: Action }) {
  const session = useSession();
  const name = useTold(action.name);
  const reason = useTold(action.blocked);
  const [key] = keysOf(action);
  const Icon = action.icon;
  return (
    <Tip name={name} shortcut={key === undefined ? "" : shownKey(key, isMac())} reason={reason}>
      <button
        type="button"
        className={action.isWritten ? "act is-written" : "act"}
        aria-label={action.isWritten ? undefined : name}
        aria-disabled={reason !== null}
        onClick={() => void perform(session, action)}
      >
        <Icon size={16} strokeWidth={1.75} aria-hidden="true" />
        {action.isWritten && <span>{name}</span>}
      </button>
    </Tip>
  );
}
