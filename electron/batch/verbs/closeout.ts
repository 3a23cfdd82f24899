import { type BoardRow, closeoutBoard, type KindRoll } from "../../../core/closeout/board.ts";
import { standingStates } from "../../../core/closeout/standing.ts";
import { builtKindWords, readingWords } from "../../../core/closeout/words.ts";
import { planReadings } from "../../../core/exchange/planReadings.ts";
import { fail, ok, type Result } from "../../../core/model/result.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { readChosen } from "../../host/importFile.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import { readTable } from "../../host/readTable/readTable.ts";
import { badLines } from "../importOutcome.ts";
import { type Desk, type Outcome, readArguments, type Verb } from "../verb.ts";

const shape = { name: "closeout", usage: "status FILE.strand | readings FILE.strand READINGS.csv [--by NAME]" };

/** How far the route has come, or a list of readings taken down as one edit. */
export const closeoutVerb: Verb = {
  ...shape,
  help: "status tells how far each terminal has come and what is still to be read; readings takes down a list of what was read, all of it or nothing.",
  async run([part = "", ...args], desk) {
    if (part === "status") return status(args, desk);
    if (part === "readings") return readings(args, desk);
    return fail(
      "bad-arguments",
      `The verb closeout knows no ${part || "part"}.`,
      part || shape.name,
      `Write: strandwright closeout ${shape.usage}`,
    );
  },
};

async function status(args: readonly string[], desk: Desk): Promise<Result<Outcome>> {
  const read = readArguments(shape, args, ["a FILE"], {});
  if (!read.ok) return read;
  return withRouteFile(read.value.positionals[0] ?? "", desk.stamp, ({ plant }) => {
    const { rows, kinds } = closeoutBoard(plant, "");
    const told = rows.map((one) => ({ name: rowName(plant, one), kinds: one.kinds, missing: missingOf(one) }));
    return ok({
      exitCode: 0,
      lines: [
        ...told.map((one) => rowLine(one.name, one.kinds, one.missing)),
        rowLine("Whole route", kinds, []),
        `Still to be read: ${sum(kinds, (one) => one.missingCount)} of ${sum(kinds, (one) => one.askedCount)}`,
      ],
      json: { rows: told, kinds },
    });
  });
}

async function readings(args: readonly string[], desk: Desk): Promise<Result<Outcome>> {
  const read = readArguments(shape, args, ["a FILE", "a list of READINGS"], { by: { type: "string" } });
  if (!read.ok) return read;
  const [path = "", listPath = ""] = read.value.positionals;
  const file = readChosen(listPath);
  if (!file.ok) return file;
  const table = await readTable(file.value.name, file.value.bytes);
  if (!table.ok) return table;
  return withRouteFile<Outcome>(path, desk.stamp, (session) => {
    const signed = { by: read.value.values.by ?? desk.stamp.author, atIso: desk.stamp.nowIso() };
    const { inputs, bad } = planReadings(session.plant, table.value, signed);
    if (bad.length > 0)
      return ok({
        exitCode: 2,
        lines: [`${file.value.name}: nothing was taken down.`, ...badLines(bad, table.value.lineWord)],
        json: { ok: false, bad },
      });
    const label = `Take down ${inputs.length} readings of ${file.value.name}`;
    const done = session.run("steps.run", {
      label,
      steps: inputs.map((input) => ({ command: "reading.take", input })),
    });
    if (!done.ok) return done;
    const found = done.value.found.filter((one) => one.subjects[0]?.table === "reading");
    return ok({
      exitCode: 0,
      lines: [label, ...found.map((one) => `  ${one.message}`)],
      json: { label, count: inputs.length, found },
    });
  });
}

function rowName(plant: Plant, { terminalId, poleId }: BoardRow): string {
  const { tag } = plant.rowOf("pole", poleId);
  return terminalId === null ? `to ${tag}` : `${plant.rowOf("terminal", terminalId).name} at ${tag}`;
}

function rowLine(name: string, kinds: readonly KindRoll[], missing: readonly string[]): string {
  return `${name}: ${kinds.map(rollText).join(", ")}${missing.length > 0 ? `; to be read: ${missing.join(", ")}` : ""}`;
}

function rollText({ kind, count, byState }: KindRoll): string {
  const states = standingStates.filter((one) => byState[one] > 0).map((one) => `${byState[one]} ${one}`);
  return `${count} ${count === 1 ? builtKindWords[kind].one : builtKindWords[kind].many} (${states.join(", ")})`;
}

function missingOf({ built }: BoardRow): readonly string[] {
  const counts = new Map<string, number>();
  for (const { standing } of built)
    for (const { what } of standing.missing) counts.set(readingWords[what], (counts.get(readingWords[what]) ?? 0) + 1);
  return [...counts].map(([what, count]) => (count === 1 ? what : `${what} ${count}`));
}

function sum(kinds: readonly KindRoll[], of: (one: KindRoll) => number): number {
  return kinds.reduce((all, one) => all + of(one), 0);
}
