import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, onTestFinished, test, vi } from 'vitest';
import { csvOf } from '../../src/core/csv';
import { curvesOf, zoneWords } from '../../src/core/curve';
import { spotsOf } from '../../src/core/faultNumbers';
import { arrowsOf, layElevation, lineName, standingOf, worstOf } from '../../src/core/faults';
import { meet, widthOf } from '../../src/core/labels';
import { layMatrix } from '../../src/core/matrixLayout';
import { labelOf, numbersOf } from '../../src/core/numbers';
import { firstOf } from '../../src/core/questions';
import type { Drawing, Elevation, Matrix, Section, Standing } from '../../src/core/wire';
import { Picture } from '../../src/pictures';
import { svgText } from '../../src/pictures/save';
import { seeded } from '../fakeBay';
import bare from './data/sandpiper.json';
import { amount, casesOf, elevation, FIELDS, heights, matrix } from './faults';
import { withTexts } from './texts';

const RIG = withTexts(bare.balance).sections.find(
    (each): each is Drawing => each.kind === 'drawing',
);
if (!RIG) throw new Error('no rig is drawn');
const cases = casesOf(RIG);

let home: HTMLElement;
beforeEach(() => {
    home = document.createElement('div');
    document.body.append(home);
});
afterEach(() => {
    render(null, home);
    home.remove();
});

interface Shown {
    onShow?: (part: string) => void;
    onChoose?: (failure: string) => void;
    chosen?: string;
}

function show(section: Section, { onShow = vi.fn(), onChoose, chosen }: Shown = {}): void {
    void act(() => {
        render(
            <Picture
                section={section}
                rig={RIG}
                fields={{ ...withTexts(bare.balance).fields, ...FIELDS }}
                units="si"
                fileName="f"
                onShow={onShow}
                chosen={chosen}
                onChoose={onChoose}
            />,
            home,
        );
    });
}

function drawnNumbers(where: string): number[] {
    return Array.from(home.querySelectorAll(`${where} [data-si]`), each =>
        Number(each.getAttribute('data-si')),
    );
}

function press(element: Element | undefined, key: string): void {
    void act(() => {
        element?.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
    });
}

function click(words: string): void {
    void act(() => {
        Array.from(home.querySelectorAll('button'))
            .find(each => each.textContent === words)
            ?.click();
    });
}

