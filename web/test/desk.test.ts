import { describe, expect, test } from 'vitest';
import { Desk, type DeskView } from '../src/core/desk';
import { FakeBay, HeldTimer, MemoryKeep, seeded } from './fakeBay';

function laid(text = 'a\nb\nc\n', server = new FakeBay(text), keep = new MemoryKeep()) {
    const timer = new HeldTimer();
    const told: string[] = [];
    let view: DeskView | undefined;
    const desk = new Desk(
        server.document(),
        server,
        timer,
        keep,
        now => (view = now),
        sentence => told.push(sentence),
    );
    const now = (): DeskView => {
        if (view === undefined) throw new Error('nothing was shown');
        return view;
    };
    return { desk, server, keep, timer, told, now };
}

describe('what is typed', () => {
    test('arrives after a pause, as one edit', async () => {
        const { desk, server, timer, now } = laid();
        desk.type('a\nb1\nc\n');
        desk.type('a\nb12\nc\n');
        expect(now().unsent).toBe(true);
        expect(server.calls).toEqual([]);
        await timer.pass(300);
        expect(server.text).toBe('a\nb12\nc\n');
        expect(server.calls).toEqual(['/api/text']);
        expect(now().unsent).toBe(false);
    });

    test('arrives without a pause too, when somebody types on and on', async () => {
        const { desk, server, timer } = laid();
        for (let key = 0; key < 20; key++) {
            desk.type(`a\nb${'x'.repeat(key)}\nc\n`);
            await timer.pass(100);
        }
        expect(server.calls.length).toBeGreaterThan(0);
    });

    test('goes before an order that was given after it', async () => {
        const { desk, server, timer } = laid();
        desk.type('a\nb1\nc\n');
        desk.save();
        await timer.pass(10);
        expect(server.calls).toEqual(['/api/text', '/api/save']);
        expect(server.disk).toBe('a\nb1\nc\n');
    });

    test('while a reply is under way stays in the editor', async () => {
        const { desk, server, timer, now } = laid();
        desk.type('a\nb1\nc\n');
        desk.flush();
        desk.type('a\nb12\nc\n');
        await timer.pass(1500);
        expect(now().text).toBe('a\nb12\nc\n');
        expect(server.text).toBe('a\nb12\nc\n');
    });

    test('and is undone leaves the text that was before', async () => {
        const { desk, server, timer, now } = laid();
        desk.type('a\nb1\nc\n');
        desk.undo();
        await timer.pass(10);
        expect(now().text).toBe('a\nb\nc\n');
        desk.redo();
        await timer.pass(10);
        expect(now().text).toBe('a\nb1\nc\n');
        expect(server.text).toBe('a\nb1\nc\n');
    });

    test('and is not taken by the server is told and not sent for ever', async () => {
        const { desk, server, timer, told, now } = laid();
        const call = server.call.bind(server);
        let refused = 0;
        server.call = (path, body) => {
            if (path !== '/api/text') return call(path, body);
            refused++;
            return Promise.resolve({
                kind: 'fault',
                fault: { fault: 'too large', sentence: 'too long' },
            });
        };
        desk.type('long');
        desk.save();
        await timer.pass(10_000);
        expect(refused).toBe(1);
        expect(told).toContain('too long');
        expect(now().text).toBe('long');
        expect(now().unsent).toBe(true);
    });
});

