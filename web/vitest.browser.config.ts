import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import { LongestFirst } from './browser/harness/longest.ts';
import { Surefire } from './browser/harness/surefire.ts';

/**
 * Scenarios in a real browser, two files at a time: `npm run browse`. Each has a program, a folder and a
 * window of its own, and none of them measures a time.
 */
export default defineConfig({
    test: {
        environment: 'node',
        include: ['browser/**/*.test.ts'],
        globalSetup: ['browser/harness/setup.ts'],
        maxWorkers: Math.min(2, availableParallelism()),
        isolate: false,
        sequence: { sequencer: LongestFirst },
        testTimeout: 300_000,
        hookTimeout: 60_000,
        reporters: ['default', new Surefire('browser', '../browser/target/surefire-reports')],
    },
});