describe('a matrix of failures', () => {
    test('marks each number by shape and says its standing', () => {
        show(matrix);
        expect(home.querySelectorAll('.bar-row .standing.short')).toHaveLength(4);
        expect(home.querySelectorAll('.bar-row .standing.holds')).toHaveLength(6);
        expect(home.querySelectorAll('.bar-row .standing.untold')).toHaveLength(1);
        const rows = Array.from(home.querySelectorAll('.row-ground'));
        expect(rows[0]?.getAttribute('aria-label')).toContain(
            'left.1, fan stops: short. outcome turns over, short; lift over weight after it 1.02 (0.980 to 1.06), short',
        );
        expect(rows[2]?.getAttribute('aria-label')).toMatch(/impact speed 0.00 m\/s$/);
        expect(home.querySelector('.reading')?.textContent).toBe(
            'left.1, fan stops: short: outcome, lift over weight after it, roll reserve; cannot be told: impact speed. The same: fuse of left.1, controller of left.1.',
        );
    });

    test('shows the numbers of the answer and no others, drawn and as a table', () => {
        show(matrix);
        const all = matrix.lines.flatMap(line =>
            line.cells.flatMap(cell => (cell.value.si === undefined ? [] : [cell.value.si])),
        );
        expect(drawnNumbers('svg')).toEqual(all);
        click('as a table');
        expect(drawnNumbers('table')).toEqual(all);
        const table = home.querySelector('table')?.textContent ?? '';
        expect(table).toContain('short: lift over weight after it');
        expect(table).toContain('fuse of left.1, controller of left.1');
    });

    test('is walked by keys, one stop of the Tab key; Enter plays the line', () => {
        const onChoose = vi.fn();
        const onShow = vi.fn();
        show(matrix, { onChoose, onShow });
        const rows = Array.from(home.querySelectorAll<SVGElement>('.row-ground'));
        expect(rows.map(row => row.getAttribute('tabindex'))).toEqual(['0', '-1', '-1']);
        void act(() => {
            rows[0]?.focus();
        });
        press(rows[0], 'ArrowDown');
        expect(document.activeElement).toBe(rows[1]);
        press(rows[1], 'End');
        expect(document.activeElement).toBe(rows[2]);
        press(rows[2], 'Enter');
        expect(onChoose).toHaveBeenLastCalledWith('right.1, fan stops');
        expect(onShow).toHaveBeenLastCalledWith('right.1');
        show(matrix, { chosen: 'back.1, pack lost' });
        expect(
            Array.from(home.querySelectorAll('.row-ground'), row =>
                row.getAttribute('aria-pressed'),
            ),
        ).toEqual(['false', 'true', 'false']);
    });

    test('of many lines the first stand there, and all on demand', () => {
        const lines = Array.from({ length: 40 }, (_, k) => ({
            ...(matrix.lines[0] ?? { what: '', members: [], cells: [] }),
            part: `fan.${k}`,
        }));
        show({ ...matrix, lines });
        expect(home.querySelectorAll('.row-ground')).toHaveLength(16);
        click('all 40 lines');
        expect(home.querySelectorAll('.row-ground')).toHaveLength(40);
    });

    test('of any words no cell runs into its neighbour', () => {
        const random = seeded(7);
        const word = (): string => 'm'.repeat(1 + Math.floor(20 * random()));
        let marks = 0;
        onTestFinished(() => {
            vi.restoreAllMocks();
        });
        for (let n = 0; n < 25; n++) {
            const any: Matrix = {
                ...matrix,
                lines: matrix.lines.map(line => ({
                    ...line,
                    part: word(),
                    what: word(),
                    cells: line.cells.map(cell => ({
                        ...cell,
                        value: { ...cell.value, shown: word() },
                    })),
                })),
            };
            const room = Math.floor(300 + 900 * random());
            vi.spyOn(HTMLElement.prototype, 'clientWidth', 'get').mockReturnValue(room);
            const laid = layMatrix(any, FIELDS, room, 3);
            let left = laid.cellsAt > 0 ? 0 : laid.names; // a name stands beside its cells, or above them
            for (const column of laid.columns) {
                expect(column.x).toBeCloseTo(left, 9);
                left += column.width;
            }
            show(any);
            for (const row of Array.from(home.querySelectorAll('.bar-row'))) {
                const texts = Array.from(row.querySelectorAll('text'));
                const name = texts.at(-1)?.getAttribute('y');
                const cells = texts[0]?.getAttribute('y');
                const beside = name === cells ? texts : texts.slice(0, -1);
                const spans = beside
                    .map(text => {
                        const wide = widthOf(text.textContent);
                        const at = Number(text.getAttribute('x'));
                        const end = text.getAttribute('text-anchor') === 'end';
                        return end ? [at - wide, at] : [at, at + wide];
                    })
                    .sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0));
                spans.forEach((span, k) => {
                    expect(span[0] ?? 0).toBeGreaterThanOrEqual(spans[k - 1]?.[1] ?? 0);
                });
                for (const cell of Array.from(row.querySelectorAll('.cell'))) {
                    const place = cell.querySelector('.standing')?.getAttribute('transform') ?? '';
                    const mark = /^translate\(([\d.]+) /.exec(place)?.[1];
                    const text = cell.querySelector('text');
                    if (mark === undefined || text === null) continue;
                    const start = Number(text.getAttribute('x')) - widthOf(text.textContent);
                    expect(start, 'right of its mark').toBeGreaterThanOrEqual(Number(mark) + 12);
                    marks++;
                }
            }
        }
        expect(marks).toBeGreaterThan(100);
    });

    test('the worst standing of a line is found wherever it stands', () => {
        const random = seeded(11);
        const all: Standing[] = ['short', 'cannot be told', 'holds', 'told'];
        for (let n = 0; n < 200; n++) {
            const cells = Array.from({ length: 1 + Math.floor(5 * random()) }, () => ({
                value: amount('lift-after', random()),
                standing: all[Math.floor(4 * random())] ?? 'told',
            }));
            const line = { part: 'a', what: 'b', members: [], cells };
            const worst = Math.min(...cells.map(cell => all.indexOf(cell.standing)));
            expect(worstOf(line)).toBe(all[worst]);
            const said = standingOf(line, field => labelOf(FIELDS, field));
            expect(said.includes('short: ')).toBe(worst === 0);
            expect(lineName(line)).toBe('a, b');
        }
    });
});

