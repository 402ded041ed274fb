import js from '@eslint/js';
import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';

const noDom = ['document', 'window', 'fetch', 'localStorage', 'sessionStorage', 'navigator'];

export default defineConfig(
    { ignores: ['node_modules', 'target'] },
    js.configs.recommended,
    tseslint.configs.strictTypeChecked,
    {
        languageOptions: {
            parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname },
        },
        rules: {
            '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
            '@typescript-eslint/switch-exhaustiveness-check': 'error',
            'no-restricted-syntax': [
                'error',
                {
                    selector: "JSXAttribute[name.name='dangerouslySetInnerHTML']",
                    message: 'Text only.',
                },
            ],
        },
    },
    // The core knows no page: it runs, and is tested, without one.
    {
        files: ['src/core/**'],
        rules: {
            'no-restricted-globals': ['error', ...noDom],
            'no-restricted-imports': [
                'error',
                { patterns: ['preact*', '@preact/*', '../state/*', '../views/*', '../pictures/*'] },
            ],
        },
    },
    {
        files: ['src/state/**'],
        rules: {
            'no-restricted-imports': ['error', { patterns: ['../views/*', '../pictures/*'] }],
        },
    },
    { files: ['**/*.js', '**/*.mjs'], extends: [tseslint.configs.disableTypeChecked] },
);
