import { defineConfig } from 'vitest/config';

/** What the page costs, measured in a real browser: `npm run measure`. Asserts no time. */
export default defineConfig({
    test: {
        environment: 'node',
        env: { LIFTWRIGHT_MEASURED: '1' },
        include: ['browser/bench/*.measure.ts'],
        globalSetup: ['browser/harness/setup.ts'],
        fileParallelism: false,
        maxWorkers: 1,
        testTimeout: 1_800_000,
        hookTimeout: 60_000,
    },
});
