import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Part, Section, Table, Value } from '../../src/core/wire';
import { Picture, RigViews, type Drag } from '../../src/pictures';
import { svgText } from '../../src/pictures/save';
import bare from './data/sandpiper.json';
import { withTexts } from './texts';

const DOCS = Object.values(bare).map(withTexts);
const SECTIONS = DOCS.flatMap(doc => doc.sections);
const FIELDS = Object.assign({}, ...DOCS.map(doc => doc.fields)) as (typeof DOCS)[0]['fields'];

let home: HTMLElement;
beforeEach(() => {
    home = document.createElement('div');
    document.body.append(home);
});
afterEach(() => {
    render(null, home);
    home.remove();
});

function section<K extends Section['kind']>(kind: K, id: string): Extract<Section, { kind: K }> {
    const found = SECTIONS.find(each => each.kind === kind && each.id === id);
    if (!found) {
        throw new Error(`no ${kind} ${id}`);
    }
    return found as Extract<Section, { kind: K }>;
}

function show(of: Section, onShow = vi.fn()): void {
    void act(() => {
        render(
            <Picture section={of} fields={FIELDS} units="si" fileName="f" onShow={onShow} />,
            home,
        );
    });
}

function click(label: RegExp | string): void {
    const button = Array.from(home.querySelectorAll('button')).find(each =>
        (each.getAttribute('aria-label') ?? each.textContent).match(label),
    );
    if (!button) {
        throw new Error(`no button ${String(label)}`);
    }
    void act(() => {
        button.click();
    });
}

/** Numbers on the page by field: every digit, and the words beside them. */
function numbers(selector: string): { field: string; si: number; words: string }[] {
    return Array.from(home.querySelectorAll(selector), each => ({
        field: each.getAttribute('data-field') ?? '',
        si: Number(each.getAttribute('data-si')),
        words: each.textContent,
    }));
}

function amounts(values: readonly Value[]): { field: string; si: number }[] {
    return values
        .filter(value => value.kind === 'amount')
        .map(({ field, si }) => ({ field, si: si ?? NaN }));
}

function bareOf(list: ReturnType<typeof numbers>): { field: string; si: number }[] {
    return list.map(({ field, si }) => ({ field, si }));
}

describe('a waterfall', () => {
    const waterfall = section('waterfall', 'lift-waterfall');
    const steps = [waterfall.start, ...waterfall.steps, waterfall.end, waterfall.against];

    test('shows every number of the answer, with its words, drawn and as a table', () => {
        show(waterfall);
        const wanted = amounts(steps.map(step => step.value));
        const drawn = numbers('svg [data-si]');
        expect(bareOf(drawn)).toEqual(wanted);
        drawn.forEach(({ words }, k) => {
            expect(words).toContain(steps[k]?.value.shown);
        });
        click(/as a table/);
        expect(bareOf(numbers('td[data-si]'))).toEqual(wanted);
        expect(home.querySelectorAll('tbody tr')).toHaveLength(steps.length);
        for (const step of steps) {
            expect(home.querySelector('table')?.textContent).toContain(step.note);
        }
    });

    test('tells a step’s note when it is focused, and walks by arrow keys', () => {
        show(waterfall);
        const rows = Array.from(home.querySelectorAll<SVGElement>('.bar-row'));
        expect(rows.map(row => row.getAttribute('tabindex'))).toEqual(
            rows.map((_, k) => (k === 0 ? '0' : '-1')),
        );
        void act(() => {
            rows[0]?.focus();
        });
        expect(home.querySelector('.picture-key')?.textContent).toBe(waterfall.start.note);
        void act(() => {
            rows[0]?.dispatchEvent(
                new KeyboardEvent('keydown', { key: 'ArrowDown', bubbles: true }),
            );
        });
        expect(document.activeElement).toBe(rows[1]);
        expect(rows[1]?.getAttribute('aria-label')).toContain(waterfall.steps[0]?.note);
    });

    test('key T turns to the table and back, unless with Ctrl', () => {
        show(waterfall);
        const press = (init: KeyboardEventInit): void => {
            void act(() => {
                home.querySelector('.bar-row')?.dispatchEvent(
                    new KeyboardEvent('keydown', { bubbles: true, ...init }),
                );
            });
        };
        press({ key: 't', ctrlKey: true });
        expect(home.querySelector('table')).toBeNull();
        press({ key: 't' });
        expect(home.querySelector('table')).not.toBeNull();
        press({ key: 't' });
        expect(home.querySelector('table')).toBeNull();
    });
});

