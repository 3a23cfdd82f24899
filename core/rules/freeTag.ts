/** The tag with the first number behind it that makes it one nobody has: `P12`, `P12-2`, `P12-3`. */
export function freeTag(tag: string, isTaken: (text: string) => boolean): string {
  let count = 2;
  while (isTaken(`${tag}-${count}`)) count += 1;
  return `${tag}-${count}`;
}
