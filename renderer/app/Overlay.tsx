import { type ReactNode, useLayoutEffect, useRef } from "react";

/** A box over the window that holds the focus until it is put away, and gives it back. */
export function Overlay(props: {
  readonly label: string;
  readonly className: string;
  readonly onClose: () => void;
  /** Opens the page of the help that is about the box. */
  readonly onHelp: () => void;
  readonly children: ReactNode;
}) {
  const box = useRef<HTMLDialogElement>(null);
  // the focus goes back while the box is still on the page
  useLayoutEffect(() => {
    const dialog = box.current;
    if (dialog && !dialog.open) dialog.showModal();
    return () => dialog?.close();
  }, []);
  return (
    <dialog
      ref={box}
      className={`overlay ${props.className}`}
      aria-label={props.label}
      onCancel={(event) => {
        event.preventDefault();
        props.onClose();
      }}
      onKeyDown={(event) => {
        // keys of the window rest while a box is over it
        event.stopPropagation();
        if (event.key === "Escape") props.onClose();
        if (event.key === "F1") {
          event.preventDefault();
          props.onHelp();
        }
      }}
      onClick={(event) => {
        if (event.target === event.currentTarget) props.onClose();
      }}
    >
      <div className="overlay-body">{props.children}</div>
    </dialog>
  );
}
