import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { AnswerDocument, Change, RigDocument, Told } from '../src/core/wire';
import { Asks } from '../src/state/asks';
import { Bay, partNamed, spanOf } from '../src/state/bay';
import { Gate, tokenOf } from '../src/state/gate';
import { StoredKeep } from '../src/state/keep';
import { Moving } from '../src/state/moving';
import { Server } from '../src/state/server';
import { Trial } from '../src/state/trial';
import { settle } from './fakeBay';

interface Asked {
    path: string;
    body: Record<string, unknown>;
    key: string | null;
    signal: AbortSignal | null | undefined;
    /** Writes lines of a stream; undefined ends it. */
    line: (line: unknown) => void;
    reply: (value: unknown, status?: number) => void;
}

/** A door behind which the test sits. */
function door() {
    const asked: Asked[] = [];
    const fetcher: typeof fetch = (path, init) =>
        new Promise((done, fail) => {
            let stream: ReadableStreamDefaultController<Uint8Array> | undefined;
            const encoder = new TextEncoder();
            init?.signal?.addEventListener('abort', () => {
                fail(new Error('aborted'));
            });
            asked.push({
                path: typeof path === 'string' ? path : '',
                body: JSON.parse(typeof init?.body === 'string' ? init.body : '') as Asked['body'],
                key: new Headers(init?.headers).get('Liftwright-Key'),
                signal: init?.signal,
                reply: (value, status = 200) => {
                    done(new Response(JSON.stringify(value), { status }));
                },
                line: line => {
                    if (stream === undefined) {
                        const body = new ReadableStream<Uint8Array>({
                            start: controller => {
                                stream = controller;
                            },
                        });
                        done(new Response(body));
                    }
                    if (line === undefined) stream?.close();
                    else stream?.enqueue(encoder.encode(`${JSON.stringify(line)}\n`));
                },
            });
        });
    const last = (): Asked => {
        const found = asked.at(-1);
        if (found === undefined) throw new Error('nothing was asked');
        return found;
    };
    return { server: new Server(fetcher), asked, last };
}

async function turns(): Promise<void> {
    for (let n = 0; n < 5; n++) {
        await settle();
        await new Promise(done => setTimeout(done, 0));
    }
}

const nominal: Told = {
    stage: 'nominal',
    question: 'lift',
    document: { answer: { sections: [] } } as unknown as AnswerDocument,
};
const whole: Told = { ...nominal, stage: 'whole' };

describe('the questions', () => {
    test('are asked anew when the rig changes, and the work for the old one is stopped', async () => {
        const { server, asked, last } = door();
        const asks = new Asks(server, vi.fn(), vi.fn());
        void asks.ask('rig.yaml', 'r1', 'si');
        const first = last();
        first.line(nominal);
        await turns();
        expect(asks.rungs.value.lift.of).toBe('r1');
        asks.changed();
        void asks.ask('rig.yaml', 'r2', 'si');
        expect(first.signal?.aborted).toBe(true);
        last().line(whole);
        last().line({ end: 'done' });
        last().line(undefined);
        await turns();
        expect(asked.map(({ body }) => body['base'])).toEqual(['r1', 'r2']);
        expect(asks.rungs.value.lift).toMatchObject({ of: 'r2', state: 'fresh' });
    });

    test('a line that comes late from the old work does not count', async () => {
        const { server, last } = door();
        const asks = new Asks(server, vi.fn(), vi.fn());
        void asks.ask('rig.yaml', 'r1', 'si');
        const first = last();
        first.line(nominal);
        await turns();
        asks.changed();
        void asks.ask('rig.yaml', 'r2', 'si');
        first.line(whole);
        await turns();
        expect(asks.rungs.value.lift).toMatchObject({ of: 'r1', stage: 'nominal' });
        expect(asks.rungs.value.lift.state).toBe('asking');
    });

    test('a stream that is cut off is no whole answer', async () => {
        const { server, last } = door();
        const asks = new Asks(server, vi.fn(), vi.fn());
        void asks.ask('rig.yaml', 'r1', 'si');
        last().line(nominal);
        last().line(undefined);
        await turns();
        expect(asks.rungs.value.lift.state).toBe('stopped');
        const stopped = new Asks(server, vi.fn(), vi.fn());
        void stopped.ask('rig.yaml', 'r1', 'si');
        last().line(nominal);
        await turns();
        stopped.stop('r1');
        expect(stopped.rungs.value.lift.state).toBe('stopped');
    });

    test('of an older state fetch the newer one; another refusal is told', async () => {
        const { server, last } = door();
        const tell = vi.fn();
        const stale = vi.fn();
        const asks = new Asks(server, tell, stale);
        void asks.ask('rig.yaml', 'r1', 'si');
        last().reply({ fault: 'stale', sentence: 'older' }, 409);
        await turns();
        expect(stale).toHaveBeenCalledOnce();
        void asks.ask('rig.yaml', 'r1', 'si');
        last().reply({ fault: 'too many', sentence: 'busy' }, 429);
        await turns();
        expect(tell).toHaveBeenCalledWith('busy');
    });
});

