import { foldWords } from "./foldWords.ts";
import { slips } from "./slips.ts";

type Found = { readonly key: string; readonly score: number };

/** Texts by key, found by parts of their words in any order and in spite of slips. */
export type WordIndex = {
  readonly put: (key: string, text: string) => void;
  readonly drop: (key: string) => void;
  /** Best first; every word typed must be in the text. */
  readonly find: (typed: string) => readonly Found[];
};

/** An index of nothing yet. */
export function openWordIndex(): WordIndex {
  const textWords = new Map<string, readonly string[]>();
  const keysByWord = new Map<string, Set<string>>();
  const drop = (key: string): void => {
    for (const word of textWords.get(key) ?? []) {
      const keys = keysByWord.get(word);
      keys?.delete(key);
      if (keys?.size === 0) keysByWord.delete(word);
    }
    textWords.delete(key);
  };
  return {
    drop,
    put(key, text) {
      drop(key);
      const words = foldWords(text);
      textWords.set(key, words);
      for (const word of words) {
        const keys = keysByWord.get(word);
        if (keys) keys.add(key);
        else keysByWord.set(word, new Set([key]));
      }
    },
    find(typed) {
      const wanted = foldWords(typed);
      if (wanted.length === 0) return [];
      let kept: ReadonlyMap<string, number> | null = null;
      for (const word of wanted) kept = bothOf(kept, scoresOf(keysByWord, word));
      const typedLength = wanted.join("").length;
      return [...(kept ?? [])]
        .map(([key, score]) => {
          const textLength = (textWords.get(key) ?? []).join("").length;
          // of two that hold the words, the one with less besides
          return { key, score: score / wanted.length + 0.2 * Math.min(1, typedLength / Math.max(1, textLength)) };
        })
        .sort((a, b) => b.score - a.score || (a.key < b.key ? -1 : 1));
    },
  };
}

function scoresOf(keysByWord: ReadonlyMap<string, ReadonlySet<string>>, typed: string): ReadonlyMap<string, number> {
  const scores = new Map<string, number>();
  for (const [word, keys] of keysByWord) {
    const score = likeness(typed, word);
    if (score === 0) continue;
    for (const key of keys) scores.set(key, Math.max(score, scores.get(key) ?? 0));
  }
  return scores;
}

/** 1 for the word itself, less for its start, its inside and slips; 0 for another word. */
function likeness(typed: string, word: string): number {
  if (word === typed) return 1;
  if (word.startsWith(typed)) return 0.8;
  if (word.includes(typed)) return 0.6;
  // a number with a slip is another number
  const most = typed.length < 3 || /\p{N}/u.test(typed) ? 0 : typed.length < 8 ? 1 : 2;
  if (most === 0 || word.length < typed.length - most) return 0;
  const count = slips(typed, word.slice(0, typed.length + most), most);
  return count === null ? 0 : 0.5 - 0.1 * count;
}

function bothOf(
  before: ReadonlyMap<string, number> | null,
  next: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> {
  if (!before) return next;
  const both = new Map<string, number>();
  for (const [key, score] of next) {
    const other = before.get(key);
    if (other !== undefined) both.set(key, score + other);
  }
  return both;
}
