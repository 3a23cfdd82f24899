import type { z } from "zod";
import type { CalcFault } from "./answer.ts";

type Issue = z.core.$ZodIssue;
type Reason = Omit<CalcFault, "where">;

/** Says in plain words what is wrong with a request: its first issue, the field it is in and what would be accepted. */
export function requestFault(topicId: string, error: z.ZodError): CalcFault {
  const issue = error.issues[0];
  if (issue === undefined) throw new Error("a refused request must have an issue");
  const field = fieldName(issue.path);
  const where = field === "" ? topicId : `${topicId}.${field}`;
  return { ...reasonOf(issue, field === "" ? "The request" : field), where };
}

function reasonOf(issue: Issue, field: string): Reason {
  switch (issue.code) {
    case "invalid_type":
      return notAccepted(issue.input, field, wantedWords[issue.expected] ?? issue.expected);
    case "invalid_value":
      return notAccepted(issue.input, field, issue.values.map((value) => JSON.stringify(value)).join(" or "));
    case "too_small":
      return outOfRange(issue, field, `${issue.inclusive ? "at least" : "more than"} ${issue.minimum}`);
    case "too_big":
      return outOfRange(issue, field, `${issue.inclusive ? "at most" : "less than"} ${issue.maximum}`);
    case "unrecognized_keys":
      return {
        code: "unknown-field",
        what: `${field} has no field called ${issue.keys.join(" or ")}.`,
        mend: "Leave it out, or see the list of topics for the right name.",
      };
    default:
      return {
        code: "bad-field",
        what: `${field} is not as it should be: ${issue.message}.`,
        mend: "See the list of topics for what is accepted.",
      };
  }
}

function notAccepted(input: unknown, field: string, accepted: string): Reason {
  const mend = `Give ${accepted}.`;
  if (input === undefined) return { code: "missing-field", what: `${field} is missing.`, mend };
  return { code: "bad-field", what: `${field} is ${given(input)}.`, mend };
}

function outOfRange(issue: Issue & { readonly origin: string }, field: string, limit: string): Reason {
  const isList = issue.origin === "array";
  const figure = typeof issue.input === "number" ? ` It is ${issue.input}.` : "";
  return {
    code: "out-of-range",
    what: `${isList ? `The number of items in ${field}` : field} must be ${limit}.${figure}`,
    mend: isList ? `Give ${limit} items.` : `Give a number that is ${limit}.`,
  };
}

function fieldName(path: readonly PropertyKey[]): string {
  return path.reduce<string>((name, key) => {
    if (typeof key === "number") return `${name}[${key}]`;
    return name === "" ? String(key) : `${name}.${String(key)}`;
  }, "");
}

const wantedWords: Readonly<Record<string, string>> = {
  number: "a number",
  int: "a whole number",
  string: "text",
  array: "a list",
  tuple: "a list of two numbers",
  object: "one JSON object",
};

function given(input: unknown): string {
  if (input === null) return "null";
  if (Array.isArray(input)) return "a list";
  if (typeof input === "string") return `the text ${JSON.stringify(input)}`;
  if (typeof input === "object") return "an object";
  return String(input);
}