describe('a trial', () => {
    const changes: Change[] = [{ kind: 'set', at: 'wearer/mass', value: '60 kg' }];

    test('is answered in memory, and forgotten when it is let go', async () => {
        const { server, asked, last } = door();
        const trial = new Trial(server);
        void trial.start('rig.yaml', 'r1', 'si', 'less', changes);
        last().line(nominal);
        last().line({ end: 'done' });
        last().line(undefined);
        await turns();
        expect(trial.tried.value).toMatchObject({ state: 'answered', label: 'less' });
        expect(trial.tried.value?.rungs.lift.document).toBeDefined();
        trial.let();
        expect(trial.tried.value).toBeUndefined();
        expect(asked.map(({ path }) => path)).toEqual(['/api/try']);
    });

    test('answers the open question first, and is numbered above what was asked before', () => {
        const { server, asked } = door();
        const trial = new Trial(server, () => 'balance');
        void trial.start('rig.yaml', 'r1', 'si', 'less', changes);
        void trial.start('rig.yaml', 'r1', 'si', 'less', changes, true);
        const bodies = asked.map(({ body }) => body as { questions: string[]; turn: number });
        expect(bodies[0]?.questions).toEqual([
            'balance',
            'lift',
            'endurance',
            'restraint',
            'trials',
            'heat',
            'failures',
            'flight',
        ]);
        expect(bodies[1]?.questions).toEqual(['balance', 'lift', 'endurance']); // a hand waits
        expect(bodies[1]?.turn).toBeGreaterThan(bodies[0]?.turn ?? Infinity);
    });

    test('that makes no rig says why', async () => {
        const { server, last } = door();
        const trial = new Trial(server);
        void trial.start('rig.yaml', 'r1', 'si', 'less', changes);
        last().line({ refused: 'no fan is left' });
        last().line(undefined);
        await turns();
        expect(trial.tried.value).toMatchObject({ state: 'refused', refused: 'no fan is left' });
    });
});