describe('a failure on the rig', () => {
    test('is the one whose line was chosen; what is lost is crossed, and told', () => {
        const one = cases.cases[2];
        show(cases, { chosen: one?.label ?? '' });
        const lost = Array.from(home.querySelectorAll('[data-lost="true"]'));
        expect(lost.map(each => each.getAttribute('data-part'))).toEqual([cases.spots[2]?.part]);
        expect(lost[0]?.querySelector('.lost-cross')).not.toBeNull();
        expect(home.querySelectorAll('.filled').length).toBe(
            cases.spots.filter(spot => spot.kind === 'fan').length - 1,
        );
        expect(home.querySelector('.case-outcome')?.textContent).toBe(
            `${one?.label ?? ''}: flies on`,
        );
        const listed = Array.from(home.querySelectorAll('.ahead li'), each => each.textContent);
        expect(listed[0]).toBe(`fan lost:${cases.spots[2]?.part ?? ''}`);
    });

    test('tells the greatest shares of what is left, as numbers of the answer', () => {
        show(cases, { chosen: cases.cases[0]?.label ?? '' });
        const values = (cases.cases[0]?.values ?? [])
            .filter((_, k) => k > 0 && cases.spots[k]?.kind === 'fan')
            .sort((a, b) => b - a);
        expect(drawnNumbers('.ahead')).toEqual(values.slice(0, drawnNumbers('.ahead').length));
        expect(drawnNumbers('.ahead').length).toBe(3);
    });

    test('is stepped through by buttons and by name', () => {
        const onChoose = vi.fn();
        show(cases, { onChoose });
        click('next');
        expect(onChoose).toHaveBeenLastCalledWith(cases.cases[1]?.label);
        expect(home.querySelector('.case-outcome strong')?.textContent).toBe(cases.cases[1]?.label);
        const select = home.querySelector('select');
        if (!select) throw new Error('nothing to choose');
        void act(() => {
            select.value = '3';
            select.dispatchEvent(new Event('change', { bubbles: true }));
        });
        expect(onChoose).toHaveBeenLastCalledWith(cases.cases[3]?.label);
    });

    test('says so where a chosen line has no picture', () => {
        show(cases, { chosen: 'signal ground, opens' });
        expect(home.querySelector('.case-outcome')?.textContent).toContain(
            '(signal ground, opens is not drawn)',
        );
    });

    test('its table has a row a case, its file a column a part', () => {
        const [table] = numbersOf(cases, FIELDS);
        expect(table?.rows).toHaveLength(cases.cases.length);
        expect(table?.rows[0]?.[2]?.words).toBe(cases.spots[0]?.part);
        expect(table?.rows[0]?.[3]?.si).toBe(Math.max(...(cases.cases[0]?.values ?? [])));
        const csv = csvOf([spotsOf(cases)])
            .trim()
            .split('\r\n');
        expect(csv).toHaveLength(cases.cases.length + 1);
        expect(csv[1]).toContain(',lost,');
    });

    test('is saved as a picture that needs no style sheet', () => {
        show(cases);
        const text = svgText(Array.from(home.querySelectorAll<SVGSVGElement>('svg.drawn')));
        const root = new DOMParser().parseFromString(text, 'application/xml').documentElement;
        expect(root.querySelector('parsererror')).toBeNull();
        expect(text).not.toMatch(/data-part|role=|class=|style=/);
    });
});

