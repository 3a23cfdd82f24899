import { type KeyboardEvent, useEffect, useRef } from "react";

type Props<T extends string> = {
  /** What the parts are of, for a screen reader. */
  readonly label: string;
  readonly tabs: readonly T[];
  readonly words: Readonly<Record<T, string>>;
  readonly tab: T;
  readonly onTab: (tab: T) => void;
};

/** Parts of a panel, one shown at a time; arrows walk from tab to tab, and the one shown is brought into sight. */
export function Tabs<T extends string>({ label, tabs, words, tab, onTab }: Props<T>) {
  const walk = (event: KeyboardEvent<HTMLDivElement>): void => {
    const step = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
    const next = tabs[(tabs.indexOf(tab) + step + tabs.length) % tabs.length];
    if (step === 0 || !next) return;
    event.preventDefault();
    onTab(next);
    event.currentTarget.querySelector<HTMLElement>(`[data-tab="${next}"]`)?.focus();
  };
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    list.current?.querySelector(`[data-tab="${tab}"]`)?.scrollIntoView({ block: "nearest", inline: "nearest" });
  }, [tab]);
  return (
    <div ref={list} role="tablist" className="tables-tabs" aria-label={label} onKeyDown={walk}>
      {tabs.map((one) => (
        <button
          key={one}
          type="button"
          role="tab"
          data-tab={one}
          aria-selected={one === tab}
          tabIndex={one === tab ? 0 : -1}
          onClick={() => onTab(one)}
        >
          {words[one]}
        </button>
      ))}
    </div>
  );
}
