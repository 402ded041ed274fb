import { defineConfig } from 'vitest/config';

/**
 * Pictures of every place of the page on every screen in both themes, to be opened and judged by people:
 * `npm run gallery`, into web/target/gallery. `GALLERY=lift,card` takes those places alone. Judges nothing.
 */
export default defineConfig({
    test: {
        environment: 'node',
        include: ['browser/gallery/*.look.ts'],
        globalSetup: ['browser/harness/setup.ts'],
        fileParallelism: false,
        maxWorkers: 1,
        testTimeout: 1_800_000,
        hookTimeout: 60_000,
    },
});
