import { z } from "zod";
import { fileWays, plainWays } from "../../core/contract/wayMethods.ts";
import { ok, type Result } from "../../core/model/result.ts";
import { keptOrHeld } from "./keptJson.ts";
import type { Handlers } from "./serve.ts";
import type { Session } from "./session.ts";

const keptSchema = z.array(z.strictObject({ path: z.string(), ways: fileWays }));
type Kept = z.infer<typeof keptSchema>;

const mostKept = 60;

type Parts = {
  /** Where a person's own ways are kept; null keeps them for this run. */
  readonly configFolder: string | null;
  readonly withRoute: <T>(
    routeId: string,
    work: (session: Session) => Result<T> | Promise<Result<T>>,
  ) => Promise<Result<T>>;
};

/** Answers about how each route file was looked at on this machine, the latest files first. */
export function wayHandlers({ withRoute, configFolder }: Parts): Pick<Handlers, "route.ways"> {
  const kept = keptOrHeld<Kept>(configFolder, "ways.json", keptSchema, []);
  return {
    "route.ways": ({ routeId, keep }) =>
      withRoute(routeId, ({ path }) => {
        const all = kept.read();
        const ways = keep ?? all.find((one) => one.path === path)?.ways ?? plainWays;
        if (keep) kept.write([{ path, ways }, ...all.filter((one) => one.path !== path)].slice(0, mostKept));
        return ok({ ways });
      }),
  };
}
