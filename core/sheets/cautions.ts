/** Printed on every sheet. */
export const sheetCaution =
  "Values are design aids. Local code, the pole owner's standard and the judgement of a licensed engineer govern. Clearances and loads to be verified in the field before construction.";

/** A caution with where it comes from and how far that was read. */
type Caution = { readonly text: string; readonly source: string };

/**
 * Cautions for the crew, on the cover.
 *
 * @source 29 CFR parts 1910 and 1926 as named; marks as in the program's reference: seen, or from memory
 */
export const crewCautions: readonly Caution[] = [
  {
    text: "Keep clear of supply conductors. Lifts and other equipment stay 10 ft (3.0 m) from lines of up to 50 kV, more above.",
    source: "29 CFR 1926.1408 table A [seen]",
  },
  {
    text: "Approach distances of telecommunications workers to exposed energized parts: table R-2 of the rule.",
    source: "29 CFR 1910.268(b)(7) [ranges seen, distances from memory]",
  },
  {
    text: "Test a pole for soundness before climbing. Wear fall protection over 4 ft (1.2 m).",
    source: "29 CFR 1910.268(g), (n) [from memory]",
  },
  {
    text: "Test metal fixtures on joint poles for foreign voltage before touching them; bond if clear.",
    source: "29 CFR 1910.268(n) [from memory]",
  },
  {
    text: "Never look into a fiber or connector: the light is invisible. Cap unused ports.",
    source: "IEC 60825-2 [from memory]",
  },
  {
    text: "Glass shards: safety glasses, dark work mat, sealed container, no food, wash hands.",
    source: "[practice]",
  },
  {
    text: "Strand and lashing wire under tension spring when cut. Keep out of the bight.",
    source: "[practice]",
  },
  {
    text: "Traffic control as MUTCD part 6. Call 811 before digging for anchors.",
    source: "[from memory]",
  },
];

/** What the crew reads again on each terminal sheet. */
export const terminalCautions: readonly string[] = [
  "Test fixtures for foreign voltage before touching. Stay out of the supply space.",
  "Never look into a fiber or connector. Cap unused ports.",
  "Open only the tube named here. Fibers not named stay whole.",
  "Collect glass shards in a sealed container.",
];
