import { z } from "zod";

const logoKinds = ["png", "jpeg", "svg"] as const;

/** A picture kept beside the rows by its hash, and what must be known of it to place it. */
export type LogoRef = {
  readonly kind: (typeof logoKinds)[number];
  readonly widthPx: number;
  readonly heightPx: number;
  /** SHA-256 of its bytes, hex. */
  readonly hash: string;
};

const written = /^(png|jpeg|svg) ([1-9]\d{0,5})x([1-9]\d{0,5}) ([0-9a-f]{64})$/;

/** A logo as the settings keep it, in one value, so that picture and size never part: `png 640x200` and the hash; empty for none. */
export const logoWords = z.string().regex(new RegExp(`${written.source}|^$`));

/** The logo the settings name; null where the company has none. */
export function logoRefOf(text: string): LogoRef | null {
  const [, name, width, height, hash] = written.exec(text) ?? [];
  const kind = logoKinds.find((one) => one === name);
  return kind && hash ? { kind, widthPx: Number(width), heightPx: Number(height), hash } : null;
}

/** A logo in the words of the settings. */
export function logoText({ kind, widthPx, heightPx, hash }: LogoRef): string {
  return `${kind} ${widthPx}x${heightPx} ${hash}`;
}
