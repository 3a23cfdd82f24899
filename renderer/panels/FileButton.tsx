import { type ReactNode, useRef } from "react";

type Props = {
  readonly label: string;
  /** In place of the bare label, where there is more to see. */
  readonly children?: ReactNode;
  readonly className?: string;
  /** Endings or kinds of file, as the page's own chooser takes them. */
  readonly accept: string;
  readonly isMany?: boolean;
  readonly isOff?: boolean;
  readonly title?: string | undefined;
  /** Called with one file at least. */
  readonly onFiles: (files: readonly File[]) => void;
};

/** A button that asks for files. The same file may be chosen again. */
export function FileButton({
  label,
  children = label,
  className = "fix",
  accept,
  isMany,
  isOff,
  title,
  onFiles,
}: Props) {
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <>
      <button
        type="button"
        className={className}
        disabled={isOff}
        title={title}
        onClick={() => chooser.current?.click()}
      >
        {children}
      </button>
      <input
        ref={chooser}
        type="file"
        hidden
        multiple={isMany}
        accept={accept}
        aria-label={label}
        onChange={({ target }) => {
          const files = [...(target.files ?? [])];
          target.value = "";
          if (files.length > 0) onFiles(files);
        }}
      />
    </>
  );
}
