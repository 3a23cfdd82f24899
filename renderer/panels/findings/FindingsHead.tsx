import { ChevronDown, ChevronUp } from "lucide-react";
import type { ReactNode } from "react";
import type { Severity } from "../../../core/rules/rule.ts";
import type { WindowFinding } from "../../app/routeStore.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { FindingGlyph } from "../FindingGlyph.tsx";
import { findingsWords } from "./words.ts";

const severities: readonly Severity[] = ["error", "warning", "note"];

/** Whether the rows are folded away, and the way to change it. */
export type Fold = { readonly isFolded: boolean; readonly toggle: () => void };

type Props = {
  readonly all: readonly WindowFinding[];
  /** Null where the rows are never folded away. */
  readonly fold: Fold | null;
  readonly children?: ReactNode;
};

/** The counts, which show and hide by severity, and beside them what chooses and orders the rows; folded, they are only told. */
export function FindingsHead({ all, fold, children }: Props) {
  const { view } = useSession();
  const shown = useView((state) => state.severitiesShown);
  const areWaivedShown = useView((state) => state.areWaivedShown);
  const waivedCount = all.filter((one) => one.waiverId !== null).length;
  const toggle = (severity: Severity): void =>
    view.setState({
      severitiesShown: shown.includes(severity) ? shown.filter((one) => one !== severity) : [...shown, severity],
    });
  return (
    <header className="counts">
      <h2>{findingsWords.title}</h2>
      {severities.map((severity) => {
        const count = all.filter((one) => one.severity === severity && one.waiverId === null).length;
        if (fold?.isFolded)
          return (
            <span key={severity} className="count">
              <FindingGlyph severity={severity} />
              {findingsWords.counted(severity, count)}
            </span>
          );
        return (
          <button
            key={severity}
            type="button"
            className="count"
            aria-pressed={shown.includes(severity)}
            onClick={() => toggle(severity)}
          >
            <FindingGlyph severity={severity} />
            {findingsWords.counted(severity, count)}
          </button>
        );
      })}
      {waivedCount > 0 && !fold?.isFolded && (
        <button
          type="button"
          className="count"
          aria-pressed={areWaivedShown}
          onClick={() => view.setState({ areWaivedShown: !areWaivedShown })}
        >
          {findingsWords.waivedCount(waivedCount)}
        </button>
      )}
      {children}
      {fold && <FoldButton fold={fold} />}
    </header>
  );
}

function FoldButton({ fold: { isFolded, toggle } }: { readonly fold: Fold }) {
  const name = isFolded ? findingsWords.unfold : findingsWords.fold;
  const Icon = isFolded ? ChevronUp : ChevronDown;
  return (
    <button type="button" className="act findings-fold" aria-expanded={!isFolded} onClick={toggle} title={name}>
      <Icon size={16} aria-hidden="true" />
      {name}
    </button>
  );
}

/** One of a few words, with its name before it. */
export function Choice<T extends string>(props: {
  readonly name: string;
  readonly value: T;
  readonly options: readonly T[];
  readonly words: Readonly<Record<T, string>>;
  readonly onChoose: (value: T) => void;
}) {
  const { name, value, options, words, onChoose } = props;
  return (
    <label className="findings-choice">
      {name}{" "}
      <select
        value={value}
        onChange={(event) => {
          const chosen = options.find((one) => one === event.target.value);
          if (chosen !== undefined) onChoose(chosen);
        }}
      >
        {options.map((one) => (
          <option key={one} value={one}>
            {words[one]}
          </option>
        ))}
      </select>
    </label>
  );
}
