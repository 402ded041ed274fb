import { describe, expect, test } from 'vitest';
import { holds, moved, spanOver, within, zoomed, type Span } from '../../src/core/span';
import { stripDrawn } from '../../src/core/stripDrawn';
import { farthestOutside, stripNumbers } from '../../src/core/stripNumbers';
import {
    envelopeLines,
    envelopeOf,
    measuredOf,
    momentOf,
    momentWords,
    rangeOf,
    seen,
    type Ground,
} from '../../src/core/strips';
import { seeded } from '../fakeBay';
import { strip, strips } from '../tests';
import { FIELDS } from './faults';

const random = seeded(9);
const between = (low: number, high: number) => low + (high - low) * random();

describe('a span', () => {
    test('keeps the moment under the hand, and never leaves the whole', () => {
        let nearer = 0;
        for (let i = 0; i < 2000; i++) {
            const whole: Span = { from: between(-90, 0), to: between(1, 4000) };
            const from = between(whole.from, whole.to - 0.5);
            const span = within({ from, to: from + between(0.1, 60) }, whole);
            const about = between(span.from, span.to);
            const share = (about - span.from) / (span.to - span.from);
            const factor = between(0.2, 3);
            const next = zoomed(span, whole, about, factor);
            expect(next.from).toBeGreaterThanOrEqual(whole.from);
            expect(next.to).toBeLessThanOrEqual(whole.to + 1e-9);
            if (factor < 1 && next.to - next.from > 1.1e-3) {
                nearer++;
                expect(next.from + share * (next.to - next.from)).toBeCloseTo(about, 6);
                expect(next.to - next.from).toBeCloseTo(factor * (span.to - span.from), 6);
            }
            const along = moved(span, whole, between(-3, 3));
            expect(along.to - along.from).toBeCloseTo(span.to - span.from, 6);
            expect(along.from).toBeGreaterThanOrEqual(whole.from);
        }
        expect(nearer).toBeGreaterThan(300);
    });

    test('that is all of it is the whole to the last digit', () => {
        for (let i = 0; i < 500; i++) {
            const whole: Span = { from: between(-90, 0), to: between(1, 4000) };
            expect(within({ ...whole }, whole)).toEqual(whole);
            const about = between(whole.from, whole.to);
            const near = zoomed(whole, whole, about, 0.5);
            expect(zoomed(near, whole, about, 9)).toEqual(whole);
        }
    });

    test('over nothing is a second, and over one moment as well', () => {
        expect(spanOver([])).toEqual({ from: 0, to: 1 });
        expect(spanOver([[], [7]])).toEqual({ from: 7, to: 8 });
        expect(spanOver([[3, 4], [1, 2], []])).toEqual({ from: 1, to: 4 });
    });
});

/** A recording with gaps, thinned as the server does. */
function randomStretch(points: number) {
    const times: number[] = [];
    const low: number[] = [];
    const high: number[] = [];
    let time = 0;
    for (let k = 0; k < points; k++) {
        time += random() < 0.05 ? between(3, 9) : between(0.05, 0.15);
        const value = between(-40, 90);
        times.push(time);
        low.push(value);
        high.push(random() < 0.5 ? value : value + between(0, 30));
    }
    return { channel: 'c', times, low, high };
}

