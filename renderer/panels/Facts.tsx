import type { ReactNode } from "react";

/** One line of what is known: a label and a value; left out where the value is null or empty. */
export type Fact = readonly [label: string, value: ReactNode];

/** What is known of a thing, label by label. */
export function Facts({ facts }: { readonly facts: readonly Fact[] }) {
  return (
    <dl className="facts">
      {facts
        .filter(([, value]) => value !== null && value !== "")
        .map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
    </dl>
  );
}