describe('changes from elsewhere', () => {
    test('in other lines are merged with mine', async () => {
        const { desk, server, timer, told, now } = laid();
        server.otherTab('a\nb\nC\n');
        desk.type('A\nb\nc\n');
        await timer.pass(2000);
        expect(server.text).toBe('A\nb\nC\n');
        expect(now().text).toBe('A\nb\nC\n');
        expect(told.length).toBe(1);
    });

    test.each(['mine', 'theirs'] as const)('in my lines wait for a choice: %s', async take => {
        const { desk, server, timer, now } = laid();
        server.otherTab('a\ntheirs\nc\n');
        desk.type('a\nmine\nc\n');
        await timer.pass(5000);
        expect(now().clash).toEqual({ mine: 'a\nmine\nc\n', theirs: 'a\ntheirs\nc\n' });
        expect(server.text).toBe('a\ntheirs\nc\n');
        desk.settle(take);
        await timer.pass(10);
        expect(now().clash).toBeUndefined();
        expect(server.text).toBe(`a\n${take}\nc\n`);
        expect(now().unsent).toBe(false);
        desk.undo();
        await timer.pass(10);
        expect(server.text).toBe(`a\n${take === 'mine' ? 'theirs' : 'mine'}\nc\n`);
    });

    test('a further change from elsewhere does not settle a clash by itself', async () => {
        const { desk, server, timer, now } = laid();
        server.otherTab('a\ntheirs\nc\n');
        desk.type('a\nmine\nc\n');
        await timer.pass(500);
        server.otherTab('a\ntheirs\nc2\n');
        await desk.elsewhere('r9', false);
        expect(now().clash).toEqual({ mine: 'a\nmine\nc\n', theirs: 'a\ntheirs\nc2\n' });
    });

    test('are fetched when the watch tells of them, and once only', async () => {
        const { desk, server, told, now } = laid();
        server.otherTab('a\nb\nC\n');
        await desk.elsewhere('r2', false);
        expect(now().text).toBe('a\nb\nC\n');
        await desk.elsewhere('r2', false);
        expect(server.calls).toEqual(['/api/document']);
        expect(told.length).toBe(1);
    });

    test('that are no other revision, as a conflict on disk, are fetched too', async () => {
        const { desk, server, timer, now } = laid();
        server.otherProgram('disk\n');
        await desk.elsewhere('r1', true);
        await desk.elsewhere('r1', true);
        await timer.pass(1000);
        expect(now().document.conflict?.diskText).toBe('disk\n');
        expect(server.calls).toEqual(['/api/document']);
    });

    test('on disk are shown with both texts and settled by the server', async () => {
        const { desk, server, timer, now } = laid();
        server.otherProgram('disk\n');
        await desk.again();
        expect(now().document.conflict?.diskText).toBe('disk\n');
        desk.resolve('disk');
        await timer.pass(10);
        expect(now().text).toBe('disk\n');
        expect(now().document.conflict).toBeUndefined();
    });
});

describe('without a server', () => {
    test('what was typed is kept, tried again and arrives', async () => {
        const { desk, server, keep, timer, now } = laid();
        server.fate = () => 'before';
        desk.type('a\nb1\nc\n');
        await timer.pass(3000);
        expect(now().link).toBe('lost');
        expect(keep.get('rig.yaml')?.text).toBe('a\nb1\nc\n');
        server.fate = () => 'well';
        await timer.pass(10_000);
        expect(now().link).toBe('there');
        expect(server.text).toBe('a\nb1\nc\n');
        expect(keep.held.size).toBe(0);
    });

    test('a reply that is lost after the deed is no clash, also when typing went on', async () => {
        const { desk, server, timer, now } = laid();
        server.fate = path => (path === '/api/text' ? 'after' : 'before');
        desk.type('a\nb1\nc\n');
        desk.flush();
        await timer.pass(1);
        desk.type('a\nb12\nc\n');
        server.fate = () => 'well';
        await timer.pass(10_000);
        expect(now().clash).toBeUndefined();
        expect(server.text).toBe('a\nb12\nc\n');
    });

    test('a change whose reply was lost is not made twice', async () => {
        const { desk, server, timer } = laid();
        server.fate = path => (path === '/api/change' ? 'after' : 'well');
        desk.change([{ kind: 'add', at: '', key: '', value: 'new' }], 'add new');
        await timer.pass(1);
        server.fate = () => 'well';
        await timer.pass(10_000);
        expect(server.text).toBe('a\nb\nc\nnew\n');
    });

    test('a change that did not arrive is made when the server is back', async () => {
        const { desk, server, timer } = laid();
        server.fate = () => 'before';
        desk.change([{ kind: 'add', at: '', key: '', value: 'new' }], 'add new');
        await timer.pass(1000);
        server.fate = () => 'well';
        await timer.pass(10_000);
        expect(server.text).toBe('a\nb\nc\nnew\n');
    });

    test('another run of it asks for its link, and then gets everything', async () => {
        const { desk, server, timer, now } = laid();
        server.fate = () => 'key';
        desk.type('a\nb1\nc\n');
        await timer.pass(20_000);
        expect(now().link).toBe('key');
        expect(now().text).toBe('a\nb1\nc\n');
        server.fate = () => 'well';
        await desk.again();
        await timer.pass(10);
        expect(server.text).toBe('a\nb1\nc\n');
    });

    test('a page that was closed leaves what is unsent to the next one', async () => {
        const first = laid();
        first.server.fate = () => 'before';
        first.desk.type('a\nb1\nc\n');
        first.desk.change([{ kind: 'add', at: '', key: '', value: 'new' }], 'add new');
        await first.timer.pass(3000);
        first.desk.close();
        first.server.fate = () => 'well';
        first.server.otherTab('A\nb\nc\n');
        const second = laid('', first.server, first.keep);
        await second.timer.pass(1000);
        expect(first.server.text).toBe('A\nb1\nc\nnew\n');
        expect(second.told.length).toBeGreaterThan(0);
        expect(first.keep.held.size).toBe(0);
    });
});

