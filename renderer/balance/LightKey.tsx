import { LightChip } from "./LightChip.tsx";
import { lightBands } from "./lightBand.ts";
import { bandWords, lightWords } from "./words.ts";

/** The scale of the light: every band with its sign and what it means. */
export function LightKey() {
  return (
    <ul className="balance-key light-key" aria-label={lightWords.key}>
      <li>{lightWords.scale}</li>
      {lightBands.map((band) => (
        <li key={band}>
          <LightChip band={band} />
          {bandWords[band].name}
        </li>
      ))}
    </ul>
  );
}
