import { text } from "node:stream/consumers";
import type { Fault } from "../../core/model/result.ts";
import { faultLines } from "../host/faultLines.ts";
import { folderOfCaller, places, stampNow } from "../host/places.ts";
import { jobsInThread } from "../host/thread.ts";
import { attempt } from "./attempt.ts";
import type { Desk, Outcome, Verb } from "./verb.ts";
import { verbs } from "./verbs.ts";

const desk: Desk = {
  ...places(import.meta.url),
  stamp: stampNow(),
  runJob: jobsInThread(new URL("./worker.mjs", import.meta.url)),
  readInput: () => text(process.stdin),
  say: (line) => console.error(line),
};

function verbHelp(verb: Verb): string[] {
  return [`  ${verb.name} ${verb.usage}`, `      ${verb.help}`];
}

function help(): string[] {
  return [
    "strandwright VERB ... [--json]",
    "",
    ...verbs.flatMap(verbHelp),
    "",
    "Exit code 0: done. 1: the check found errors. 2: the request could not be carried out; nothing was changed.",
  ];
}

function tellFault(fault: Fault, asJson: boolean): void {
  if (asJson) console.log(JSON.stringify({ ok: false, fault }, null, 2));
  else console.error(faultLines(fault).join("\n"));
  process.exitCode = 2;
}

function tellOutcome(outcome: Outcome, asJson: boolean): void {
  if (asJson) console.log(JSON.stringify(outcome.json, null, 2));
  else (outcome.exitCode === 2 ? console.error : console.log)(outcome.lines.join("\n"));
  process.exitCode = outcome.exitCode;
}

async function main(words: readonly string[]): Promise<void> {
  const asJson = words.includes("--json");
  const [name, ...args] = words.filter((word) => word !== "--json");
  if (name === undefined || name === "help" || name === "--help") {
    console.log(help().join("\n"));
    return;
  }
  const verb = verbs.find((one) => one.name === name);
  if (!verb) {
    const mend = `Use one of ${verbs.map((one) => one.name).join(", ")}.`;
    return tellFault({ code: "unknown-verb", what: `There is no verb called "${name}".`, where: name, mend }, asJson);
  }
  if (args.includes("--help")) return console.log(verbHelp(verb).join("\n"));
  const done = await attempt(verb, args, desk);
  if (done.ok) tellOutcome(done.value, asJson);
  else tellFault(done.fault, asJson);
}

process.chdir(folderOfCaller(process.env, "strandwright"));
await main(process.argv.slice(2));
