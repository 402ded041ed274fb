import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';

export default defineConfig({
    plugins: [preact()],
    base: './',
    build: {
        outDir: 'target/classes/liftwright/page',
        emptyOutDir: true,
        target: 'es2023',
        chunkSizeWarningLimit: 800, // the solid view, which comes only when it is opened
        assetsInlineLimit: 0, // the page's policy allows no data: URLs
        modulePreload: { polyfill: false },
    },
});