describe('a ledger', () => {
    const ledger = section('table', 'roll-ledger');

    test('shows causes and their sum with their numbers, and which way is which', () => {
        show(ledger);
        const column = ledger.rows.map(row => row[1]).filter(value => value !== undefined);
        expect(bareOf(numbers('svg [data-si]'))).toEqual(amounts(column));
        const words = home.querySelector('svg')?.textContent;
        expect(words).toContain('← left side down');
        expect(words).toContain('right side down →');
        click(/as a table/);
        expect(bareOf(numbers('td[data-si]'))).toEqual(amounts(column));
    });
});

describe('a table', () => {
    test('shows every number, and its parts can be looked at', () => {
        const fans = section('table', 'fans');
        const onShow = vi.fn();
        show(fans, onShow);
        expect(bareOf(numbers('td[data-si]'))).toEqual(amounts(fans.rows.flat()));
        click('corner.2');
        expect(onShow).toHaveBeenCalledWith('corner.2');
    });
});

describe('a curve', () => {
    test('without a canvas is drawn as a vector picture, its table holds every point', () => {
        const plot = section('plot', 'charge-over-time');
        show(plot);
        expect(home.querySelector('svg.drawn')?.getAttribute('aria-label')).toContain(plot.title);
        click(/as a table/);
        const points = plot.series.flatMap(series => series.points.flat());
        expect(numbers('td[data-si]').map(({ si }) => si)).toEqual(points);
        const first = home.querySelectorAll('table');
        expect(first).toHaveLength(plot.series.length);
        expect(first[1]?.querySelector('td:nth-child(2)')?.textContent).toMatch(/^100\.?0*$/);
    });
});

