import type { ReactNode } from "react";
import type { Severity } from "../../../core/rules/rule.ts";
import type { WindowFinding } from "../../app/routeStore.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { FindingGlyph } from "../FindingGlyph.tsx";
import { findingsWords } from "./words.ts";

const severities: readonly Severity[] = ["error", "warning", "note"];

/** The counts, which show and hide by severity, and beside them what chooses and orders the rows. */
export function FindingsHead({
  all,
  children,
}: {
  readonly all: readonly WindowFinding[];
  readonly children: ReactNode;
}) {
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
      {waivedCount > 0 && (
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
    </header>
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
