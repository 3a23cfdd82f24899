import type { Route } from "../../core/model/route.ts";
import { splitRef } from "../app/ref.ts";
import type { Session } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { CloseButton } from "../panels/CloseButton.tsx";
import { type DrawnKind, drawnKinds, isShownKind, type KindState, kindCount } from "./kinds.ts";
import { kindWords, toolWords } from "./words.ts";

/** Every kind on the diagram with its count: shown, faded or hidden, and locked. */
export function KindsPanel({ route }: { readonly route: Route }) {
  const session = useSession();
  const isOpen = useView((state) => state.isKindsOpen);
  const kinds = useView((state) => state.kinds);
  if (!isOpen) return null;
  return (
    <section className="tool-card" aria-label={toolWords.kinds}>
      <header>
        <h2>{toolWords.kinds}</h2>
        <CloseButton name={toolWords.close} onPress={() => session.view.setState({ isKindsOpen: false })} />
      </header>
      <table>
        <thead>
          <tr>
            <th scope="col">{toolWords.kind}</th>
            <th scope="col" className="figure">
              {toolWords.count}
            </th>
            <th scope="col">{toolWords.shown}</th>
            <th scope="col">{toolWords.lock}</th>
          </tr>
        </thead>
        <tbody>
          {drawnKinds.map((kind) => (
            <KindRow key={kind} kind={kind} count={kindCount(route, kind)} state={kinds[kind]} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

type RowProps = { readonly kind: DrawnKind; readonly count: number; readonly state: KindState };

function KindRow({ kind, count, state }: RowProps) {
  const session = useSession();
  const word = kindWords[kind];
  return (
    <tr>
      <th scope="row">{word}</th>
      <td className="figure">{count}</td>
      <td>
        <select
          aria-label={toolWords.showOf(word)}
          value={state.shown}
          onChange={(event) => {
            const shown = shownStates.find((one) => one === event.target.value) ?? "full";
            setKind(session, kind, { ...state, shown });
          }}
        >
          <option value="full">{toolWords.shown}</option>
          <option value="faded">{toolWords.faded}</option>
          <option value="hidden">{toolWords.hidden}</option>
        </select>
      </td>
      <td>
        <input
          type="checkbox"
          aria-label={toolWords.lockOf(word)}
          checked={state.isLocked}
          onChange={(event) => setKind(session, kind, { ...state, isLocked: event.target.checked })}
        />
      </td>
    </tr>
  );
}

const shownStates = ["full", "faded", "hidden"] as const;

/** Hidden things are not chosen: what is hidden leaves the selection. */
function setKind(session: Session, kind: DrawnKind, state: KindState): void {
  session.view.setState((before) => {
    const kinds = { ...before.kinds, [kind]: state };
    return { kinds, selection: before.selection.filter((ref) => isShownKind(kinds, splitRef(ref).table)) };
  });
}
