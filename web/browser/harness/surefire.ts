import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Reporter, TestCase, TestModule } from 'vitest/node';

function escaped(text: string): string {
    return text
        .replace(/&/g, '&amp;')
        .replace(/</g, '&lt;')
        .replace(/>/g, '&gt;')
        .replace(/"/g, '&quot;')
        .replace(/[^\t\n\r\x20-\ud7ff\ue000-\ufffd]/g, '?');
}

/** Writes what ran as `TEST-*.xml`, one file a suite, where `./verify` counts it. */
export class Surefire implements Reporter {
    constructor(
        private readonly room: string,
        private readonly folder: string,
    ) {}

    onTestRunEnd(modules: readonly TestModule[]): void {
        mkdirSync(this.folder, { recursive: true });
        for (const module of modules) {
            const name = `${this.room}.${path.basename(module.moduleId).replace(/\.test\.tsx?$/, '')}`;
            writeFileSync(path.join(this.folder, `TEST-${name}.xml`), suite(name, module));
        }
    }
}

function suite(name: string, module: TestModule): string {
    const cases = [...module.children.allTests()];
    const in_ = (state: string) => cases.filter(one => one.result().state === state).length;
    const broken = module.errors();
    const seconds = (module.diagnostic().duration / 1000).toFixed(3);
    const lines = cases.map(one => testCase(name, one));
    for (const error of broken) {
        lines.push(
            `  <testcase name="(the file itself)" classname="${escaped(name)}"><error>${escaped(error.message)}</error></testcase>`,
        );
    }
    return [
        '<?xml version="1.0" encoding="UTF-8"?>',
        `<testsuite name="${escaped(name)}" time="${seconds}" tests="${lines.length}" errors="${broken.length}" skipped="${in_('skipped')}" failures="${in_('failed')}">`,
        ...lines,
        '</testsuite>',
        '',
    ].join('\n');
}

function testCase(suiteName: string, one: TestCase): string {
    const result = one.result();
    const seconds = ((one.diagnostic()?.duration ?? 0) / 1000).toFixed(3);
    const head = `  <testcase name="${escaped(one.fullName)}" classname="${escaped(suiteName)}" time="${seconds}"`;
    switch (result.state) {
        case 'failed':
            return `${head}><failure>${escaped(result.errors.map(e => e.stack ?? e.message).join('\n'))}</failure></testcase>`;
        case 'skipped':
            return `${head}><skipped/></testcase>`;
        case 'pending':
        case 'passed':
            return `${head}/>`;
    }
}
