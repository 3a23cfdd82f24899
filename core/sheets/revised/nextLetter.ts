/** The letter that comes after one: B after A, AA after Z, 3 after 2, P2 after P1. */
export function nextLetter(last: string | undefined): string {
  if (last === undefined) return "A";
  const [, head = "", digits = ""] = /^(.*?)(\d*)$/.exec(last) ?? [];
  if (digits !== "") return `${head}${Number(digits) + 1}`;
  const [, kept = "", ends = ""] = /^(.*?)(Z*)$/i.exec(last) ?? [];
  const turned = "A".repeat(ends.length);
  const raised = kept.at(-1);
  if (raised === undefined) return `A${turned}`;
  if (!/[A-Y]/i.test(raised)) return `${kept}${turned}A`;
  return `${kept.slice(0, -1)}${String.fromCharCode(raised.charCodeAt(0) + 1)}${turned}`;
}
