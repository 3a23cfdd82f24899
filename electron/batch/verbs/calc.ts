import { describeTopics, runTopic } from "../../../core/calc/topics.ts";
import { fail, ok, type Result, refused } from "../../../core/model/result.ts";
import { readChosen } from "../../host/importFile.ts";
import { shippedDistricts } from "../../host/newRoute.ts";
import { type Outcome, readArguments, type Verb } from "../verb.ts";

const shape = { name: "calc", usage: "TOPIC [FILE.sor] | --list" };

/** Any formula of the program by itself: one JSON object in, one out. */
export const calcVerb: Verb = {
  ...shape,
  help: "Reads one JSON object on standard input and prints the answer; trace reads a reflectometer's FILE instead. --list prints every topic's schemas.",
  async run(args, desk) {
    if (args.includes("--list")) {
      const read = readArguments(shape, args, [], { list: { type: "boolean" } });
      return read.ok ? ok(asJson(describeTopics())) : read;
    }
    // A reflectometer's file is the one request nobody writes as JSON.
    const ofFile = args[0] === "trace" && args.length > 1;
    const read = readArguments(shape, args, ofFile ? ["a TOPIC", "a FILE"] : ["a TOPIC"], {});
    if (!read.ok) return read;
    const input = ofFile ? fileBytes(read.value.positionals[1] ?? "") : parseJson(await desk.readInput());
    if (!input.ok) return input;
    const answer = runTopic(read.value.positionals[0] ?? "", input.value, {
      catalogue: { districts: shippedDistricts(desk.assetsFolder) },
      clock: () => performance.now() / 1000,
    });
    return answer.ok ? ok(asJson(answer.value)) : refused(answer.fault);
  },
};

function asJson(value: unknown): Outcome {
  return { exitCode: 0, lines: [JSON.stringify(value, null, 2)], json: value };
}

function fileBytes(path: string): Result<unknown> {
  const file = readChosen(path);
  return file.ok ? ok({ bytes: [...file.value.bytes] }) : file;
}

function parseJson(text: string): Result<unknown> {
  try {
    return ok(JSON.parse(text));
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    return fail(
      "not-json",
      `Standard input is not JSON: ${words}.`,
      "standard input",
      'Write one JSON object, such as {"fiber": 13, "fibersPerTube": 12}.',
    );
  }
}
