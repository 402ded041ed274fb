import preact from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';
import { Surefire } from './browser/harness/surefire.ts';

export default defineConfig({
    plugins: [preact()],
    test: {
        environment: 'happy-dom',
        include: ['test/**/*.test.{ts,tsx}'],
        reporters: ['default', new Surefire('web', 'target/surefire-reports')],
    },
});
