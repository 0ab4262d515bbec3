import { defineConfig } from "vitest/config";

// The circuit against a live circuit simulator: run by `npm run test:ngspice`.
export default defineConfig({
  test: { include: ["tests/circuit-live/**/*.test.ts"], testTimeout: 120_000 },
});
