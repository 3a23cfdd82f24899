import { defineConfig } from "vitest/config";

export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  test: {
    include: ["tests/browser/**/*.test.ts"],
    testTimeout: 120_000,
    hookTimeout: 180_000,
    // one browser at a time: the machine that runs them may be small
    fileParallelism: false,
  },
});
