import type { Route } from "../../../core/model/route.ts";

/** A tag no pole has, counted on from another pole's; `P-1` on a route without tags that count. */
export function nextTag(route: Route, like: string | undefined): string {
  const tags = new Set([...route.pole.values()].map((one) => one.tag));
  const model = /^(.*?)(\d+)\D*$/.exec(like ?? [...tags].at(-1) ?? "");
  const [prefix, digits] = [model?.[1] ?? "P-", model?.[2] ?? "0"];
  let number = Number(digits) + 1;
  const tagOf = (): string => `${prefix}${String(number).padStart(digits.length, "0")}`;
  while (tags.has(tagOf())) number += 1;
  return tagOf();
}

/** A tag for a pole set between two others, as crews write it: the first one's with a letter behind. */
export function betweenTag(route: Route, first: string): string {
  const tags = new Set([...route.pole.values()].map((one) => one.tag));
  const free = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"].map((letter) => `${first}${letter}`).find((one) => !tags.has(one));
  return free ?? nextTag(route, first);
}

/** A name no line of poles has yet. */
export function freeLineName(route: Route): string {
  const names = new Set([...route.pole.values()].map((one) => one.line));
  let number = 1;
  while (names.has(`Lateral ${number}`)) number += 1;
  return `Lateral ${number}`;
}
