import type { FiberEnd } from "../plant/fiberWay.ts";
import type { TraceGeneral } from "../traces/trace.ts";

/** Names on the route that a file may use. */
export type RouteNames = {
  readonly cables: readonly { readonly id: string; readonly name: string; readonly fiberCount: number }[];
  /** What people call the hub: names of its outputs, the word itself. */
  readonly hubs: readonly string[];
  /** Places in the field: terminals and closures. */
  readonly places: readonly string[];
};

/** Which fiber a file says it is of, as far as it says so plainly; null is to be asked. */
export type FiberGuess = {
  readonly cableId: string | null;
  readonly fiber: number | null;
  readonly fromEnd: FiberEnd | null;
};

/**
 * Reads from a file's own fields and its name which fiber it is of. What they leave open, or tell differently, stays open: it is asked,
 * never guessed.
 *
 * @param fileName with its ending; a fiber in it is a number after F, FIB or FIBER, or the one
 *   number that is neither the cable's name nor a wavelength
 */
export function guessFiber(fileName: string, general: TraceGeneral | null, names: RouteNames): FiberGuess {
  const words = wordsOf(fileName.replace(/\.[a-z0-9]+$/i, ""));
  const own = names.cables.filter((one) => plain(one.name) === plain(general?.cableId ?? ""));
  const named = names.cables.filter((one) => words.includes(plain(one.name)));
  const isUntold = plain(general?.cableId ?? "") === "" && named.length === 0;
  const only = isUntold && names.cables.length === 1 ? names.cables[0] : undefined;
  const cable = agreed(own, named) ?? only ?? null;
  const fiber = agreedFigure(fiberOfId(general?.fiberId ?? ""), fiberOfName(words, cable?.name ?? ""));
  const isThere = cable !== null && fiber !== null && fiber >= 1 && fiber <= cable.fiberCount;
  return { cableId: cable?.id ?? null, fiber: isThere ? fiber : null, fromEnd: endOf(general, names) };
}

/** The one both tell, or one alone tells; undefined where they differ or none tells. */
function agreed<T>(own: readonly T[], named: readonly T[]): T | undefined {
  const [first, second] = [own[0], named[0]];
  if (own.length > 1 || named.length > 1) return undefined;
  if (first !== undefined && second !== undefined && first !== second) return undefined;
  return first ?? second;
}

function agreedFigure(own: number | null, named: number | null): number | null {
  if (own !== null && named !== null && own !== named) return null;
  return own ?? named;
}

function fiberOfId(text: string): number | null {
  const found = /^\s*(?:f|fib|fiber|fibre|no|#)?[\s._-]*0*(\d{1,4})\s*$/i.exec(text);
  return found ? Number(found[1]) : null;
}

/** A number after F, FIB or FIBER; else the one number that is left when the cable's own name is taken out. */
function fiberOfName(words: readonly string[], cableName: string): number | null {
  const marked = words.flatMap((word, index) => {
    const joined = /^(?:f|fib|fiber|fibre)0*(\d{1,4})$/.exec(word);
    if (joined) return [Number(joined[1])];
    const next = words[index + 1];
    return /^(?:f|fib|fiber|fibre)$/.test(word) && next !== undefined && /^\d{1,4}$/.test(next) ? [Number(next)] : [];
  });
  if (new Set(marked).size === 1) return marked[0] ?? null;
  if (marked.length > 0) return null;
  const numbers = words.filter((word) => /^\d{1,4}$/.test(word) && word !== plain(cableName) && !isWavelength(word));
  return numbers.length === 1 ? Number(numbers[0]) : null;
}

function isWavelength(word: string): boolean {
  return /^(?:1310|1383|1490|1550|1577|1625|1650)$/.test(word);
}

/** The instrument stands at location A. */
function endOf(general: TraceGeneral | null, { hubs, places }: RouteNames): FiberEnd | null {
  const here = plain(general?.locationA ?? "");
  if (here === "") return null;
  if (["hub", ...hubs.map(plain)].includes(here)) return "feed";
  return places.map(plain).includes(here) ? "far" : null;
}

/** Letters and digits, small. */
function plain(text: string): string {
  return text.toLowerCase().replace(/[^a-z0-9]/g, "");
}

function wordsOf(text: string): readonly string[] {
  const parts = text.toLowerCase().split(/[^a-z0-9]+/);
  // a cable's name may have a sign in it: what stands together with one sign between is a word too
  return [...parts, ...parts.slice(1).map((part, index) => `${parts[index]}${part}`)].filter((word) => word !== "");
}
