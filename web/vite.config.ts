import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';

/** A running `liftwright open`, for `npm run dev`. It answers to its own address only, so that is what it is told. */
const bay = process.env['LIFTWRIGHT_BAY'] ?? 'http://127.0.0.1:8080';

export default defineConfig({
    plugins: [preact()],
    base: './',
    server: {
        host: '127.0.0.1',
        proxy: { '/api': { target: bay, changeOrigin: true, headers: { origin: bay } } },
    },
    build: {
        outDir: 'target/classes/liftwright/page',
        emptyOutDir: true,
        target: 'es2023',
        chunkSizeWarningLimit: 800, // the solid view, which comes only when it is opened
        assetsInlineLimit: 0, // the page's policy allows no data: URLs
        modulePreload: { polyfill: false },
    },
});
