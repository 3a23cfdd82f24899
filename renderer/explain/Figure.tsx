import { Popover } from "radix-ui";
import { useEffect, useRef, useState } from "react";
import type { FigureRef } from "../../core/explain/explanation.ts";
import { ExplanationCard } from "./ExplanationCard.tsx";
import { explainWords } from "./words.ts";

const hoverMs = 500;
const leaveMs = 250;

/** A computed figure: resting the pointer on it, pressing it, or `?` while it has the focus says where it comes from. */
export function Figure({ of, children }: { readonly of: FigureRef; readonly children: string }) {
  const [opened, setOpened] = useState<"no" | "byPointer" | "byHand">("no");
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);
  const rest = (): void => {
    clearTimeout(timer.current);
    if (opened === "no") timer.current = setTimeout(() => setOpened("byPointer"), hoverMs);
  };
  const leave = (): void => {
    clearTimeout(timer.current);
    if (opened === "byPointer") timer.current = setTimeout(() => setOpened("no"), leaveMs);
  };
  return (
    <Popover.Root open={opened !== "no"} onOpenChange={(isOpen) => setOpened(isOpen ? "byHand" : "no")}>
      <Popover.Trigger asChild>
        <button
          type="button"
          className="explained"
          aria-label={explainWords.how(children)}
          onPointerEnter={rest}
          onPointerLeave={leave}
          onKeyDown={(event) => {
            // Escape as fast as this comes before the explanation has taken the focus
            const isEscape = event.key === "Escape" && opened !== "no";
            if (event.key !== "?" && !isEscape) return;
            event.preventDefault();
            event.stopPropagation();
            setOpened(isEscape ? "no" : "byHand");
          }}
        >
          {children}
        </button>
      </Popover.Trigger>
      <Popover.Portal>
        <Popover.Content
          className="explanation"
          aria-label={explainWords.dialog}
          side="left"
          sideOffset={8}
          collisionPadding={10}
          onPointerEnter={() => clearTimeout(timer.current)}
          onPointerLeave={leave}
          // the pointer alone must not take the focus away from where the hands are
          onOpenAutoFocus={(event) => {
            event.preventDefault();
            if (opened === "byHand" && event.currentTarget instanceof HTMLElement) event.currentTarget.focus();
          }}
          onCloseAutoFocus={(event) => opened === "byPointer" && event.preventDefault()}
          // Escape backs out of the explanation only, not of the choice behind it
          onEscapeKeyDown={(event) => event.stopPropagation()}
          onKeyDown={(event) => event.key !== "F1" && event.stopPropagation()}
        >
          <ExplanationCard of={of} onClose={() => setOpened("no")} />
        </Popover.Content>
      </Popover.Portal>
    </Popover.Root>
  );
}
