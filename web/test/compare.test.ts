import { describe, expect, it } from 'vitest';
import { movedWords } from '../src/core/before';
import {
    changesOf,
    declaredStop,
    otherBody,
    otherName,
    otherNamed,
    type Sensitivity,
} from '../src/core/compare';
import type { Scene } from '../src/core/scene';
import { everything, MOST_FOUND, search, type Found } from '../src/core/search';
import { unasked } from '../src/core/verdicts';
import { fieldAt } from '../src/views/FieldDialog';

const at = (forward: number) => ({ forward, right: 0, up: 1 });

function scene(parts: Record<string, number>): Scene {
    return {
        fans: [],
        limbs: [],
        parts: Object.entries(parts).map(([id, forward]) => ({
            id,
            kind: 'part' as const,
            at: at(forward),
        })),
        centre: undefined,
        lift: undefined,
        jets: [],
        strikes: [],
    };
}

describe('two revisions', () => {
    it('says what stands elsewhere, came and went', () => {
        const was = scene({ a: 0, b: 1, c: 2 });
        expect(movedWords(was, was)).toBe('Nothing stands elsewhere');
        expect(movedWords(was, scene({ a: 0, b: 1.01, d: 3 }))).toBe('moved: b; new: d; gone: c');
    });

    it('names what is compared with, and back', () => {
        for (const other of [
            { kind: 'saved' } as const,
            { kind: 'file', file: 'a b/rig.yaml' } as const,
            { kind: 'test', test: '2026-03-14-1' } as const,
        ]) {
            expect(otherNamed(otherName(other))).toEqual(other);
        }
        expect(otherBody({ kind: 'saved' })).toEqual({});
        expect(otherBody({ kind: 'test', test: 'x' })).toEqual({ test: 'x' });
    });
});

describe('sliders', () => {
    const slider = (path: string): Sensitivity => ({
        path,
        label: path,
        moves: 1,
        shownMoves: '1 N',
        stops: ['8', '9', '10', '11', '12'],
        shown: ['8', '9', '10', '11', '12'],
    });

    it('changes what was moved, and nothing that stands where the file says', () => {
        const all = [slider('a'), slider('b'), slider('c')];
        expect(declaredStop(slider('a'))).toBe(2);
        const moved = new Map([
            ['a', 4],
            ['b', 2],
        ]);
        expect(changesOf(all, moved)).toEqual({
            changes: [{ kind: 'set', at: 'a', value: '12' }],
            label: 'a 12',
        });
        expect(changesOf(all, new Map()).changes).toEqual([]);
    });
});

describe('search', () => {
    const found = (words: string, kind: Found['kind'] = 'file'): Found => ({
        kind,
        words,
        place: 'line 1',
        go: { to: 'path', path: words },
    });

    it('wants every word and puts first what begins with it', () => {
        const all = [found('mass of fan'), found('fan.1', 'part'), found('fan types/F/mass')];
        expect(search(all, 'fan').map(f => f.words)).toEqual([
            'fan.1',
            'fan types/F/mass',
            'mass of fan',
        ]);
        expect(search(all, 'MASS fan').map(f => f.words)).toEqual([
            'mass of fan',
            'fan types/F/mass',
        ]);
        expect(search(all, 'fan wing')).toEqual([]);
        expect(search(all, '  ')).toEqual([]);
        const many = Array.from({ length: 500 }, (_, k) => found(`fan ${k}`));
        expect(search(many, 'fan')).toHaveLength(MOST_FOUND);
    });

    it('knows every answered finding, table and number once, and what can be done', () => {
        const rungs = unasked();
        const document = {
            answer: {
                findings: [
                    { severity: 'warns', code: 'x', shown: 'too hot', part: 'p.1', remedies: [] },
                ],
                sections: [{ kind: 'table', id: 't', title: 'Packs', columns: [], rows: [] }],
            },
            fields: { weight: { label: 'weight', unit: 'N', per: 1, plus: 0, meaning: 'heavy' } },
        };
        rungs.lift = { question: 'lift', state: 'fresh', document: document as never };
        rungs.heat = { question: 'heat', state: 'fresh', document: document as never };
        const all = everything(undefined, rungs, [
            { id: 'save', label: () => 'Save', keys: 'Ctrl+S', enabled: () => true, run: () => {} },
        ]);
        expect(search(all, 'heavy')).toHaveLength(1);
        expect(search(all, 'too hot').map(f => f.place)).toEqual(['lift, warns', 'heat, warns']);
        expect(search(all, 'packs')).toHaveLength(2);
        expect(search(all, 'save')[0]?.go).toEqual({ to: 'action', id: 'save' });
    });
});

describe('a number', () => {
    it('leads to its field from wherever it is pointed at', () => {
        document.body.innerHTML = '<p><span data-field="weight"><b>12</b> N</span></p>';
        expect(fieldAt(document.querySelector('b'))).toBe('weight');
        expect(fieldAt(document.querySelector('p'))).toBeUndefined();
        expect(fieldAt(null)).toBeUndefined();
    });
});
