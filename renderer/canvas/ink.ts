/** Size of a page's letters where nobody chose another, px. */
const usualLetterPx = 16;

/** Colours and size of letters of the drawing on screen, taken from the page itself so that canvas and panels never differ. */
export type Ink = {
  readonly ground: string;
  readonly ink: string;
  readonly soft: string;
  readonly hair: string;
  readonly wash: string;
  readonly accent: string;
  /** Size of letters against the usual: what the person chose here or for every page. */
  readonly letterFrac: number;
};

/** The page as it is now; read again when the system changes between light and dark, or the person chooses otherwise. */
export function readInk(): Ink {
  const style = getComputedStyle(document.documentElement);
  const token = (name: string): string => style.getPropertyValue(name).trim();
  return {
    ground: token("--ground"),
    ink: token("--ink"),
    soft: token("--soft"),
    hair: token("--hair"),
    wash: token("--wash"),
    accent: token("--accent"),
    letterFrac: Number.parseFloat(style.fontSize) / usualLetterPx,
  };
}

/** Lettering of the diagram, px at the size letters have now. */
export function lettering(sizePx: number, weight: 400 | 500 | 600): string {
  return `${weight} ${sizePx}px Inter, system-ui, sans-serif`;
}
