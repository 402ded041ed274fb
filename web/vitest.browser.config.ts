import { defineConfig } from 'vitest/config';
import { Surefire } from './browser/harness/surefire.ts';

/** Scenarios in a real browser, one after the other: `npm run browse`. */
export default defineConfig({
    test: {
        environment: 'node',
        include: ['browser/**/*.test.ts'],
        globalSetup: ['browser/harness/setup.ts'],
        fileParallelism: false,
        maxWorkers: 1,
        isolate: false,
        testTimeout: 180_000,
        hookTimeout: 60_000,
        reporters: ['default', new Surefire('browser', '../browser/target/surefire-reports')],
    },
});
