/** Why a request cannot be answered: `what` for a person, `where` the field, `mend` what to do. */
export type CalcFault = { readonly code: string; readonly what: string; readonly where: string; readonly mend: string };

/** What a topic answers: a value, or a fault of the request. */
export type Answer<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: CalcFault };
