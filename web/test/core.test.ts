import { describe, expect, test } from 'vitest';
import { actionFor, keysTwice, strokeName, type Stroke } from '../src/core/action';
import { Lines } from '../src/core/lines';
import { compare, difference, merge } from '../src/core/merge';
import { placedWords } from '../src/core/problems';
import { unsentFrom } from '../src/core/unsent';
import { asked, changed, ended, told, unasked } from '../src/core/verdicts';
import type { AnswerDocument, Problem, Told } from '../src/core/wire';
import { actionsOf } from '../src/state/actions';
import { Bay } from '../src/state/bay';
import { seeded } from './fakeBay';

describe('a stream of lines', () => {
    test('is the same however it was cut', () => {
        const whole = '{"a":1}\n\n{"b":"é\\n"}\n{"c":3}\n';
        for (let size = 1; size <= whole.length; size++) {
            const lines = new Lines();
            const read: string[] = [];
            for (let at = 0; at < whole.length; at += size) {
                read.push(...lines.push(whole.slice(at, at + size)));
            }
            expect(read).toEqual(['{"a":1}', '{"b":"é\\n"}', '{"c":3}']);
            expect(lines.end()).toBe('');
        }
    });

    test('that was cut off says so', () => {
        const lines = new Lines();
        expect(lines.push('{"a":1}\n{"b"')).toEqual(['{"a":1}']);
        expect(lines.end()).toBe('{"b"');
    });
});

describe('a merge', () => {
    test.each([
        ['nothing on my side', 'a\nb\n', 'a\nb\n', 'a\nB\n', 'a\nB\n'],
        ['nothing on theirs', 'a\nb\n', 'A\nb\n', 'a\nb\n', 'A\nb\n'],
        ['the same on both', 'a\nb\n', 'A\nb\n', 'A\nb\n', 'A\nb\n'],
        ['unlike lines', 'a\nb\nc\n', 'A\nb\nc\n', 'a\nb\nC\n', 'A\nb\nC\n'],
        ['lines that touch', 'a\nb\nc\n', 'A\nb\nc\n', 'a\nB\nc\n', 'A\nB\nc\n'],
        [
            'one inserts, one removes',
            'a\nb\nc\nd\n',
            'x\na\nb\nc\nd\n',
            'a\nb\nd\n',
            'x\na\nb\nd\n',
        ],
        ['a last line without an end', 'a\nb', 'A\nb', 'a\nb\nc', 'A\nb\nc'],
        ['from nothing', '', 'a\n', 'a\n', 'a\n'],
    ])('of %s', (_, base, mine, theirs, both) => {
        expect(merge(base, mine, theirs)).toEqual({ kind: 'merged', text: both });
    });

    test.each([
        ['the same line, unlike', 'a\nb\n', 'a\nM\n', 'a\nT\n'],
        ['two insertions at one place', 'a\nb\n', 'a\nM\nb\n', 'a\nT\nb\n'],
        ['one removes what the other changes', 'a\nb\nc\n', 'a\nc\n', 'a\nB\nc\n'],
        ['one rewrites around it', 'a\nb\nc\nd\n', 'x\ny\nd\n', 'a\nB\nc\nd\n'],
    ])('of %s is left to the reader', (_, base, mine, theirs) => {
        expect(merge(base, mine, theirs).kind).toBe('clash');
        expect(merge(base, theirs, mine).kind).toBe('clash');
    });

    test('keeps every change of either side, and takes sides by nothing', () => {
        let merged = 0;
        for (let seed = 1; seed <= 500; seed++) {
            const random = seeded(seed);
            const pick = (n: number) => Math.floor(random() * n);
            const base = Array.from({ length: 8 }, (_, line) => `${line % 3}\n`);
            const edit = (mark: string) => {
                const lines = [...base];
                for (let n = pick(3); n >= 0; n--) {
                    const at = pick(lines.length);
                    if (pick(2) === 0) lines.splice(at, 1, `${mark}${n}\n`);
                    else lines.splice(at, 0, `${mark}${n}\n`);
                }
                return lines.join('');
            };
            const mine = edit('m');
            const theirs = edit('t');
            const both = merge(base.join(''), mine, theirs);
            expect(merge(base.join(''), theirs, mine)).toEqual(both);
            if (both.kind === 'clash') continue;
            merged++;
            const marked = (text: string, mark: string) =>
                text.split('\n').filter(line => line.startsWith(mark));
            expect(marked(both.text, 'm'), `seed ${seed}`).toEqual(marked(mine, 'm'));
            expect(marked(both.text, 't'), `seed ${seed}`).toEqual(marked(theirs, 't'));
        }
        expect(merged).toBeGreaterThan(50);
    });
});

test('two versions are compared where they differ, and nowhere else', () => {
    const base = 'a\nb\nc\nd\ne\nf\ng\n';
    expect(compare(base, 'a\nb\nc\nD\ne\nf\ng\n')).toEqual({
        mine: '⋯\nc\nd\ne\n⋯',
        theirs: '⋯\nc\nD\ne\n⋯',
    });
    expect(compare('a\nb\n', 'A\nb\nc\n')).toEqual({ mine: 'a\nb\n', theirs: 'A\nb\nc\n' });
    expect(compare(base, 'A\nb\nc\nd\ne\nf\nG\n')).toEqual({
        mine: 'a\nb\n⋯\nf\ng\n',
        theirs: 'A\nb\n⋯\nf\nG\n',
    });
});

