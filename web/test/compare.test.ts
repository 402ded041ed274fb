import { describe, expect, it } from 'vitest';
import { movedWords, shiftShort, shiftsOf, shiftWords } from '../src/core/before';
import { besidePlot, besideRows, besideWords } from '../src/core/besides';
import {
    changesOf,
    declaredStop,
    otherBody,
    otherName,
    otherNamed,
    type Sensitivity,
} from '../src/core/compare';
import type { Scene } from '../src/core/scene';
import type { Plot, Value, Waterfall } from '../src/core/wire';
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

describe('two revisions in one picture', () => {
    const amount = (si: number): Value => ({
        field: 'lift',
        kind: 'amount',
        si,
        unit: 'N',
        shown: `${si} N`,
        shownBand: '',
    });
    const fall = (rated: number, steps: Record<string, number>): Waterfall => {
        const sum = Object.values(steps).reduce((all, one) => all + one, rated);
        const step = (label: string, si: number) => ({ label, value: amount(si), note: '' });
        return {
            kind: 'waterfall',
            id: 'lift-waterfall',
            title: 'From rated thrust to usable lift',
            start: step('rated thrust', rated),
            steps: Object.entries(steps).map(([label, si]) => step(label, si)),
            end: step('usable lift', sum),
            against: step('weight', 50),
        };
    };

    it('puts the steps of a waterfall beside each other by their names, whichever has them', () => {
        const rows = besideRows(
            fall(100, { intake: -5, cant: -3 }),
            fall(110, { intake: -5, installation: -8 }),
        );
        expect(rows.map(besideWords)).toEqual([
            '110 N, was 100 N',
            '-5 N',
            'none, was -3 N',
            '-8 N, was none',
            '97 N, was 92 N',
            '50 N',
        ]);
        // Each bar hangs where its own sum stands.
        expect(rows.map(row => [row.now?.to, row.was?.to])).toEqual([
            [110, 100],
            [105, 95],
            [undefined, 92],
            [97, undefined],
            [97, 92],
            [50, 50],
        ]);
    });

    it('tells lines of before from lines of now, and what both have once', () => {
        const line = (label: string, y: number) => ({
            label,
            mark: 'line' as const,
            points: [
                [0, y],
                [1, y],
            ] as [number, number][],
        });
        const plot = (...series: ReturnType<typeof line>[]): Plot => ({
            kind: 'plot',
            id: 'p',
            title: 'Charge',
            x: { field: 'time', unit: 's' },
            y: { field: 'charge-left', unit: '1' },
            series,
        });
        const both = besidePlot(
            plot(line('cell', 1), line('limit', 0)),
            plot(line('cell', 2), line('limit', 0)),
        );
        expect(both?.series.map(each => each.label)).toEqual([
            'cell, now',
            'cell, before',
            'limit',
        ]);
        const many = [1, 2, 3].map(k => line(`l${k}`, k));
        const other = [1, 2, 3].map(k => line(`l${k}`, k + 9));
        expect(besidePlot(plot(...many), plot(...other))).toBeUndefined();
    });

    it('tells how far and which way a part moved, and how it turned', () => {
        const fields = {};
        const fan = (forward: number, lean: number): Scene['fans'][number] => ({
            id: 'left.1',
            rightHand: true,
            at: at(forward),
            tipM: 0.1,
            thrust: undefined,
            thrustN: 1,
            push: { forward: Math.sin(lean), right: 0, up: Math.cos(lean) },
        });
        const of = (one: Scene['fans'][number]) => ({ ...scene({ a: 0 }), fans: [one] });
        const [moved] = shiftsOf(of(fan(0, 0)), of(fan(0.04, 0.1)));
        expect(moved?.farM).toBeCloseTo(0.04, 12);
        expect(moved?.turnRad).toBeCloseTo(0.1, 9);
        expect(moved && shiftWords(moved, fields)).toMatch(/forward.*; turned by 5\.7°$/);
        const [turned] = shiftsOf(of(fan(0, 0)), of(fan(0, 0.1)));
        expect(turned?.kind).toBe('turned');
        expect(turned && shiftShort(turned, fields)).toBe('5.7°');
        expect(shiftsOf(of(fan(0, 0.2)), of(fan(0, 0.2)))).toEqual([]);
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
