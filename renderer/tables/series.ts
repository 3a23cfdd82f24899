/**
 * Carries a column of texts on, as dragging the handle does: figures by their step, a name's last number by one, anything else again.
 *
 * @param texts  what is there, from the top; at least one
 * @param count  how many to add
 */
export function continueSeries(texts: readonly string[], count: number): readonly string[] {
  const figures = texts.map(Number);
  const [first = 0, second] = figures;
  const step = second === undefined ? 0 : second - first;
  const isRun =
    texts.length > 1 &&
    texts.every((text) => text.trim() !== "") &&
    figures.every((one, i) => Number.isFinite(one) && Math.abs(one - (first + step * i)) < 1e-9);
  const numbered = texts.map((text) => /^(.*?)(\d+)(\D*)$/.exec(text));
  const last = numbered.at(-1);
  const isNamed = last && !/^[-+\d.]+$/.test(texts.at(-1) ?? "") && last[1] !== "";
  return Array.from({ length: count }, (_, i) => {
    if (isRun) return String(Number((first + step * (texts.length + i)).toFixed(6)));
    if (isNamed) return `${last[1]}${String(Number(last[2]) + i + 1).padStart(last[2]?.length ?? 0, "0")}${last[3]}`;
    return texts[i % texts.length] ?? "";
  });
}
