import { readFileSync } from "node:fs";
import { basename } from "node:path";
import type { ImportChoices } from "../../../core/exchange/importOptions.ts";
import { importChoices } from "../../../core/exchange/importOptions.ts";
import type { ImportPlan } from "../../../core/exchange/importPlan.ts";
import { fail, ok, type Result, refused } from "../../../core/model/result.ts";
import { type ChosenFile, importLabel, planFile } from "../../host/importFile.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import { type TextEncoding, textEncodings } from "../../host/readTable/decodeText.ts";
import type { Session } from "../../host/session.ts";
import { type Outcome, readArguments, type Verb } from "../verb.ts";

const shape = {
  name: "import",
  usage:
    "FILE.strand [--poles F] [--spans F] [--units F] [--attachments F] [--crossings F] [--map KIND.FIELD=HEADING]... " +
    "[--length-unit ft|m|usft] [--height-is poleLength|aboveGround] [--number-untagged PREFIX] [--span-way auto|order|infer|none] " +
    "[--take-good] [--replace] [--encoding NAME] [--dry-run]",
};

/** Option of each list and the kind of import it is, in the order they must be taken. */
const lists = [
  ["poles", "pole"],
  ["spans", "spanPair"],
  ["units", "livingUnit"],
  ["attachments", "attachment"],
  ["crossings", "crossing"],
] as const satisfies readonly (readonly [string, ImportChoices["kind"]])[];

/** What one list did to the route, as it is printed. */
type Taken = { readonly file: string; readonly kind: ImportChoices["kind"]; readonly plan: ImportPlan };

/** Brings pole, span, living unit, attachment and crossing lists in; each list is taken whole or not at all. */
export const importVerb: Verb = {
  ...shape,
  help: "Brings lists in from CSV, XLSX or GeoJSON. Each list is one edit: taken whole, or with --take-good without its bad rows.",
  async run(args, desk) {
    const text = { type: "string" } as const;
    const read = readArguments(shape, args, ["a FILE"], {
      poles: text,
      spans: text,
      units: text,
      attachments: text,
      crossings: text,
      map: { type: "string", multiple: true },
      "length-unit": text,
      "height-is": text,
      "number-untagged": text,
      "span-way": text,
      encoding: text,
      "take-good": { type: "boolean" },
      replace: { type: "boolean" },
      "dry-run": { type: "boolean" },
    });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const encoding = encodingOf(values.encoding);
    if (!encoding.ok) return encoding;
    return withRouteFile(positionals[0] ?? "", desk.stamp, async (session) => {
      const taken: Taken[] = [];
      for (const [option, kind] of lists) {
        const path = values[option];
        if (path === undefined) continue;
        const choices = choicesOf(kind, values);
        if (!choices.ok) return choices;
        const one = await takeList(session, path, choices.value, encoding.value, values["dry-run"] === true);
        if (!one.ok) return one;
        taken.push(one.value);
      }
      if (taken.length === 0)
        return fail("bad-arguments", "No list was named.", shape.name, `Write: strandwright import ${shape.usage}`);
      return ok(outcomeOf(taken));
    });
  },
};

type Values = { readonly [name: string]: string | boolean | readonly (string | boolean)[] | undefined };

function choicesOf(kind: ImportChoices["kind"], values: Values): Result<ImportChoices> {
  const maps = Array.isArray(values.map) ? values.map.map(String) : [];
  const columns: Record<string, string> = {};
  for (const map of maps) {
    const named = /^(\w+)\.(\w+)=(.*)$/.exec(map);
    if (!named)
      return fail(
        "bad-map",
        "A column map cannot be read.",
        map,
        "Write --map KIND.FIELD=HEADING, such as --map pole.tag=Asset.",
      );
    if (named[1] === kind) columns[named[2] ?? ""] = named[3] ?? "";
  }
  const checked = importChoices.safeParse({
    kind,
    columns,
    options: {
      lengthUnit: values["length-unit"],
      heightIs: values["height-is"],
      numberUntagged: values["number-untagged"],
    },
    onBad: values["take-good"] === true ? "takeGood" : "refuse",
    onExisting: values.replace === true ? "replace" : "skip",
    spans: values["span-way"],
  });
  if (checked.success) return ok(withoutUnset(checked.data));
  const issue = checked.error.issues[0];
  return fail(
    "bad-arguments",
    `An option cannot be read: ${issue?.message ?? "unknown value"}.`,
    issue?.path.join(".") ?? shape.name,
    `Write: strandwright import ${shape.usage}`,
  );
}

/** zod keeps keys whose value is undefined; the importers ask for keys that are there or not. */
function withoutUnset(choices: ImportChoices): ImportChoices {
  return JSON.parse(JSON.stringify(choices));
}

function encodingOf(name: string | undefined): Result<TextEncoding | null> {
  if (name === undefined) return ok(null);
  const known = textEncodings.find((one) => one === name.toLowerCase());
  return known
    ? ok(known)
    : fail(
        "bad-encoding",
        `The encoding "${name}" is not known.`,
        "--encoding",
        `Use one of ${textEncodings.join(", ")}.`,
      );
}

async function takeList(
  session: Session,
  path: string,
  choices: ImportChoices,
  encoding: TextEncoding | null,
  dryRun: boolean,
): Promise<Result<Taken>> {
  const file = readChosen(path);
  if (!file.ok) return file;
  const planned = await planFile(session.route(), file.value, choices, encoding === null ? {} : { encoding });
  if (!planned.ok) return planned;
  if (planned.value.problem !== null) return refused(planned.value.problem);
  const { plan } = planned.value;
  if (!dryRun) {
    const taken = session.take(importLabel(choices.kind, file.value.name), plan.rows);
    if (!taken.ok) return taken;
  }
  return ok({ file: file.value.name, kind: choices.kind, plan });
}

function readChosen(path: string): Result<ChosenFile> {
  try {
    return ok({ name: basename(path), bytes: readFileSync(path) });
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    return fail("no-file", `The file cannot be read: ${words}.`, path, "Check the name and try again.");
  }
}

function outcomeOf(taken: readonly Taken[]): Outcome {
  const lines = taken.flatMap(({ file, plan }) => [
    `${file}: ${plan.addedCount} added, ${plan.replacedCount} replaced, ${plan.skippedCount} left as they were, ${plan.spanCount} spans, ${plan.bad.length} bad rows`,
    ...plan.notes.map((note) => `  note: ${note}`),
    ...plan.bad.map(
      (bad) =>
        `  line ${bad.line}${bad.column ? `, ${bad.column}` : ""}${bad.value ? ` "${bad.value}"` : ""}: ${bad.what} Accepted: ${bad.accepted}.`,
    ),
    ...plan.spansForReview.map((span) => `  look at span ${span.fromTag} to ${span.toTag}: ${span.review}`),
  ]);
  const json = taken.map(({ file, kind, plan }) => {
    const { rows, ...told } = plan;
    return { file, kind, rowCount: rows.length, ...told };
  });
  return { exitCode: 0, lines, json };
}