describe('a side view', () => {
    test('is to scale, with the ground where it stands', () => {
        show(elevation);
        const spots = (d: string | null | undefined): number[][] =>
            Array.from((d ?? '').matchAll(/(-?[\d.]+) (-?[\d.]+)/g), found => [
                Number(found[1]),
                Number(found[2]),
            ]);
        const stand = spots(home.querySelector('.made')?.getAttribute('d'));
        const [a = [], b = [], c = []] = stand;
        const wide = (b[0] ?? 0) - (a[0] ?? 0);
        const high = (b[1] ?? 0) - (c[1] ?? 0);
        expect(high / wide).toBeCloseTo(2, 1);
        const rope = spots(home.querySelector('.rope')?.getAttribute('d'));
        expect((rope[1]?.[0] ?? 0) - (rope[0]?.[0] ?? 0)).toBeCloseTo(wide, 0);
        expect(rope[1]?.[1]).toBe(a[1]);
        const strip = spots(home.querySelector('path.taken')?.getAttribute('d'));
        expect(strip).toHaveLength(6); // torn at both ends
        expect(strip.every(spot => (spot[1] ?? 0) > (a[1] ?? 0))).toBe(true);
        const arrows = Array.from(home.querySelectorAll('line.thrust'));
        expect(arrows[0]?.getAttribute('x1')).toBe(arrows[0]?.getAttribute('x2'));
        expect(Number(arrows[0]?.getAttribute('y2'))).toBeLessThan(
            Number(arrows[0]?.getAttribute('y1')),
        );
        expect(home.querySelector('.loads')?.textContent).toContain(
            'lift, all at full: 900 N (880 to 920 N)',
        );
        expect(home.textContent).toContain('torn where it goes on: nobody within 4 m');
    });

    test('keeps out of what lies beyond an upright line; what presses down ends where it presses', () => {
        const wall: [number, number][] = [
            [-3, 0],
            [-3, 1],
        ];
        const any: Elevation = {
            ...elevation,
            shapes: [
                ...elevation.shapes.slice(1),
                { shape: 'keep out', label: 'nobody beyond', outline: wall, closed: false },
            ],
            loads: [
                { label: 'weight', at: [0, 0], across: 0, up: -100, value: amount('lift', 100) },
            ],
        };
        show(any);
        const laid = layElevation(any, FIELDS, 680, 400);
        const strip = home.querySelector('path.taken')?.getAttribute('d') ?? '';
        const xs = Array.from(strip.matchAll(/[ML](-?[\d.]+) /g), found => Number(found[1]));
        const at = laid.left + (-3 - laid.leftM) * laid.perM;
        expect(Math.max(...xs)).toBeCloseTo(at, 0);
        expect(Math.min(...xs)).toBeCloseTo(laid.left, 0);
        expect(arrowsOf(any, laid)[0]?.to[1]).toBeCloseTo(laid.bottom, 6);
    });

    test('no words lie on others, and no arrow leaves it, of any things', () => {
        const random = seeded(5);
        const kinds = ['stand', 'person', 'line', 'down line', 'reach', 'beam', 'mat'] as const;
        for (let n = 0; n < 25; n++) {
            const size = Math.pow(10, 3 * random() - 1);
            const spot = (): [number, number] => [size * (random() - 0.5), size * random()];
            const any: Elevation = {
                ...elevation,
                shapes: Array.from({ length: 1 + Math.floor(6 * random()) }, (_, k) => ({
                    shape: kinds[k % kinds.length] ?? 'stand',
                    label: 'w'.repeat(Math.floor(24 * random())),
                    outline: [spot(), spot()],
                    closed: false,
                })),
                loads: Array.from({ length: Math.floor(6 * random()) }, (_, k) => ({
                    label: `pull ${k}`,
                    at: spot(),
                    across: 200 * (random() - 0.5),
                    up: 200 * (random() - 0.5),
                    value: amount('lift', 100),
                })),
            };
            const laid = layElevation(any, FIELDS, 300 + 400 * random(), 400);
            for (const { to } of arrowsOf(any, laid)) {
                expect(to[0]).toBeGreaterThanOrEqual(-1);
                expect(to[0]).toBeLessThanOrEqual(laid.width + 11);
                expect(to[1]).toBeLessThanOrEqual(laid.height);
            }
            show(any);
            const boxes = Array.from(home.querySelectorAll('text.placed'), text => {
                const half = widthOf(text.textContent) / 2;
                const [x, y] = [Number(text.getAttribute('x')), Number(text.getAttribute('y'))];
                return { left: x - half, right: x + half, top: y - 11, bottom: y + 3 };
            });
            boxes.forEach((box, k) => {
                expect(boxes.slice(0, k).some(other => meet(box, other))).toBe(false);
            });
        }
    });

    test('is two tables too: what pulls, and how far each thing reaches', () => {
        const [loads, places] = numbersOf(elevation, FIELDS);
        expect(loads?.rows.map(row => row.map(cell => cell.si))).toEqual([
            [undefined, 900, 0, 900, 0, 2],
            [undefined, 225, 225, 0, 0, 2],
        ]);
        expect(places?.rows.map(row => row.slice(2).map(cell => cell.si))).toEqual([
            [-4, 4, 0, 0],
            [-0.5, 0.5, 0, 2],
            [0.5, 1.5, 0, 2],
            [1.5, 1.5, 0, 0],
        ]);
    });
});

