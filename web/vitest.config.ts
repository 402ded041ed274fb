import preact from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
    plugins: [preact()],
    test: { environment: 'happy-dom', include: ['test/**/*.test.{ts,tsx}'] },
});
