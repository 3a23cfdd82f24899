import { colourAt } from "../../core/fiber/colourCode.ts";

/** A tube's or fiber's colour by its place: the swatch, its letters and its number; never the colour alone. */
export function ColourChip({ kind, position }: { readonly kind: "tube" | "fiber"; readonly position: number }) {
  const { name, abbreviation } = colourAt(position);
  const [base = "", ...tracers] = abbreviation.split("/");
  return (
    <span className="chip" role="img" aria-label={`${kind} ${position}, ${name}, ${abbreviation}`}>
      <span className={`swatch swatch-${base}`}>
        {tracers.map((tracer, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: stripes of one colour differ by their place only
          <i key={i} className={`tracer swatch-${tracer}`} />
        ))}
      </span>
      <b>{abbreviation}</b>
      <span>{position}</span>
    </span>
  );
}
