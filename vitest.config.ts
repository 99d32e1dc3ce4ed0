import { defineConfig } from "vitest/config";

/**
 * The house is loaded as it runs, by tsx and not through the test runner's own modules: a simulated year whose every call
 * goes through those takes three times as long, and so does loading a thousand files.
 */
const shared = {
  exclude: ["tests/bench/**"],
  testTimeout: 30_000,
  hookTimeout: 60_000,
  execArgv: ["--import", "tsx"],
  server: { deps: { external: [/\/(src|adapters)\/.*\.ts$/] } },
};
/** Rooms whose tests only compute: no store, socket, process or global is touched, so their files may share one process. */
const COMPUTE = [
  "cautions",
  "conversation",
  "declaration",
  "equipment",
  "golden",
  "household",
  "messages",
  "physics",
  "topics",
  "units",
].map((room) => `tests/${room}/**/*.test.ts`);

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          ...shared,
          name: "compute",
          include: COMPUTE,
          isolate: false,
        },
      },
      {
        test: {
          ...shared,
          name: "house",
          include: ["tests/**/*.test.ts"],
          exclude: [...shared.exclude, ...COMPUTE],
        },
      },
    ],
  },
});
