import { defineConfig } from "vitest/config";

export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  test: {
    include: ["tests/browser/*.test.ts"],
    testTimeout: 120_000,
    hookTimeout: 180_000,
    // a busy machine answers late; a true failure only takes longer to be told
    expect: { poll: { timeout: 10_000 } },
    // a browser on a loaded machine now and then misses a press; a true failure fails each time
    retry: 0,
    // one browser at a time: the machine that runs them may be small
    fileParallelism: false,
  },
});