describe('a drawn rig', () => {
    const drawing = section('drawing', 'rig-drawn');
    const part = (id: string, more: Partial<Part> = {}): Part => ({
        id,
        kind: 'fan',
        path: `fans/${id}`,
        line: 1,
        from: 0,
        to: 1,
        movable: true,
        ...more,
    });
    const parts = [
        part('corner.1', { twin: 'corner.4' }),
        part('corner.2', { movable: false, why: 'It is declared by a ring.' }),
    ];

    function rig(onDrag: (drag: Drag) => void | Promise<void>, onShow = vi.fn()): void {
        void act(() => {
            render(
                <RigViews
                    drawing={drawing}
                    fields={FIELDS}
                    units="si"
                    fileName="f"
                    parts={parts}
                    about={SECTIONS}
                    marked={['corner.3']}
                    onShow={onShow}
                    onDrag={onDrag}
                />,
                home,
            );
        });
    }
    function hand(id: string, view = 'from above'): SVGElement {
        const found = home.querySelector<SVGElement>(
            `svg[aria-label$="${view}"] [data-part="${id}"]`,
        );
        if (!found) {
            throw new Error(`no ${id} ${view}`);
        }
        return found;
    }
    function press(id: string, key: string, more: KeyboardEventInit = {}): void {
        void act(() => {
            hand(id).dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, ...more }));
        });
    }
    function pointer(id: string, type: string, x: number, y: number): void {
        const at = hand(id);
        at.setPointerCapture = vi.fn();
        void act(() => {
            at.dispatchEvent(
                new PointerEvent(type, { bubbles: true, clientX: x, clientY: y, pointerId: 1 }),
            );
        });
    }
    const fans = drawing.layers.find(layer => layer.id === 'drawn-fans');
    const placeOf = (id: string) => {
        const row = fans?.rows.find(each => each[0]?.text === id);
        const si = (field: string): number => row?.[fans?.columns.indexOf(field) ?? -1]?.si ?? NaN;
        return {
            forwardM: si('place-forward'),
            rightM: si('place-right'),
            upM: si('place-up'),
        };
    };

    test('names every part with its spin, and what is known of the one looked at', () => {
        const onShow = vi.fn();
        rig(vi.fn(), onShow);
        expect(home.querySelectorAll('svg.view')).toHaveLength(3);
        const label = hand('corner.1').getAttribute('aria-label');
        expect(label).toMatch(/^corner\.1, fan, (left|right)-hand, /);
        void act(() => {
            hand('corner.2').focus();
        });
        const known = home.querySelector('.telling')?.textContent ?? '';
        expect(known).toContain('It is declared by a ring.');
        expect(known).toContain('fan voltage');
        press('corner.2', 'Enter');
        expect(onShow).toHaveBeenCalledWith('corner.2');
        expect(home.querySelectorAll('.marked')).toHaveLength(3);
    });

    test('a mount is dragged by a name no part can have, and shown by its own', () => {
        const value = (name: string, more: Partial<Value>): Value => ({
            field: name,
            kind: 'amount',
            shown: '',
            shownBand: '',
            ...more,
        });
        const columns = ['part', 'place-forward', 'place-right', 'place-up'];
        const mount = [
            value('part', { kind: 'words', text: 'mounts/back', shown: 'mounts/back' }),
            ...columns.slice(1).map(column => value(column, { si: 0.1, unit: 'm' })),
        ];
        const layer: Table = {
            kind: 'table',
            id: 'drawn-mounts',
            title: 'Mounts',
            columns,
            rows: [mount],
        };
        const drags: Drag[] = [];
        const onShow = vi.fn();
        void act(() => {
            render(
                <RigViews
                    drawing={{ ...drawing, layers: [...drawing.layers, layer] }}
                    fields={FIELDS}
                    units="si"
                    fileName="f"
                    parts={[part('back', { kind: 'mount' })]}
                    selected="back"
                    onShow={onShow}
                    onDrag={drag => {
                        drags.push(drag);
                    }}
                />,
                home,
            );
        });
        expect(hand('mounts/back').getAttribute('aria-label')).toBe('back, mount');
        expect(home.querySelector('.chosen-name')?.textContent).toBe('back');
        press('mounts/back', 'Enter');
        expect(onShow).toHaveBeenCalledWith('back');
        press('mounts/back', 'ArrowLeft');
        expect(drags[0]?.part).toBe('mounts/back');
        expect(drags[0]?.to.rightM).toBeCloseTo(0.095, 9);
    });

    test('one view can be had alone, and all of them again', () => {
        rig(vi.fn());
        click('from above: larger');
        const only = home.querySelectorAll('svg.view');
        expect(only).toHaveLength(1);
        expect(only[0]?.getAttribute('aria-label')).toContain('from above');
        click('from above: larger');
        expect(home.querySelectorAll('svg.view')).toHaveLength(3);
    });

    test('one stop of the Tab key in each view; Page Down walks by name', () => {
        rig(vi.fn());
        for (const svg of Array.from(home.querySelectorAll('svg.view'))) {
            expect(svg.querySelectorAll('[tabindex="0"]')).toHaveLength(1);
        }
        void act(() => {
            hand('corner.1').focus();
        });
        press('corner.1', 'PageDown');
        expect(document.activeElement?.getAttribute('data-part')).toBe('corner.2');
    });

    test('as a table it holds every number of every layer', () => {
        rig(vi.fn());
        click(/as a table/);
        expect(bareOf(numbers('td[data-si]'))).toEqual(
            amounts(drawing.layers.flatMap(layer => layer.rows.flat())),
        );
    });

    test('a drag tells where the hand is, that it may snap, and its drop', () => {
        const drags: Drag[] = [];
        rig(drag => {
            drags.push(drag);
        });
        pointer('corner.1', 'pointerdown', 100, 100);
        pointer('corner.1', 'pointermove', 101, 101);
        expect(drags).toHaveLength(0);
        pointer('corner.1', 'pointermove', 130, 80);
        expect(home.querySelectorAll('.ghost .disk')).toHaveLength(2 * 3); // with its twin
        pointer('corner.1', 'pointerup', 130, 80);
        expect(drags.map(drag => drag.phase)).toEqual(['moving', 'over']);
        const from = placeOf('corner.1');
        const to = drags[1]?.to ?? from;
        expect(to.rightM).toBeGreaterThan(from.rightM);
        expect(to.forwardM).toBeGreaterThan(from.forwardM);
        expect(to.upM).toBe(from.upM);
        expect(drags[1]?.snap).toBe(true);
        expect(drags[1]?.twin).toBe(true);
        expect(home.querySelector('.ghost')).toBeNull();
    });

    test('a drag says whether the whole group goes along', () => {
        const drags: Drag[] = [];
        rig(drag => {
            drags.push(drag);
        });
        const drop = () => {
            pointer('corner.1', 'pointerdown', 100, 100);
            pointer('corner.1', 'pointermove', 130, 80);
            pointer('corner.1', 'pointerup', 130, 80);
            return drags.at(-1)?.whole ?? false;
        };
        expect(drop()).toBe(false);
        const label = [...home.querySelectorAll('label')].find(each =>
            each.textContent.includes('whole group'),
        );
        void act(() => {
            label?.querySelector('input')?.click();
        });
        expect(drop()).toBe(true);
    });

    test('Escape puts it back, and the pointer that is still down moves it no more', () => {
        const drags: Drag[] = [];
        rig(drag => {
            drags.push(drag);
        });
        pointer('corner.1', 'pointerdown', 100, 100);
        pointer('corner.1', 'pointermove', 150, 100);
        press('corner.1', 'Escape');
        pointer('corner.1', 'pointermove', 200, 100);
        pointer('corner.1', 'pointerup', 200, 100);
        expect(drags.map(drag => drag.phase)).toEqual(['moving', 'off']);
    });

    test('what cannot be moved is chosen instead', () => {
        const onDrag = vi.fn();
        const onShow = vi.fn();
        rig(onDrag, onShow);
        pointer('corner.2', 'pointerdown', 100, 100);
        pointer('corner.2', 'pointermove', 150, 100);
        pointer('corner.2', 'pointerup', 150, 100);
        press('corner.2', 'ArrowRight');
        expect(onDrag).not.toHaveBeenCalled();
        expect(onShow).toHaveBeenCalledWith('corner.2');
    });

    test('arrow keys move by steps, Shift by ten, Enter keeps', () => {
        const drags: Drag[] = [];
        rig(drag => {
            drags.push(drag);
        });
        press('corner.1', 'ArrowRight');
        press('corner.1', 'ArrowUp', { shiftKey: true });
        press('corner.1', 'Enter');
        const from = placeOf('corner.1');
        expect(drags.map(drag => drag.phase)).toEqual(['moving', 'moving', 'over']);
        expect(drags[2]?.snap).toBe(false);
        expect(drags[2]?.to.rightM).toBeCloseTo(from.rightM + 0.005, 9);
        expect(drags[2]?.to.forwardM).toBeCloseTo(from.forwardM + 0.05, 9);
    });

    test('one move is under way at a time, and the last of the waiting ones follows', async () => {
        const drags: Drag[] = [];
        let settle: () => void = () => undefined;
        rig(drag => {
            drags.push(drag);
            return new Promise<void>(resolve => {
                settle = resolve;
            });
        });
        ['ArrowRight', 'ArrowRight', 'ArrowRight'].forEach(key => {
            press('corner.1', key);
        });
        expect(drags).toHaveLength(1);
        await act(async () => {
            settle();
            await Promise.resolve();
        });
        expect(drags).toHaveLength(2);
        expect(drags[1]?.to.rightM).toBeCloseTo(placeOf('corner.1').rightM + 0.015, 9);
    });

    test('is saved as one picture, without what is for the hand', () => {
        rig(vi.fn());
        const text = svgText(Array.from(home.querySelectorAll<SVGSVGElement>('svg.drawn')));
        const root = new DOMParser().parseFromString(text, 'application/xml').documentElement;
        expect(root.querySelectorAll('svg')).toHaveLength(3);
        expect(root.textContent).toContain('seen from above');
        expect(text).not.toMatch(/data-part|role=|class=|style=/);
    });
});