describe('a drag', () => {
    const at = { forwardM: 0, rightM: 0.1, upM: 0 };
    const drag = { part: 'left.1', to: at, snap: true, twin: true };
    const moved = {
        changes: [{ kind: 'set', at: 'fans/1/at', value: '…' }],
        place: at,
        sentence: 'sets fans/1/at',
    };
    const made = () => {
        const { server, asked, last } = door();
        const change = vi.fn();
        const tell = vi.fn();
        const trial = new Trial(server);
        const moving = new Moving(
            server,
            trial,
            () => ({ rig: 'rig.yaml', revision: 'r1', units: 'si' }),
            change,
            tell,
        );
        return { asked, last, change, tell, trial, moving };
    };

    test('is tried while it moves and made when it is dropped', async () => {
        const { asked, last, change, trial, moving } = made();
        void moving.drag({ ...drag, phase: 'moving' });
        last().reply(moved);
        await turns();
        expect(last().path).toBe('/api/try');
        expect(moving.moved.value?.sentence).toBe('sets fans/1/at');
        expect(change).not.toHaveBeenCalled();
        void moving.drag({ ...drag, phase: 'over' });
        last().reply(moved);
        await turns();
        expect(change).toHaveBeenCalledOnce();
        expect(trial.tried.value).toBeUndefined();
        expect(asked.map(({ path }) => path)).toEqual(['/api/move', '/api/try', '/api/move']);
    });

    test('that is given up changes nothing, also when its answer comes later', async () => {
        const { last, change, trial, moving } = made();
        void moving.drag({ ...drag, phase: 'moving' });
        const first = last();
        void moving.drag({ ...drag, phase: 'off' });
        first.reply(moved);
        await turns();
        expect(trial.tried.value).toBeUndefined();
        expect(moving.moved.value).toBeUndefined();
        expect(change).not.toHaveBeenCalled();
    });

    test('to where nothing can stand is told', async () => {
        const { last, change, tell, moving } = made();
        void moving.drag({ ...drag, phase: 'over' });
        last().reply({ fault: 'refused', sentence: 'it hangs on a limb' }, 409);
        await turns();
        expect(tell).toHaveBeenCalledWith('it hangs on a limb');
        expect(change).not.toHaveBeenCalled();
    });
});

describe('the gate', () => {
    beforeEach(() => {
        sessionStorage.clear();
    });

    test('takes the token out of the address and buys the key with it', async () => {
        const { server, last } = door();
        const entered = vi.fn();
        const gate = new Gate(server, entered);
        const replaced = vi.spyOn(history, 'replaceState');
        void gate.start({ hash: '#enter=abc', pathname: '/' } as Location);
        expect(replaced).toHaveBeenCalledWith(null, '', '/');
        expect(last()).toMatchObject({ path: '/api/enter', body: { token: 'abc' }, key: null });
        last().reply({ key: 'k1' });
        await turns();
        expect(gate.state.value).toBe('in');
        expect(entered).toHaveBeenCalledOnce();
        void server.call('/api/folder', {});
        expect(last().key).toBe('k1');
        expect(sessionStorage.getItem('liftwright key')).toBe('k1');
    });

    test('stays shut for a token that was used, and without one', async () => {
        const { server, last } = door();
        const gate = new Gate(server, vi.fn());
        void gate.enter('http://127.0.0.1:1/#enter=old');
        expect(last().body).toEqual({ token: 'old' });
        last().reply({ fault: 'key', sentence: 'used' }, 401);
        await turns();
        expect(gate.state.value).toBe('out');
        expect(gate.sentence.value).toBe('used');
        await gate.start({ hash: '', pathname: '/' } as Location);
        expect(gate.state.value).toBe('out');
    });

    test('a call under way with the key of the run before goes again with the new one', async () => {
        const { server, asked, last } = door();
        const gate = new Gate(server, vi.fn());
        server.key = 'old';
        const call = server.call('/api/document', {});
        const before = last();
        void gate.enter('#enter=abc');
        last().reply({ key: 'new' });
        await turns();
        before.reply({ fault: 'key', sentence: 'of another run' }, 403);
        await turns();
        expect(last()).toMatchObject({ path: '/api/document', key: 'new' });
        last().reply({ revision: '1' });
        expect(await call).toEqual({ kind: 'done', value: { revision: '1' } });
        // Refused with the key that still holds, it is refused.
        const refused = server.call('/api/document', {});
        const count = asked.length;
        last().reply({ fault: 'key', sentence: 'of another run' }, 403);
        expect(await refused).toMatchObject({ kind: 'fault' });
        expect(asked).toHaveLength(count);
    });

    test.each([
        ['http://127.0.0.1:80/#enter=a-b_1', 'a-b_1'],
        ['#enter=x', 'x'],
        ['#sheet', undefined],
        ['abc', undefined],
    ])('reads %s', (text, token) => {
        expect(tokenOf(text)).toBe(token);
    });
});

