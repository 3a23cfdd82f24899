/** Colours of the drawing on screen, taken from the page's own tokens so that canvas and panels never differ. */
export type Ink = {
  readonly ground: string;
  readonly ink: string;
  readonly soft: string;
  readonly hair: string;
  readonly wash: string;
  readonly accent: string;
};

/** The tokens as the page has them now; read again when the system changes between light and dark. */
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
  };
}

/** Lettering of the diagram. */
export function lettering(sizePx: number, weight: 400 | 500 | 600): string {
  return `${weight} ${sizePx}px Inter, system-ui, sans-serif`;
}