/** Types one word a line into drawn lines, while replies are lost, tabs change other lines and pages die. */
async function life(seed: number): Promise<void> {
    const random = seeded(seed);
    const pick = (n: number) => Math.floor(random() * n);
    const lines = 12;
    const start = Array.from({ length: lines }, (_, line) => `line ${line}\n`).join('');
    const server = new FakeBay(start);
    const keep = new MemoryKeep();
    let page = laid('', server, keep);
    const typed: string[] = [];
    const theirs: string[] = [];
    for (let step = 0; step < 30; step++) {
        const word = `w${step}.`;
        switch (pick(7)) {
            case 0:
            case 1:
            case 2: {
                const now = page.now().text.split('\n');
                const at = pick(lines / 2);
                now[at] = `${now[at] ?? ''} ${word}`;
                page.desk.type(now.join('\n'));
                typed.push(word);
                break;
            }
            case 3: {
                const now = server.text.split('\n');
                const at = lines / 2 + 1 + pick(lines / 2 - 1);
                now[at] = `${now[at] ?? ''} ${word}`;
                server.otherTab(now.join('\n'));
                theirs.push(word);
                break;
            }
            case 4: {
                const odds = random();
                server.fate = () => {
                    const drawn = random();
                    return drawn < odds * 0.4 ? 'before' : drawn < odds * 0.8 ? 'after' : 'well';
                };
                break;
            }
            case 5:
                await page.timer.pass(pick(1500));
                break;
            case 6:
                page.desk.close();
                page = laid('', server, keep);
                break;
        }
        await page.timer.pass(pick(250));
    }
    server.fate = () => 'well';
    await page.timer.pass(60_000);
    await page.desk.again(); // as the watch would have it do
    await page.timer.pass(1);
    const { text, clash } = page.now();
    expect(typed.length, `seed ${seed}`).toBeGreaterThan(0);
    const mine = clash?.mine ?? text;
    for (const word of typed) expect(mine.split(word).length - 1, `${word}, seed ${seed}`).toBe(1);
    const whole = clash?.theirs ?? text;
    for (const word of theirs) {
        expect(whole.split(word).length - 1, `${word}, seed ${seed}`).toBe(1);
    }
    if (clash === undefined) expect(server.text).toBe(text);
}

test('nothing that was typed is lost or made twice, whatever happens to server and page', async () => {
    for (let seed = 1; seed <= 300; seed++) await life(seed);
});
