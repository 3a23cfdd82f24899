import { ok } from "../../../core/model/result.ts";
import { openHost } from "../../host/host.ts";
import { openRoute } from "../../host/openRoute.ts";
import { openLoopback } from "../../loopback/server.ts";
import { readArguments, type Verb } from "../verb.ts";

const shape = { name: "serve", usage: "FILE.strand" };

/** Serves the window on this machine until it is stopped. */
export const serveVerb: Verb = {
  ...shape,
  help: "Serves the window at an address of this machine, printed first, until it is stopped.",
  async run(args, desk) {
    const read = readArguments(shape, args, ["a FILE"], {});
    if (!read.ok) return read;
    const session = openRoute(read.value.positionals[0] ?? "", desk.stamp);
    if (!session.ok) return session;
    const host = openHost({ runJob: desk.runJob, report: (error) => desk.say(String(error)) });
    host.add(session.value);
    const loopback = await openLoopback(host, desk.windowFolder);
    desk.say(`Open ${loopback.url}`);
    await new Promise<void>((resolve) => {
      process.once("SIGINT", resolve);
      process.once("SIGTERM", resolve);
    });
    await loopback.close();
    host.close();
    return ok({ exitCode: 0, lines: ["Stopped."], json: { stopped: true } });
  },
};
