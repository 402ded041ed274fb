import { describe, expect, test } from 'vitest';
import {
    axisOf,
    numeral,
    roundBelow,
    roundStep,
    shareOn,
    shownOn,
    ticks,
} from '../../src/core/axis';
import { columns, curvesOf, valueAt } from '../../src/core/curve';
import type { Plot } from '../../src/core/wire';
import { forSeeds, must } from './random';

const CELSIUS = { label: 'air', unit: '°C', per: 1, plus: -273.15 };
const FEET = { label: 'length', unit: 'ft', per: 1 / 0.3048, plus: 0 };

describe('axes', () => {
    test('hold every value, in the units of the reader', () => {
        forSeeds(300, random => {
            const size = 10 ** random.between(-6, 6);
            const values = Array.from({ length: random.whole(1, 20) }, () =>
                random.between(-size, size),
            );
            const field = random.of([CELSIUS, FEET, undefined]);
            const axis = axisOf(field, 'x', values);
            for (const si of values) {
                const share = shareOn(axis, si);
                must(share > 0 && share < 1, `${si} lies beyond`);
                const { per, plus } = field ?? { per: 1, plus: 0 };
                must(shownOn(axis, si) === si * per + plus, `${si} is shown as another`);
            }
        });
    });

    test('ticks are round, even, few, and their numerals say what they are', () => {
        forSeeds(300, random => {
            const size = 10 ** random.between(-6, 6);
            const axis = axisOf(FEET, 'x', [
                random.between(-size, size),
                random.between(-size, size),
            ]);
            const all = ticks(axis.low, axis.high, axis.step);
            expect(all.length).toBeGreaterThanOrEqual(2);
            expect(all.length).toBeLessThanOrEqual(9);
            const lead = axis.step / 10 ** Math.floor(Math.log10(axis.step) + 1e-9);
            expect([1, 2, 5, 10].some(round => Math.abs(lead - round) < 1e-6)).toBe(true);
            for (const tick of all) {
                expect(tick).toBeGreaterThanOrEqual(axis.low - 1e-9 * axis.step);
                expect(tick).toBeLessThanOrEqual(axis.high + 1e-9 * axis.step);
                const read = Number(numeral(tick, axis.step).replace('−', '-'));
                expect(Math.abs(read - tick)).toBeLessThan(1e-6 * axis.step);
            }
        });
    });

    test('what is counted has no ticks between', () => {
        expect(axisOf(undefined, 'flights', [0, 1, 3]).step).toBe(1);
        expect(axisOf(undefined, 'flights', [0, 80]).step).toBe(20);
        expect(axisOf(undefined, 'lift over weight', [0, 1.1, 3]).step).toBe(0.5);
        expect(axisOf(CELSIUS, 'air', [273.15, 275.15]).step).toBeLessThan(1);
    });

    test('round lengths', () => {
        expect([0.9, 1, 1.1, 2.1, 5.1, 0.03].map(roundStep)).toEqual([1, 1, 2, 5, 10, 0.05]);
        expect([0.9, 1, 1.9, 2.1, 5.1, 99].map(roundBelow)).toEqual([0.5, 1, 1, 2, 5, 50]);
    });

    test('no minus before nothing, a true minus elsewhere', () => {
        expect(numeral(-0.0001, 0.1)).toBe('0.0');
        expect(numeral(-12, 5)).toBe('−12');
        expect(ticks(-1, 1, 1)).toEqual([-1, 0, 1]);
        expect(Object.is(ticks(-1, 1, 1)[1], 0)).toBe(true);
    });
});

describe('curves', () => {
    const plot: Plot = {
        kind: 'plot',
        id: 'c',
        title: 'Charge',
        x: { field: 'time', unit: 's' },
        y: { field: 'charge-left', unit: '1' },
        series: [
            {
                label: 'line',
                mark: 'line',
                points: [
                    [10, 0.5],
                    [0, 1],
                    [20, 0],
                ],
            },
            { label: 'end', mark: 'cross', points: [[15, 0.25]] },
        ],
    };

    test('become columns over one x, with gaps where a series has no point', () => {
        const curves = curvesOf(plot, {});
        expect(columns(curves)).toEqual([
            [0, 10, 15, 20],
            [1, 0.5, null, 0],
            [null, null, 0.25, null],
        ]);
        expect(curves.steps).toEqual([
            [0, 1],
            [10, 0.5],
            [20, 0],
        ]);
    });

    test('keep both ends of a step', () => {
        const stairs: Plot = {
            ...plot,
            series: [
                {
                    label: 'stairs',
                    mark: 'line',
                    points: [
                        [0, 2],
                        [1, 2],
                        [1, 5],
                        [2, 5],
                        [2, 0],
                    ],
                },
                { label: 'end', mark: 'cross', points: [[1, 3]] },
            ],
        };
        expect(columns(curvesOf(stairs, {}))).toEqual([
            [0, 1, 1, 2, 2],
            [2, 2, 5, 5, 0],
            [null, 3, null, null, null],
        ]);
    });

    test('are straight between their points, and nothing beyond', () => {
        const { steps } = curvesOf(plot, {});
        expect(valueAt(steps, 5)).toBeCloseTo(0.75, 12);
        expect(valueAt(steps, 0)).toBe(1);
        expect(valueAt(steps, 20)).toBe(0);
        expect(valueAt(steps, -1)).toBeUndefined();
        expect(valueAt(steps, 21)).toBeUndefined();
    });
});
