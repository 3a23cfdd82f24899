import type { z } from "zod";
import { fail, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";

/** An edit a person can ask for by name. `run` is pure: it reads the route and answers with rows. */
export type Command<Input> = {
  /** Stable name: table, dot, verb. */
  readonly id: string;
  readonly input: z.ZodType<Input>;
  /** What undo and the journal call this edit; names the thing by its tag, read before the edit. */
  readonly label: (input: Input, route: Route) => string;
  readonly run: (route: Route, input: Input) => Result<RowChange[]>;
};

/** A command with its input type hidden: what menus, keys, fixes and batch hold. */
export type AnyCommand = {
  readonly id: string;
  readonly input: z.ZodType;
  /** Parse, then run; the label comes back with the rows. */
  readonly ask: (route: Route, input: unknown) => Result<{ readonly label: string; readonly rows: RowChange[] }>;
};

/** Closes a command over its own input check, so that callers need not know its type. */
export function sealed<Input>(command: Command<Input>): AnyCommand {
  return {
    id: command.id,
    input: command.input,
    ask(route, input) {
      const checked = command.input.safeParse(input);
      if (!checked.success) {
        const issue = checked.error.issues[0];
        const where = [command.id, ...(issue?.path ?? [])].join(".");
        return fail(
          "bad-input",
          `The edit cannot be read: ${issue?.message ?? "unknown shape"}.`,
          where,
          "Correct that value.",
        );
      }
      const done = command.run(route, checked.data);
      return done.ok ? { ok: true, value: { label: command.label(checked.data, route), rows: done.value } } : done;
    },
  };
}
