import { contract, type Method, type Reply, type Request } from "../../core/contract/contract.ts";
import { fail, type Result } from "../../core/model/result.ts";

/** One function behind each method of the contract. */
export type Handlers = {
  readonly [M in Method]: (request: Request<M>) => Result<Reply<M>> | Promise<Result<Reply<M>>>;
};

/** A call by name, from whatever transport. */
export type Call = (method: string, body: unknown) => Promise<Result<unknown>>;

/**
 * The one door of the host. It alone parses, it alone catches: an unknown method, a bad request and a program error all
 * come back as a fault.
 *
 * @param report  is told of a program error, with its stack, for the log
 */
export function serve(handlers: Handlers, report: (error: unknown) => void): Call {
  return async (method, body) => {
    if (!isMethod(method)) {
      return fail(
        "unknown-method",
        "The program was asked for something it does not know.",
        method,
        "Update the program.",
      );
    }
    const request = contract[method].request.safeParse(body);
    if (!request.success) {
      const issue = request.error.issues[0];
      return fail(
        "bad-request",
        `The request cannot be read: ${issue?.message ?? "unknown shape"}.`,
        [method, ...(issue?.path ?? [])].join("."),
        "Reload the window and try again.",
      );
    }
    try {
      const handler = handlers[method] as (request: unknown) => Result<unknown> | Promise<Result<unknown>>; // method picked both
      return await handler(request.data);
    } catch (error) {
      report(error);
      const words = error instanceof Error ? error.message : String(error);
      return fail("program-error", `The program made a mistake: ${words}.`, method, "Nothing was changed. Try again.");
    }
  };
}

function isMethod(name: string): name is Method {
  return Object.hasOwn(contract, name);
}
