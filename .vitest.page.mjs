import { defineConfig } from "vitest/config";

// The page in a real browser: run by `npm run test:page`, not by `npm test`.
export default defineConfig({ test: { include: ["tests/page/**/*.test.ts"], testTimeout: 120_000 } });