test('what is unsent outlives the page, and a store that is forbidden does no harm', () => {
    const unsent = { rig: 'a.yaml', base: 'a', text: 'b', orders: [] };
    localStorage.clear();
    new StoredKeep(localStorage).put(unsent);
    expect(new StoredKeep(localStorage).get('a.yaml')).toEqual(unsent);
    expect(new StoredKeep(localStorage).get('b.yaml')).toBeUndefined();
    new StoredKeep(localStorage).drop('a.yaml');
    expect(new StoredKeep(localStorage).get('a.yaml')).toBeUndefined();
    const shut = new StoredKeep({
        getItem() {
            throw new Error('no');
        },
        setItem() {
            throw new Error('no');
        },
    } as unknown as Storage);
    shut.put(unsent);
    expect(shut.get('a.yaml')).toBeUndefined();
});

describe('what a finding names', () => {
    const part = (id: string) => ({
        id,
        kind: 'fan' as const,
        path: '',
        line: 1,
        from: 0,
        to: 1,
        movable: true,
    });

    test.each([
        ['left.1', 'left.1'],
        ['feed.p.1.trunk.joint', 'p.1'],
        ['feed.p.11.trunk.joint', 'p.11'],
        ['somewhere', undefined],
    ])('%s is the part %s', (name, id) => {
        const parts = [part('left.1'), part('p.1'), part('p.11')];
        expect(partNamed(parts, name)?.id).toBe(id);
    });

    test('is found in the file, or what it stands in where it is not written', () => {
        const node = (path: string, from: number, children: object[] = []) => ({
            path,
            key: '',
            line: 1,
            from,
            to: from + 1,
            children,
        });
        const outline = [node('wearer', 10, [node('wearer/mass', 12)]), node('wearer two', 20)];
        const document = { outline } as unknown as Parameters<typeof spanOf>[0];
        expect(spanOf(document, 'wearer/mass')).toEqual({ from: 12, to: 13 });
        expect(spanOf(document, 'wearer/posture/lean')).toEqual({ from: 10, to: 11 });
        expect(spanOf(document, 'wearer two')).toEqual({ from: 20, to: 21 });
        expect(spanOf(document, 'site')).toBeUndefined();
    });
});

describe('a rig', () => {
    const document = (revision: string): RigDocument => ({
        rig: 'rig.yaml',
        revision,
        text: 'rig: Heron\n',
        saved: true,
        readable: true,
        problems: [],
        parts: [],
        outline: [],
    });

    test('is asked about once when it is opened, and again when it is opened anew', () => {
        const bay = new Bay();
        const asked: unknown[] = [];
        vi.spyOn(bay.server, 'call').mockReturnValue(new Promise(() => undefined));
        vi.spyOn(bay.server, 'stream').mockImplementation((path, body) => {
            if (path === '/api/ask') asked.push(body);
            return new Promise(() => undefined);
        });
        bay.start();
        bay.lay(document('r1'));
        expect(asked.length).toBe(1);
        bay.lay(document('r1'));
        expect(asked.length).toBe(2);
        bay.lay(document('r2'));
        expect(asked.length).toBe(3);
    });

    test('that has changed is asked first what lies open', () => {
        const bay = new Bay();
        const asked: string[][] = [];
        vi.spyOn(bay.server, 'call').mockReturnValue(new Promise(() => undefined));
        vi.spyOn(bay.server, 'stream').mockImplementation((path, body) => {
            if (path === '/api/ask') asked.push((body as { questions: string[] }).questions);
            return new Promise(() => undefined);
        });
        bay.start();
        bay.lay(document('r1'));
        bay.open.value = 'balance';
        bay.lay(document('r2'));
        const others = ['endurance', 'restraint', 'trials', 'learning', 'heat', 'failures'];
        expect(asked).toEqual([
            ['lift', 'endurance', 'balance', ...others.slice(1)],
            ['balance', 'lift', ...others],
        ]);
    });
});
