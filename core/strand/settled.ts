/** What a search found, or a fault that says it did not settle; the shape every other refusal in core has, so that it passes on. */
export type Settled<T> =
  | { readonly ok: true; readonly value: T }
  | {
      readonly ok: false;
      readonly fault: { readonly code: string; readonly what: string; readonly where: string; readonly mend: string };
    };

/** A search for a tension that ran out of steps. */
export function tensionNotSettled<T>(stepCount: number): Settled<T> {
  return {
    ok: false,
    fault: {
      code: "not-settled",
      what: `The tension did not settle in ${stepCount} steps.`,
      where: "horizontalN",
      mend: "Look for a span, load or tension that is far out of proportion.",
    },
  };
}
