/** What a person is told when a request cannot be carried out: what is wrong, where, and how to mend it. */
export type Fault = {
  readonly code: string;
  /** One sentence for a person. */
  readonly what: string;
  /** The row, field, file or line it is about. */
  readonly where: string;
  /** What to do about it. */
  readonly mend: string;
};

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: Fault };

/** A request that was carried out. */
export function ok<T>(value: T): Result<T> {
  return { ok: true, value };
}

/** A request that was refused; nothing has changed. */
export function fail<T>(code: string, what: string, where: string, mend: string): Result<T> {
  return { ok: false, fault: { code, what, where, mend } };
}

/** A request that was refused for a fault found elsewhere. */
export function refused<T>(fault: Fault): Result<T> {
  return { ok: false, fault };
}
