import { defineConfig } from "vitest/config";

export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  test: {
    include: ["tests/browser/*.test.ts"],
    testTimeout: 120_000,
    hookTimeout: 180_000,
    // a busy machine answers late; a true failure only takes longer to be told
    expect: { poll: { timeout: 10_000 } },
    // one test of some hundreds was seen to fail once beside other work and not again; a true failure fails twice
    retry: 1,
    // one browser at a time: the machine that runs them may be small
    fileParallelism: false,
  },
});
