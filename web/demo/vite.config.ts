import preact from '@preact/preset-vite';
export default { root: '/work/wt/page/web/demo', base: './', plugins: [preact()], build: { outDir: '/tmp/page/out', emptyOutDir: true } };
