import { existsSync } from 'node:fs';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
    interface ProvidedContext {
        /** Where the one Chromium of this run is spoken to. */
        chromium: string;
        /** The script of `browser/inpage`, to be run in a page. */
        inPage: string;
    }
}

/** One Chromium for the whole run, and the checks that run inside a page as one script. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
    const server = await launchChromium();
    project.provide('chromium', server.wsEndpoint());
    project.provide('inPage', await inPageScript());
    return () => server.close();
}

export function launchChromium() {
    const at = process.env['LIFTWRIGHT_CHROMIUM'] ?? '/usr/bin/chromium';
    if (!existsSync(at)) {
        throw new Error(
            `no browser at ${at}: install Debian's package chromium, or let LIFTWRIGHT_CHROMIUM name one`,
        );
    }
    return chromium.launchServer({
        executablePath: at,
        args: ['--no-sandbox', '--enable-unsafe-swiftshader'],
    });
}

async function inPageScript(): Promise<string> {
    const built = await build({
        configFile: false,
        logLevel: 'error',
        build: {
            write: false,
            lib: {
                entry: path.resolve(import.meta.dirname, '../inpage/index.ts'),
                formats: ['iife'],
                name: 'inPage',
            },
        },
    });
    const outputs = Array.isArray(built) ? built : [built];
    for (const output of outputs) {
        if ('output' in output) {
            return output.output[0].code.replace(/^var inPage ?=/, 'globalThis.inPage =');
        }
    }
    throw new Error('the checks that run inside a page did not build');
}
