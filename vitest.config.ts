import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/{unit,trade,desktop}/**/*.test.{ts,tsx}"],
    benchmark: { include: ["tests/bench/**/*.bench.ts"] },
    setupFiles: ["tests/property-seed.ts"],
    testTimeout: 30_000,
  },
});
