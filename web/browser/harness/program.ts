import { execFile, spawn, type ChildProcess } from 'node:child_process';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { promisify } from 'node:util';

const root = path.resolve(import.meta.dirname, '../../..');

function java(): string {
    const homes = [process.env['LIFTWRIGHT_JAVA_HOME'], process.env['JAVA_HOME']].filter(
        home => home !== undefined,
    );
    if (existsSync('/usr/lib/jvm')) {
        homes.push(...readdirSync('/usr/lib/jvm').map(name => path.join('/usr/lib/jvm', name)));
    }
    for (const home of homes) {
        const release = path.join(home, 'release');
        const version = existsSync(release)
            ? /JAVA_VERSION="(\d+)/.exec(readFileSync(release, 'utf8'))?.[1]
            : undefined;
        if (version !== undefined && Number(version) >= 25) {
            return path.join(home, 'bin', 'java');
        }
    }
    throw new Error('no JDK 25 or newer: LIFTWRIGHT_JAVA_HOME names one in an unusual place');
}

/** What was built last: the jars of `app`, or what LIFTWRIGHT_CLASSPATH says. */
function classPath(): string {
    const given = process.env['LIFTWRIGHT_CLASSPATH'];
    if (given !== undefined) {
        return given;
    }
    const target = path.join(root, 'app', 'target');
    const jar = existsSync(target)
        ? readdirSync(target).find(name => /^liftwright-app-[\d.]+\.jar$/.test(name))
        : undefined;
    if (jar === undefined) {
        throw new Error('app is not built: mvn -pl browser -am verify builds what this needs');
    }
    return [path.join(target, jar), path.join(target, 'lib', '*')].join(path.delimiter);
}

/** The real program, as somebody starts it from a shell. */
export class Program {
    private constructor(
        private readonly child: ChildProcess,
        /** The printed link, good once. */
        readonly link: string,
        /** From the start of the process to the printed link. */
        readonly startedInMs: number,
    ) {}

    /** `liftwright open WHAT --no-browser`, ready when it has printed its link. */
    static open(what: string, ...options: string[]): Promise<Program> {
        const before = performance.now();
        const child = start(['open', what, '--no-browser', ...options]);
        return new Promise((resolve, reject) => {
            let said = '';
            const late = setTimeout(() => {
                child.kill('SIGKILL');
                reject(new Error(`no link was printed within 40 s; it said:\n${said}`));
            }, 40_000);
            const listen = (chunk: Buffer) => {
                said += chunk.toString('utf8');
                const link = /http:\/\/(?:127\.0\.0\.1|localhost):\d+\/\S*/.exec(said)?.[0];
                if (link !== undefined && said.includes('\n', said.indexOf(link))) {
                    clearTimeout(late);
                    resolve(new Program(child, link, performance.now() - before));
                }
            };
            child.stdout?.on('data', listen);
            child.stderr?.on('data', listen);
            child.once('exit', code => {
                clearTimeout(late);
                reject(new Error(`it ended with code ${code ?? 'none'}; it said:\n${said}`));
            });
        });
    }

    /** Ends it as Ctrl+C does. */
    async stop(): Promise<void> {
        await this.end('SIGTERM');
    }

    /** Ends it as a power cut does. */
    async kill(): Promise<void> {
        await this.end('SIGKILL');
    }

    /** What its objects take after the garbage is gone, as its own virtual machine tells. */
    async heapBytes(): Promise<number> {
        const ask = promisify(execFile);
        const jcmd = path.join(path.dirname(java()), 'jcmd');
        await ask(jcmd, [String(this.child.pid), 'GC.run']);
        const { stdout } = await ask(jcmd, [String(this.child.pid), 'GC.heap_info']);
        const used = [...stdout.matchAll(/^(?:DefNew|Tenured)\s+total \d+K, used (\d+)K/gm)].map(
            found => Number(found[1]),
        );
        if (used.length === 0) {
            throw new Error(`not told: ${stdout}`);
        }
        return 1024 * used.reduce((sum, each) => sum + each, 0);
    }

    private async end(how: 'SIGTERM' | 'SIGKILL'): Promise<void> {
        if (this.child.exitCode !== null || this.child.signalCode !== null) {
            return;
        }
        const ended = new Promise<void>(resolve => {
            this.child.once('exit', () => {
                resolve();
            });
        });
        this.child.kill(how);
        const late = setTimeout(() => this.child.kill('SIGKILL'), 10_000);
        await ended;
        clearTimeout(late);
    }
}

/** What is measured is started as somebody starts it, by the launcher with its cache. */
function start(words: string[]): ChildProcess {
    const measured = process.env['LIFTWRIGHT_MEASURED'] !== undefined;
    if (measured && process.env['LIFTWRIGHT_CLASSPATH'] === undefined) {
        return spawn(path.join(root, 'liftwright'), words, {
            cwd: root,
            env: { ...process.env, LIFTWRIGHT_NO_BUILD: '1', LIFTWRIGHT_JAVA_OPTS: '-Xmx512m' },
            stdio: ['ignore', 'pipe', 'pipe'],
        });
    }
    return spawn(
        java(),
        [
            '-XX:+UseSerialGC',
            '-Xmx512m',
            '-XX:TieredStopAtLevel=1', // starts sooner, and serves a scenario
            '--enable-native-access=ALL-UNNAMED',
            '-cp',
            classPath(),
            'liftwright.app.Main',
            ...words,
        ],
        { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] },
    );
}

/** Runs a command to its end and gives what it printed. Exit codes 0 and 1 are answers. */
export function run(...words: string[]): Promise<string> {
    const child = start(words);
    return new Promise((resolve, reject) => {
        const out: Buffer[] = [];
        const errors: Buffer[] = [];
        child.stdout?.on('data', (chunk: Buffer) => out.push(chunk));
        child.stderr?.on('data', (chunk: Buffer) => errors.push(chunk));
        child.once('close', code => {
            if (code === 0 || code === 1) {
                resolve(Buffer.concat(out).toString('utf8'));
            } else {
                reject(
                    new Error(
                        `${words.join(' ')} ended with ${code ?? 'a signal'}: ${Buffer.concat(errors).toString('utf8')}`,
                    ),
                );
            }
        });
    });
}
