import { traceOnRoute } from "../../../core/closeout/traceOnRoute.ts";
import { fiberName } from "../../../core/closeout/traceWords.ts";
import { keptTraceId } from "../../../core/edits/commands/traceKeep.ts";
import { fail, ok, type Result } from "../../../core/model/result.ts";
import type { FiberEnd } from "../../../core/plant/fiberWay.ts";
import { parseLengthM } from "../../../core/units/parseLength.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import type { Session } from "../../host/session.ts";
import { countBySeverity, findingLine } from "../../host/summary.ts";
import { type FolderTaken, takeTraceFolder } from "../../host/traceFolder.ts";
import { readArguments, type Verb } from "../verb.ts";

const shape = { name: "traces", usage: "FILE.strand FOLDER [--end hub|far] [--lead LENGTH]" };

const mend = `Write: strandwright traces ${shape.usage}`;

/** Keeps a folder of reflectometer files, says whose they are and what they show. */
export const tracesVerb: Verb = {
  ...shape,
  help: "Keeps the .sor files of a folder and matches each to its fiber; what the files leave open is told, never guessed. Exit code 1 when a trace shows an error.",
  async run(args, desk) {
    const text = { type: "string" } as const;
    const read = readArguments(shape, args, ["a FILE", "a FOLDER"], { end: text, lead: text });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const fromEnd = endOf(values.end);
    if (!fromEnd.ok) return fromEnd;
    const lead = values.lead === undefined ? null : parseLengthM(values.lead, "us");
    if (lead && !lead.ok) return fail("bad-arguments", "That is no length.", `--lead ${values.lead}`, mend);
    return withRouteFile(positionals[0] ?? "", desk.stamp, (session) => {
      const taken = takeTraceFolder(session, positionals[1] ?? "", {
        fromEnd: fromEnd.value,
        leadM: lead?.ok ? lead.valueM : null,
      });
      return taken.ok ? ok(outcomeOf(session, taken.value)) : taken;
    });
  },
};

function endOf(text: string | undefined): Result<FiberEnd | null> {
  if (text === undefined) return ok(null);
  if (text === "hub") return ok("feed");
  if (text === "far") return ok("far");
  return fail("bad-arguments", `An end is called hub or far, not ${text}.`, "--end", mend);
}

function outcomeOf({ plant, findings }: Session, { brought, presentCount, refused }: FolderTaken) {
  const { unitSystem } = plant.settings();
  const ids = new Set(brought.map((one) => keptTraceId(one.trace.keptHash)));
  const told = findings().filter((one) => one.subjects.some(({ table, id }) => table === "trace" && ids.has(id)));
  const lines = brought.flatMap(({ trace, asks, damages }) => [
    `${trace.fileName}: ${asks.length > 0 ? `not known: ${asks.join(", ")}` : matchWords(fiberName(plant, trace), traceOnRoute(plant, keptTraceId(trace.keptHash)))}`,
    ...damages.map((one) => `  ${one.block}: ${one.what}`),
  ]);
  const counts = countBySeverity(told);
  return {
    exitCode: counts.error > 0 ? 1 : 0,
    lines: [
      ...lines,
      ...refused.map(({ fileName, fault }) => `${fileName}: ${fault.what}`),
      ...told.map((one) => findingLine(one, unitSystem)),
      `${brought.length} kept, ${presentCount} on the route already, ${refused.length} refused; ${counts.error} errors, ${counts.warning} warnings`,
    ],
    json: { brought, presentCount, refused, counts, findings: told },
  } as const;
}

function matchWords(name: string, on: ReturnType<typeof traceOnRoute>): string {
  if (!on) return `${name}, which leads nowhere`;
  const { matches, unmatched, broken } = on.match;
  const seen = `${matches.length} of ${on.way.landmarks.length} places seen`;
  const left = unmatched.length > 0 ? `, ${unmatched.length} events left over` : "";
  return `${name}, ${seen}${left}${broken ? ", broken" : ""}`;
}