test('the difference of two texts makes one of the other', () => {
    for (let seed = 1; seed <= 300; seed++) {
        const random = seeded(seed);
        const word = () =>
            Array.from({ length: Math.floor(random() * 6) }, () => (random() < 0.5 ? 'a' : 'b'));
        const from = word().join('');
        const to = word().join('');
        const span = difference(from, to);
        const made =
            span === undefined
                ? from
                : from.slice(0, span.from) + span.insert + from.slice(span.to);
        expect(made).toBe(to);
    }
});

test.each(['', 'null', '[]', '{"rig":1}', '{"rig":"a","base":"","text":2}', '{'])(
    'what is not ours in the store is left: %s',
    json => {
        expect(unsentFrom(json)).toBeUndefined();
    },
);

describe('a verdict', () => {
    const document = { answer: {} } as AnswerDocument;
    const line = (stage: 'nominal' | 'banded' | 'whole'): Told => ({
        stage,
        question: 'lift',
        document,
    });

    test('is fresh when all of it was answered for this rig', () => {
        let rungs = asked(unasked());
        expect(rungs.lift.state).toBe('asking');
        rungs = told(rungs, 'r1', line('nominal'));
        expect(rungs.lift).toMatchObject({ state: 'asking', stage: 'nominal', of: 'r1' });
        rungs = told(rungs, 'r1', line('whole'));
        expect(rungs.lift.state).toBe('fresh');
        expect(ended(rungs, 'r1', false).lift.state).toBe('fresh');
        expect(ended(rungs, 'r1', false).balance.state).toBe('unasked');
    });

    test('greys when the rig changes, and stays to be read', () => {
        const rungs = changed(told(asked(unasked()), 'r1', line('whole')));
        expect(rungs.lift).toMatchObject({ state: 'stale', document, of: 'r1' });
        expect(rungs.balance.state).toBe('unasked');
    });

    test('of before does not pass for one of now when the work is stopped', () => {
        const rungs = asked(changed(told(asked(unasked()), 'r1', line('whole'))));
        expect(ended(rungs, 'r2', true).lift.state).toBe('stale');
    });

    test('that was stopped on the way says so', () => {
        const rungs = told(asked(unasked()), 'r1', line('banded'));
        expect(ended(rungs, 'r1', true).lift.state).toBe('stopped');
        expect(ended(rungs, 'r1', false).lift.state).toBe('fresh');
    });

    test('shows how far it is, until it is there', () => {
        const progress = { question: 'lift' as const, stage: 'draws', done: 1, total: 4 };
        const rungs = told(asked(unasked()), 'r1', { progress });
        expect(rungs.lift.progress).toEqual({ stage: 'draws', done: 1, total: 4 });
        expect(told(rungs, 'r1', line('whole')).lift.progress).toBeUndefined();
    });

    test('that is refused gives the reason, of one question or of all', () => {
        const one = told(asked(unasked()), 'r1', { refused: 'no fan', question: 'lift' });
        expect(one.lift).toMatchObject({ state: 'refused', refused: 'no fan' });
        expect(one.balance.state).toBe('asking');
        const all = told(asked(unasked()), 'r1', { refused: 'no rig' });
        expect(all.balance.refused).toBe('no rig');
        expect(asked(all).balance.refused).toBeUndefined();
    });
});

describe('an action', () => {
    const stroke = (key: string, held: Partial<Stroke> = {}): Stroke => ({
        key,
        ctrlKey: false,
        metaKey: false,
        altKey: false,
        shiftKey: false,
        ...held,
    });
    const actions = actionsOf(new Bay(), { go: () => undefined });

    test.each([
        [stroke('s', { ctrlKey: true }), 'save'],
        [stroke('s', { metaKey: true }), 'save'],
        [stroke('Z', { ctrlKey: true, shiftKey: true }), 'redo'],
        [stroke('?', { shiftKey: true }), 'help'],
        [stroke('1', { altKey: true }), 'open-lift'],
    ])('is found by its key', (pressed, id) => {
        expect(actionFor(actions, pressed)?.id).toBe(id);
    });

    test('is not found by another', () => {
        expect(actionFor(actions, stroke('s'))).toBeUndefined();
        expect(strokeName(stroke('Tab', { shiftKey: true }))).toBe('Shift+Tab');
    });

    test('has a key of its own', () => {
        expect(actions.length).toBeGreaterThan(10);
        expect(keysTwice(actions)).toEqual([]);
        const [first] = actions;
        expect(keysTwice(first === undefined ? [] : [first, first])).toEqual(['Ctrl+S']);
        expect(new Set(actions.map(({ id }) => id)).size).toBe(actions.length);
    });
});

test('a note says only what it has to say, an error also what was expected', () => {
    const problem: Problem = {
        code: 'unused-key',
        severity: 'note',
        line: 1,
        column: 1,
        from: 0,
        to: 1,
        path: 'demands/yaw',
        found: 'the key “yaw”',
        expected: 'nothing else',
        suggestion: 'It is read, and used by no question yet.',
    };
    expect(placedWords(problem)).toBe('demands/yaw: It is read, and used by no question yet.');
    expect(placedWords({ ...problem, severity: 'error' })).toBe(
        'demands/yaw: the key “yaw”; expected nothing else. It is read, and used by no question yet.',
    );
});
