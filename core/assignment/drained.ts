/** What work cut into steps comes to, done at one go. */
export function drained<T>(steps: Generator<void, T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}
