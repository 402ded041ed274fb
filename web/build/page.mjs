// Builds the page into target/classes, once for each state of its sources: npm ci only when the lock
// has changed, the rest only when a source has. `node build/page.mjs test` also checks and tests it.
import { createHash } from 'node:crypto';
import {
    existsSync,
    mkdirSync,
    readFileSync,
    readdirSync,
    rmSync,
    statSync,
    writeFileSync,
} from 'node:fs';
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import console from 'node:console';
import process from 'node:process';

const home = path.resolve(import.meta.dirname, '..');
const marks = path.join(home, 'target', 'built');

function files(at) {
    if (!existsSync(at)) return [];
    if (!statSync(at).isDirectory()) return [at];
    return readdirSync(at)
        .sort()
        .flatMap(name => files(path.join(at, name)));
}

function digest(...names) {
    const hash = createHash('sha256').update(process.version);
    for (const file of names.flatMap(name => files(path.join(home, name)))) {
        hash.update(path.relative(home, file)).update('\0').update(readFileSync(file)).update('\0');
    }
    return hash.digest('hex');
}

function once(step, state, done, run) {
    const mark = path.join(marks, step);
    if (done && existsSync(mark) && readFileSync(mark, 'utf8') === state) return;
    rmSync(mark, { force: true });
    run();
    mkdirSync(marks, { recursive: true });
    writeFileSync(mark, state);
}

function npm(...words) {
    const ran = spawnSync('npm', words, { cwd: home, stdio: 'inherit' });
    if (ran.error) {
        console.error(
            `page: cannot run npm (${ran.error.message}): it comes with Node 20 or newer`,
        );
        process.exit(1);
    }
    if (ran.status !== 0) process.exit(ran.status ?? 1);
}

const lock = digest('package.json', 'package-lock.json', '.npmrc');
const sources = digest(
    'package.json',
    'package-lock.json',
    'index.html',
    'public',
    'src',
    'vite.config.ts',
    'tsconfig.json',
);
const all = digest(
    'package.json',
    'package-lock.json',
    'index.html',
    'public',
    'src',
    'test',
    'browser',
    'build',
    'vite.config.ts',
    'vitest.config.ts',
    'vitest.browser.config.ts',
    'tsconfig.json',
    'eslint.config.js',
);
once('modules', lock, existsSync(path.join(home, 'node_modules')), () => {
    npm('ci', '--prefer-offline', '--no-progress', '--loglevel=error');
});
if (process.argv.includes('test')) {
    // ./verify takes the reports away before it counts what ran.
    once('checked', all, existsSync(path.join(home, 'target/surefire-reports')), () => {
        npm('run', '-s', 'types');
        npm('run', '-s', 'lint');
        npm('run', '-s', 'test');
    });
} else {
    once(
        'page',
        sources,
        existsSync(path.join(home, 'target/classes/liftwright/page/index.html')),
        () => {
            npm('exec', '--no', '--', 'vite', 'build', '--logLevel', 'warn');
        },
    );
}