describe('an envelope', () => {
    test('draws least and greatest of every stretch that is looked at, and nothing over a gap', () => {
        let gaps = 0;
        for (let i = 0; i < 300; i++) {
            const stretch = randomStretch(2 + Math.floor(200 * random()));
            const line = envelopeOf(stretch);
            const last = stretch.times.at(-1) ?? 1;
            const from = between(0, last / 2);
            const span = { from, to: from + between(last / 10, last / 2) };
            const one = { ...strip('c'), times: [], measured: [], expected: [], low: [], high: [] };
            const y = rangeOf(one, [line], span, FIELDS);
            const ground: Ground = { span, y, width: 500, height: 100 };
            const lines = envelopeLines(line, ground);
            const points = lines.flatMap(each =>
                each.flatMap((x, k) => (k % 2 === 0 ? [[x, each[k + 1] ?? NaN] as const] : [])),
            );
            const value = (py: number) => y.low + (1 - py / 100) * (y.high - y.low);
            const time = (px: number) => span.from + (px / 500) * (span.to - span.from);
            for (const [k, t] of stretch.times.entries()) {
                if (!holds(span, t)) continue;
                const here = points.filter(([x]) => Math.abs(time(x) - t) < 1e-9);
                const drawn = here.map(([, py]) => value(py));
                expect(Math.min(...drawn)).toBeCloseTo(stretch.low[k] ?? NaN, 6);
                expect(Math.max(...drawn)).toBeCloseTo(stretch.high[k] ?? NaN, 6);
                for (const [, py] of here) {
                    expect(py).toBeGreaterThanOrEqual(0);
                    expect(py).toBeLessThanOrEqual(100);
                }
            }
            for (const each of lines) {
                for (let k = 2; k < each.length; k += 2) {
                    const step = time(each[k] ?? 0) - time(each[k - 2] ?? 0);
                    expect(step).toBeLessThanOrEqual(line.joins + 1e-9);
                }
            }
            gaps += lines.length - 1;
        }
        expect(gaps).toBeGreaterThan(100);
    });

    test('leaves at the edges of the picture', () => {
        expect(seen([0, 1, 2, 3, 4], { from: 1.5, to: 2.5 })).toEqual([1, 3]);
        expect(seen([0, 1, 2], { from: -5, to: -4 })).toEqual([0, 0]);
        expect(seen([0, 1, 2], { from: 7, to: 8 })).toEqual([2, 2]);
    });
});

describe('a moment', () => {
    const one = strip('thrust left.1');
    const y = rangeOf(one, [measuredOf(one)], { from: 0, to: 4 }, FIELDS);

    test('says what was measured, expected, and between which values, with units', () => {
        const told = momentOf(one, measuredOf(one), 2.2);
        expect(told.measured).toEqual([22, 22]);
        expect(told.expected).toBeCloseTo(24.2);
        expect(momentWords(told, y)).toBe('measured 22.00 N, expected 24.20 N (22.70 to 25.70 N)');
    });

    test('says of a thinned stretch its least and greatest', () => {
        const line = envelopeOf({
            channel: 'c',
            times: [0, 1, 2],
            low: [1, 2, 3],
            high: [1, 7, 3],
        });
        expect(momentWords(momentOf({ ...one, times: [] }, line, 0.9), y)).toBe(
            'measured 2.00 to 7.00 N',
        );
    });

    test('far from every sample is nothing', () => {
        const line = envelopeOf({
            channel: 'c',
            times: [0, 0.1, 0.2, 9, 9.1],
            low: [1, 2, 3, 4, 5],
            high: [1, 2, 3, 4, 5],
        });
        expect(momentWords(momentOf({ ...one, times: [] }, line, 5), y)).toBe(
            'nothing recorded here',
        );
    });
});

describe('the table of strips', () => {
    test('has events in their order, and where a channel lies farthest outside its band', () => {
        const section = strips(
            ['thrust left.1', 'thrust left.2'],
            [
                { time: 3, label: 'fan left.1 stops', part: 'left.1' },
                { time: 1, label: 'throttle is given', part: '' },
            ],
        );
        const first = section.strips[0];
        if (first === undefined) throw new Error('no strip');
        first.measured[2] = 10; // 12.5 below its band
        const [events, channels] = stripNumbers(section, FIELDS);
        expect(events?.rows.map(row => row[1]?.words)).toEqual([
            'throttle is given',
            'fan left.1 stops',
        ]);
        expect(farthestOutside(first)).toBe(2);
        expect(channels?.rows[0]?.map(cell => cell.si)).toEqual([
            undefined,
            undefined,
            10,
            24,
            2,
            10,
            24,
        ]);
        expect(channels?.rows[1]?.[4]?.words).toBe('0.00 s');
        const quiet = { ...first, measured: first.expected };
        expect(farthestOutside(quiet)).toBeUndefined();
    });
});

test('a strip without anything measured or expected is drawn empty', () => {
    const bare = { ...strip('x'), times: [], measured: [], expected: [], low: [], high: [] };
    const drawn = stripDrawn({
        strip: bare,
        measured: measuredOf(bare),
        beside: undefined,
        events: [],
        span: { from: 0, to: 1 },
        fields: {},
        width: 300,
        height: 100,
    });
    expect([drawn.measured, drawn.expected, drawn.band]).toEqual([[], [], []]);
    expect(drawn.acrosses.length).toBeGreaterThan(0);
});
