import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Reply } from '../src/core/caller';
import type { LogRead, ReadingTold } from '../src/core/wire';
import { Reading } from '../src/state/reading';
import { Server } from '../src/state/server';
import { Bay } from '../src/state/bay';
import { Holding } from '../src/views/context';
import { ReadLog } from '../src/views/learning/ReadLog';
import { settle } from './fakeBay';

const HOSTILE = '<img src=x onerror=alert(1)>';
const READ: LogRead = {
    reading: 'reading-1',
    files: [
        {
            source: `scale ${HOSTILE}.csv`,
            rows: 1200,
            first: 0,
            last: 120,
            begin: '2026-03-14T10:00:00Z',
            clock: 'its own clock',
            channels: [
                { head: 'thrust [N]', name: 'thrust', unit: 'N' },
                { head: `throttle ${HOSTILE}`, name: 'throttle', unit: '1' },
            ],
        },
    ],
    rejected: [
        {
            source: 'scale.csv',
            count: 31,
            first: [{ line: 17, reason: 'no number in thrust', text: `12;${HOSTILE}` }],
        },
    ],
    notes: [{ source: 'scale.csv', line: 0, text: 'semicolons between cells' }],
};

/** A server that takes logs into memory. */
class LogServer extends Server {
    readonly logs = new Map<string, { name: string; pieces: string[]; size: number }>();
    readonly asked: { path: string; body: Record<string, unknown> }[] = [];
    fault: string | undefined;
    lines: ReadingTold[] = [{ read: READ }, { end: 'done' }];
    aborted = false;
    hold: Promise<void> = Promise.resolve();

    override async call<T>(path: string, asked: unknown): Promise<Reply<T>> {
        const body = asked as Record<string, unknown>;
        this.asked.push({ path, body });
        await this.hold;
        if (this.fault !== undefined) {
            return { kind: 'fault', fault: { fault: 'x', sentence: this.fault } };
        }
        return { kind: 'done', value: this.answer(path, body) as T };
    }

    private answer(path: string, body: Record<string, unknown>): unknown {
        if (path === '/api/keep')
            return { test: '2026-03-14-1', sentence: 'Kept as 2026-03-14-1.' };
        if (path !== '/api/upload') return {};
        const id = (body['upload'] as string | undefined) ?? `log-${this.logs.size + 1}`;
        const log = this.logs.get(id) ?? { name: body['name'] as string, pieces: [], size: 0 };
        if (body['at'] !== log.size) throw new Error('a piece out of its order');
        const piece = body['bytes'] as string;
        this.logs.set(id, {
            ...log,
            pieces: [...log.pieces, piece],
            size: log.size + atob(piece).length,
        });
        return { upload: id, size: log.size + atob(piece).length };
    }

    override stream(
        path: string,
        asked: unknown,
        signal: AbortSignal,
        see: (line: unknown) => void,
    ): Promise<{ kind: 'ended' } | { kind: 'lost' }> {
        this.asked.push({ path, body: asked as Record<string, unknown> });
        signal.addEventListener('abort', () => {
            this.aborted = true;
        });
        this.lines.forEach(see);
        return this.lines.length > 0
            ? Promise.resolve({ kind: 'ended' })
            : new Promise(() => undefined);
    }
}

let server: LogServer;
let reading: Reading;
let kept: number;

beforeEach(() => {
    server = new LogServer();
    kept = 0;
    reading = new Reading(
        server,
        () => ({ rig: 'rig.yaml', revision: 'r1', units: 'si' }),
        () => kept++,
        async piece =>
            btoa(String.fromCharCode(...new Uint8Array(await piece.arrayBuffer()).slice())),
    );
});

function file(name: string, size: number): File {
    return new File(['0123456789'.repeat(Math.ceil(size / 10)).slice(0, size)], name);
}

function paths(): string[] {
    return server.asked.map(({ path }) => path);
}

