import { Popover } from "radix-ui";
import { useMemo } from "react";
import type { FigureRef } from "../../core/explain/explanation.ts";
import { ExplanationCard } from "../explain/ExplanationCard.tsx";
import { explainWords } from "../explain/words.ts";

type Props = {
  readonly of: FigureRef;
  readonly cellId: string;
  /** Puts it away and gives the focus back to the table. */
  readonly close: () => void;
};

/** How the figure in a cell comes about, beside the cell. */
export function CellExplanation({ of, cellId, close }: Props) {
  // looked up anew each time: a row that scrolls out of sight and back is another element
  const anchor = useMemo(
    () => ({
      current: {
        getBoundingClientRect: () => document.getElementById(cellId)?.getBoundingClientRect() ?? new DOMRect(),
      },
    }),
    [cellId],
  );
  return (
    <Popover.Root open onOpenChange={(isOpen) => !isOpen && close()}>
      <Popover.Anchor virtualRef={anchor} />
      <Popover.Portal>
        <Popover.Content
          className="explanation"
          aria-label={explainWords.dialog}
          side="top"
          sideOffset={6}
          collisionPadding={10}
          onEscapeKeyDown={(event) => event.stopPropagation()}
          onKeyDown={(event) => event.key !== "F1" && event.stopPropagation()}
          onOpenAutoFocus={(event) => {
            event.preventDefault();
            if (event.currentTarget instanceof HTMLElement) event.currentTarget.focus();
          }}
          onCloseAutoFocus={(event) => event.preventDefault()}
        >
          <ExplanationCard of={of} onClose={close} />
        </Popover.Content>
      </Popover.Portal>
    </Popover.Root>
  );
}
