/** Whether an error is the argument reader's: a person's slip, no mistake of the program. */
export function isMisread(error: unknown): error is Error {
  return (
    error instanceof Error &&
    "code" in error &&
    typeof error.code === "string" &&
    error.code.startsWith("ERR_PARSE_ARGS")
  );
}

/** The argument reader's own words, without its advice on how a shell might be outwitted. */
export function misreadWords(error: Error): string {
  const [sentence] = error.message.split(/\. To specify|\n/);
  return `${sentence?.replace(/[.\s]+$/, "")}.`;
}