describe('reading in', () => {
    test('sends every byte of every file in its order, then has them understood together', async () => {
        const small = file('scale.csv', 70_001);
        const empty = file('empty.csv', 0);
        await reading.take([small, empty]);
        expect([...server.logs.values()].map(({ name, size }) => [name, size])).toEqual([
            ['scale.csv', 70_001],
            ['empty.csv', 0],
        ]);
        expect(server.logs.get('log-1')?.pieces.map(atob).join('')).toBe(await small.text());
        const asked = server.asked.find(({ path }) => path === '/api/reading');
        expect(asked?.body).toMatchObject({ base: 'r1', uploads: ['log-1', 'log-2'] });
        expect(reading.way.value).toMatchObject({ at: 'understood', read: READ });
    });

    test('is kept once, tells the list, and lets the files go', async () => {
        await reading.take([file('scale.csv', 10)]);
        const about = { date: '2026-03-14', card: 'hop', who: 'A. Nobody=watcher', note: 'dry' };
        await Promise.all([reading.keep(about), reading.keep(about)]);
        await settle();
        const keeps = server.asked.filter(({ path }) => path === '/api/keep');
        expect(keeps.map(({ body }) => body)).toEqual([
            { rig: 'rig.yaml', base: 'r1', reading: 'reading-1', ...about },
        ]);
        expect(reading.way.value).toEqual({ at: 'kept', sentence: 'Kept as 2026-03-14-1.' });
        expect(kept).toBe(1);
        expect(paths().at(-1)).toBe('/api/forget');
    });

    test('that cannot be kept says why, and can be kept again', async () => {
        await reading.take([file('scale.csv', 10)]);
        server.fault = 'Save the rig file first.';
        await reading.keep({ date: '2026-03-14', card: '', who: '', note: '' });
        expect(reading.way.value).toMatchObject({
            at: 'understood',
            keeping: false,
            sentence: 'Save the rig file first.',
        });
        expect(kept).toBe(0);
    });

    test('stops while a file is sent, and while it is read', async () => {
        let go: () => void = () => undefined;
        server.hold = new Promise(resolve => {
            go = resolve;
        });
        const taken = reading.take([file('a.csv', 10), file('b.csv', 10)]);
        await settle();
        expect(reading.way.value).toMatchObject({ at: 'sending', name: 'a.csv', total: 20 });
        void reading.drop();
        go();
        await taken;
        expect(reading.way.value.at).toBe('nothing');
        expect(server.asked.filter(({ path }) => path === '/api/upload').length).toBe(1);
        server.lines = [];
        void reading.take([file('c.csv', 10)]);
        await vi.waitFor(() => {
            expect(reading.way.value.at).toBe('reading');
        });
        const asked = server.asked.find(({ path }) => path === '/api/reading');
        expect(asked?.body['uploads']).toEqual(['log-2']); // what was stopped is no part of it
        await reading.drop();
        expect(server.aborted).toBe(true);
        expect(reading.way.value.at).toBe('nothing');
        expect(paths().at(-1)).toBe('/api/forget');
    });

    test('that is refused says what stands where, and what should', async () => {
        const problem = {
            source: 'scale.csv',
            line: 1,
            column: 'thrust',
            found: 'no unit',
            expected: 'a unit in brackets',
            advice: 'write thrust [N]',
        };
        server.lines = [{ problems: [problem] }, { end: 'done' }];
        await reading.take([file('scale.csv', 10)]);
        expect(reading.way.value).toMatchObject({ at: 'refused', problems: [problem] });
        server.fault = 'A log may have 256 MB.';
        await reading.take([file('scale.csv', 10)]);
        expect(reading.way.value).toMatchObject({ at: 'refused', sentence: server.fault });
    });
});

describe('on the page', () => {
    let home: HTMLElement;
    let bay: Bay;

    beforeEach(() => {
        localStorage.clear();
        bay = new Bay();
        Object.assign(bay, { reading });
        home = document.createElement('div');
        document.body.append(home);
        draw();
    });
    afterEach(() => {
        render(null, home);
        home.remove();
    });

    function draw(): void {
        void act(() => {
            render(
                <Holding.Provider value={{ bay, actions: [] }}>
                    <ReadLog />
                </Holding.Provider>,
                home,
            );
        });
    }

    test('everything that was understood can be read before it is kept, as text', async () => {
        await act(() => reading.take([file('scale.csv', 10)]));
        draw();
        const said = home.textContent;
        for (const words of [
            '1200 rows',
            '0.000 to 120.000 s',
            'thrust [N]',
            'shares of 1',
            '31 rows set aside',
            'line 17: no number in thrust',
            'All of them are kept beside the test.',
            HOSTILE,
        ]) {
            expect(said).toContain(words);
        }
        expect(home.querySelectorAll('img').length).toBe(0);
        const date = home.querySelector<HTMLInputElement>('form input');
        expect(date?.value).toBe('2026-03-14');
    });

    test('nothing is kept of a rig that is not saved', async () => {
        await act(() => reading.take([file('scale.csv', 10)]));
        draw();
        const form = home.querySelector('form');
        void act(() => {
            form?.dispatchEvent(new Event('submit', { bubbles: true, cancelable: true }));
        });
        await settle();
        expect(paths()).not.toContain('/api/keep');
        expect(home.textContent).toContain('Save the rig file first');
    });

    test('how far it is can be seen, and stopped', async () => {
        server.lines = [];
        void reading.take([file('scale.csv', 10)]);
        await vi.waitFor(() => {
            expect(reading.way.value.at).toBe('reading');
        });
        draw();
        expect(home.querySelector('progress')).not.toBeNull();
        expect(home.querySelector<HTMLInputElement>('input[type=file]')?.disabled).toBe(true);
        void act(() => {
            [...home.querySelectorAll('button')].find(each => each.textContent === 'Stop')?.click();
        });
        await settle();
        draw();
        expect(reading.way.value.at).toBe('nothing');
        expect(home.querySelector('progress')).toBeNull();
    });
});
