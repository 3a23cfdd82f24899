import { type KeyboardEvent, useEffect, useId, useRef } from "react";

type FieldProps = {
  readonly label: string;
  readonly value: string;
  readonly problem: string | null;
  readonly leftPx: number;
  readonly topPx: number;
  /** Whether the text is chosen at the start, so that typing replaces it. */
  readonly isChosen: boolean;
  readonly onChange: (text: string) => void;
  readonly onKeep: () => void;
  readonly onGiveUp: () => void;
  readonly onTab?: (step: 1 | -1) => void;
};

/** A small field on the diagram: Enter keeps, Escape gives up. */
export function DiagramField(props: FieldProps) {
  const { label, value, problem, leftPx, topPx, isChosen, onChange, onKeep, onGiveUp, onTab } = props;
  const field = useRef<HTMLInputElement>(null);
  const problemId = useId();
  useEffect(() => {
    field.current?.focus();
    if (isChosen) field.current?.select();
  }, [isChosen]);
  const onKeyDown = (event: KeyboardEvent): void => {
    const isTab = event.key === "Tab" && onTab !== undefined;
    if (event.key !== "Enter" && event.key !== "Escape" && !isTab) return;
    event.preventDefault();
    event.stopPropagation();
    if (event.key === "Enter") onKeep();
    else if (event.key === "Escape") onGiveUp();
    else onTab?.(event.shiftKey ? -1 : 1);
  };
  return (
    <div className="diagram-field" style={{ left: leftPx, top: topPx }}>
      <label>
        <span>{label}</span>
        <input
          ref={field}
          value={value}
          aria-invalid={problem !== null}
          aria-describedby={problem === null ? undefined : problemId}
          onChange={(event) => onChange(event.target.value)}
          onKeyDown={onKeyDown}
        />
      </label>
      {problem !== null && (
        <p id={problemId} className="hand-refusal">
          {problem}
        </p>
      )}
    </div>
  );
}

/** Gives the keys back to the diagram once a field on it is done with. */
export function focusDiagram(): void {
  document.querySelector<HTMLElement>("[data-diagram]")?.focus();
}
