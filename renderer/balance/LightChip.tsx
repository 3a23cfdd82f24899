import { bandInks, type LightBand } from "./lightBand.ts";
import { bandWords } from "./words.ts";

/** A band of the scale as a swatch with its sign. */
export function LightChip({ band }: { readonly band: LightBand }) {
  const { fill, on } = bandInks[band];
  return (
    <i className="light-chip" style={{ background: fill, color: on }} role="img" aria-label={bandWords[band].name}>
      {bandWords[band].sign}
    </i>
  );
}