describe('zones of a plot', () => {
    test('are hatched behind the curves, named with their ends, and counted by the axis', () => {
        show(heights);
        const curves = curvesOf(heights, FIELDS);
        expect(zoneWords(curves, curves.zones[0] ?? { label: '', from: 0, to: 1 })).toBe(
            'nothing helps, 2.0 to 6.0 m',
        );
        expect(home.textContent).toContain('nothing helps, 2.0 to 6.0 m');
        const drawn = Array.from(home.querySelectorAll('rect.zone')).at(-1);
        const wide = Number(drawn?.getAttribute('width'));
        expect(wide / (420 - 52 - 12)).toBeCloseTo(4 / 11, 2);
        const beyond = { ...heights, zones: [{ label: 'far', from: 20, to: 30 }] };
        expect(curvesOf(beyond, FIELDS).x.high).toBeGreaterThan(30);
    });

    test('stand in a table of their own', () => {
        const zones = numbersOf(heights, FIELDS).at(-1);
        expect(zones?.rows.map(row => row.map(cell => cell.si ?? cell.words))).toEqual([
            ['nothing helps', 2, 6],
        ]);
        expect(csvOf(zones ? [zones] : [])).toContain('nothing helps,2,6');
    });
});

test('pictures of an answer stand open in the order in which they are read', () => {
    const table: Section = { kind: 'table', id: 'pairs', title: 'Pairs', columns: [], rows: [] };
    const other = { ...elevation, id: 'tether-elevation' };
    expect(firstOf('failures', [table, cases, matrix]).map(each => each.id)).toEqual([
        'failures',
        'failure-cases',
    ]);
    expect(firstOf('restraint', [other, table, heights, elevation]).map(each => each.id)).toEqual([
        'restraint-elevation',
        'heights',
        'tether-elevation',
    ]);
});
