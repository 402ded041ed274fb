import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { csvOf } from '../../src/core/csv';
import { curvesOf, explained } from '../../src/core/curve';
import { meet } from '../../src/core/labels';
import { momentsOf, numbersOf } from '../../src/core/numbers';
import { levelOf, nearest, playedOf, shareAt, textOn } from '../../src/core/playback';
import { timelineRows } from '../../src/core/timeline';
import type { Drawing, Playback, Section, Timeline } from '../../src/core/wire';
import { Picture } from '../../src/pictures';
import { svgText } from '../../src/pictures/save';
import bare from './data/sandpiper.json';
import { amount, heatDocument, never, playback, shares, timeline, track } from './heat';
import { withTexts } from './texts';

const RIG = Object.values(bare)
    .flatMap(doc => withTexts(doc).sections)
    .find((each): each is Drawing => each.kind === 'drawing');
const FIELDS = {
    ...withTexts(bare.balance).fields,
    ...heatDocument(RIG).fields,
};

let home: HTMLElement;
let calm = false;
beforeEach(() => {
    calm = false;
    vi.stubGlobal('matchMedia', (media: string) => ({
        media,
        matches: calm && media.includes('reduced-motion'),
        addEventListener: vi.fn(),
        removeEventListener: vi.fn(),
    }));
    vi.useFakeTimers();
    home = document.createElement('div');
    document.body.append(home);
});
afterEach(() => {
    render(null, home);
    home.remove();
    vi.useRealTimers();
    vi.unstubAllGlobals();
});

function show(section: Section, onShow = vi.fn(), selected?: string): void {
    void act(() => {
        render(
            <Picture
                section={section}
                rig={RIG}
                fields={FIELDS}
                units="si"
                fileName="f"
                selected={selected}
                onShow={onShow}
            />,
            home,
        );
    });
}

function button(words: string): HTMLButtonElement {
    const found = Array.from(home.querySelectorAll('button')).find(
        each => each.textContent === words,
    );
    if (!found) throw new Error(`no button ${words}`);
    return found;
}

function click(words: string): void {
    void act(() => {
        button(words).click();
    });
}

function pass(ms: number): void {
    void act(() => {
        vi.advanceTimersByTime(ms);
    });
}

function slider(): HTMLInputElement {
    const found = home.querySelector<HTMLInputElement>('input[type=range]');
    if (!found) throw new Error('no slider');
    return found;
}

function quicker(): void {
    void act(() => {
        slider().dispatchEvent(new KeyboardEvent('keydown', { key: '+', bubbles: true }));
    });
}

function slide(to: number): void {
    void act(() => {
        const input = slider();
        input.value = String(to);
        input.dispatchEvent(new Event('input', { bubbles: true }));
    });
}

describe('a timeline', () => {
    test('has bars as long as their times, and open ones that say so', () => {
        show(timeline);
        const width = Number(home.querySelector('svg')?.getAttribute('viewBox')?.split(' ')[2]);
        const bars = Array.from(home.querySelectorAll('rect.sum'), each =>
            Number(each.getAttribute('width')),
        );
        expect(bars).toHaveLength(2);
        expect(bars[0]).toBeCloseTo(((width - 2) * 61) / 183, 3);
        expect(bars[1]).toBeCloseTo(((width - 2) * 122.4) / 183, 3);
        expect(home.querySelectorAll('path.taken')).toHaveLength(2);
        const words = home.querySelector('svg')?.textContent ?? '';
        expect(words).toContain('not within 183 s');
        expect(words).toContain('98 °C of 120 °C; still warming when the flight ends');
        expect(words).toContain('98.3 °C of 50 °C; in 240 of 256 draws');
    });

    test('shows numbers of the answer and no others, drawn and as a table', () => {
        show(timeline);
        const drawn = Array.from(home.querySelectorAll('svg [data-si]'), each =>
            Number(each.getAttribute('data-si')),
        );
        expect(drawn).toEqual([61, 122.4]);
        click('as a table');
        const cells = Array.from(home.querySelectorAll('td[data-si]'), each =>
            Number(each.getAttribute('data-si')),
        );
        expect(cells).toEqual([61, 371.4, 323.15, 122.4, 0.2, 0.2, 371.1, 393.15, 0.34, 1]);
    });

    test('is walked by arrow keys, and Enter shows the part', () => {
        const onShow = vi.fn();
        show(timeline, onShow);
        const rows = Array.from(home.querySelectorAll<SVGElement>('.bar-row .row-ground'));
        expect(rows.map(row => row.getAttribute('tabindex'))).toEqual(['0', '-1', '-1', '-1']);
        rows[0]?.focus();
        void act(() => {
            rows[0]?.dispatchEvent(
                new KeyboardEvent('keydown', { key: 'ArrowDown', bubbles: true }),
            );
        });
        expect(document.activeElement).toBe(rows[1]);
        rows[1]?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
        expect(onShow).toHaveBeenCalledWith('back.1');
        expect(rows[0]?.getAttribute('aria-label')).toBe(
            'left.feed, wire 12 AWG, worst of 2: 61 s (47 to 75 s). 98.3 °C of 50 °C; in 240 of 256 draws',
        );
    });

    test('of a hundred parts draws the first and says how many more', () => {
        const bar = timeline.bars[3];
        if (!bar) throw new Error();
        const large: Timeline = { ...timeline, bars: Array.from({ length: 30 }, () => bar) };
        expect(timelineRows(large, FIELDS)).toMatchObject({ left: 20 });
        show(large);
        expect(home.querySelectorAll('path.taken')).toHaveLength(10);
        expect(home.textContent).toContain('20 more stand in the table');
    });

    test('goes as far as its last bar, and beyond its horizon if need be', () => {
        const late = { ...timeline, horizon: amount('time', 100) };
        expect(timelineRows(late, FIELDS).axis.high).toBeCloseTo(122.4, 9);
        expect(timelineRows({ ...timeline, bars: [] }, FIELDS).axis.high).toBeCloseTo(183, 9);
    });

    test('of hostile names lets none out of the picture, and writes them as text', () => {
        const hostile = `<img src=x onerror=alert(1)>${'W'.repeat(300)}`;
        const bars = timeline.bars.map(bar => ({
            ...bar,
            part: hostile,
            where: hostile,
            at: never,
        }));
        show({ ...timeline, bars });
        expect(home.querySelector('img')).toBeNull();
        const widest = Math.max(
            ...Array.from(home.querySelectorAll('svg text'), each => each.textContent.length),
        );
        expect(widest).toBeLessThan(110);
    });

    test('names the unit of both in a file, where limits of several measures stand below each other', () => {
        const lines = csvOf(numbersOf(timeline, FIELDS)).split('\r\n');
        expect(lines[0]).toBe(
            'part,limit of,reached after [s],reached after low [s],reached after high [s],worst,limit,SI unit of both,where',
        );
        expect(lines[1]).toBe(
            'left.feed,"wire 12 AWG, worst of 2",61,47,75,371.4,323.15,K,in 240 of 256 draws',
        );
        expect(lines[2]).toMatch(/^back.1,reserve,122.4,113.4,131.4,0.2,0.2,1,$/);
    });
});

describe('shares', () => {
    test('lie end to end along the whole', () => {
        show(shares);
        const bars = Array.from(home.querySelectorAll('rect.sum, rect.against'), each => [
            Number(each.getAttribute('x')),
            Number(each.getAttribute('width')),
        ]);
        expect(bars).toHaveLength(6);
        let at = 1;
        for (const [x, wide] of bars.slice(0, 5)) {
            expect(x).toBeCloseTo(at, 6);
            at += wide ?? 0;
        }
        expect(at).toBeCloseTo(419, 6);
        expect(bars[5]?.[1]).toBeCloseTo(418, 6);
        expect(home.textContent).toContain('15000 W, 75 %');
    });
});

describe('what is played', () => {
    const played = playback(RIG);
    const model = playedOf(played, FIELDS);

    test('begins at its worst moment, with the values of the answer beside it', () => {
        show(played);
        expect(Number(slider().value)).toBe(played.times[model.worst]);
        const shown = Array.from(home.querySelectorAll('.ahead [data-si]'), each =>
            Number(each.getAttribute('data-si')),
        );
        const kinds = new Set<string>();
        const wanted = nearest(played.tracks, model.worst, model.cold)
            .filter(({ kind }) => !kinds.has(kind) && kinds.add(kind))
            .flatMap(each => [each.values[model.worst], each.limit]);
        expect(wanted.length).toBeGreaterThan(6);
        expect(shown).toEqual(wanted);
    });

    test('is told at every moment that a slider chooses, in words and in levels', () => {
        show(played);
        for (const moment of [0, 7, 33, played.times.length - 1]) {
            slide(played.times[moment] ?? NaN);
            expect(slider().getAttribute('aria-valuetext')).toContain(
                textOn(model.x, played.times[moment] ?? NaN),
            );
            const drawn = Array.from(home.querySelectorAll<SVGElement>('.played'));
            expect(drawn).toHaveLength(model.marks.length);
            for (const mark of model.marks) {
                const share = Math.max(
                    ...mark.tracks.map(each => shareAt(each, moment, model.cold)),
                );
                const levels = drawn
                    .filter(each => each.dataset['part'] === mark.part)
                    .map(each => each.dataset['level']);
                expect(levels).toContain(levelOf(share));
            }
        }
    });

    test('a level is told by more than its colour', () => {
        show(played);
        const of = (level: string): Element | undefined =>
            Array.from(home.querySelectorAll(`.played[data-level=${level}]`)).find(each =>
                each.querySelector('path.level'),
            );
        slide(0);
        expect(of('cool')?.querySelector('.hatched')).toBeNull();
        slide(played.times.at(-1) ?? NaN);
        expect(of('near')?.querySelector('.hatched')?.getAttribute('fill')).toMatch(/-near\)$/);
        expect(home.querySelector('.ahead')?.textContent).toContain('at or over its limit');
    });

    test('plays through and stops at its end, from the start the first time', () => {
        show(played);
        click('play');
        expect(slider().value).toBe('0');
        pass(400);
        expect(Number(slider().value)).toBeGreaterThan(0);
        click('pause');
        const at = slider().value;
        expect(vi.getTimerCount()).toBe(0);
        pass(5000);
        expect(slider().value).toBe(at);
        click('play');
        expect(slider().value).toBe(at);
        quicker();
        quicker();
        // At four times its speed, a frame at a time: the page draws between two of them.
        for (let k = 0; k < 260; k++) pass(16);
        expect(Number(slider().value)).toBe(played.times.at(-1));
        expect(button('play')).toBeDefined();
        expect(vi.getTimerCount()).toBe(0);
    });

    test('stops where a hand takes the slider', () => {
        show(played);
        click('play');
        slide(12.5);
        pass(5000);
        expect(slider().value).toBe('12.5');
        expect(vi.getTimerCount()).toBe(0);
    });

    test('moves by itself for nobody who wants no motion', () => {
        calm = true;
        show(played);
        click('next moment');
        expect(slider().value).toBe('0');
        click('next moment');
        expect(slider().value).toBe(String(played.times[5]));
        pass(5000);
        expect(slider().value).toBe(String(played.times[5]));
        expect(vi.getTimerCount()).toBe(0);
    });

    test('no value lies on another, and none leaves the picture', () => {
        show(played, vi.fn(), 'left.feed');
        for (const side of ['from behind', 'from its right side', 'from above']) {
            click(side);
            const svg = home.querySelector('svg.view');
            const [, , width = 0, height = 0] = (svg?.getAttribute('viewBox') ?? '')
                .split(' ')
                .map(Number);
            const boxes = Array.from(svg?.querySelectorAll('text.placed') ?? [], each => {
                const half = (each.textContent.length * 6) / 2;
                const [x, y] = [Number(each.getAttribute('x')), Number(each.getAttribute('y'))];
                return { left: x - half, right: x + half, top: y - 10, bottom: y + 2 };
            });
            expect(boxes.length).toBeGreaterThan(1);
            boxes.forEach((box, k) => {
                expect(box.left >= 0 && box.right <= width && box.bottom <= height).toBe(true);
                boxes.slice(k + 1).forEach(other => {
                    expect(meet(box, other)).toBe(false);
                });
            });
        }
    });

    test('shows a part that is chosen in the picture or in the list', () => {
        const onShow = vi.fn();
        show(played, onShow);
        click('left.feed, wire');
        expect(onShow).toHaveBeenLastCalledWith('left.feed');
        home.querySelector<SVGElement>('.played[data-part="left.plug"]')?.dispatchEvent(
            new MouseEvent('click', { bubbles: true }),
        );
        expect(onShow).toHaveBeenLastCalledWith('left.plug');
    });

    test('is drawn without a rig and without a moment as well', () => {
        const lone: Playback = {
            ...played,
            tracks: [track('a', 'wire', [0, 0, 0], [0, 1, 0], 363, [300, 370])],
            times: [0, 1],
        };
        void act(() => {
            render(
                <Picture section={lone} fields={{}} units="si" fileName="f" onShow={vi.fn()} />,
                home,
            );
        });
        expect(home.querySelector('.wire.over')).not.toBeNull();
        show({ ...lone, times: [], tracks: [] });
        expect(home.querySelector('.played')).toBeNull();
    });

    test('is saved with every number of every moment', () => {
        const lines = csvOf([momentsOf(played, FIELDS)]).split('\r\n');
        expect(lines).toHaveLength(played.times.length + 2);
        expect(lines[0]?.split(',')[0]).toBe('time [s]');
        expect(lines[0]).toContain('left.feed wire [K]');
        expect(lines[3]?.split(',').map(Number)).toEqual([
            played.times[2],
            ...played.tracks.map(each => each.values[2]),
        ]);
    });

    test('is saved as a picture that needs no page', () => {
        show(played);
        const svg = home.querySelector<SVGSVGElement>('svg.view');
        const text = svg ? svgText([svg]) : '';
        expect(text).toContain('<pattern');
        expect(text).not.toContain('class=');
    });
});

test('levels begin where they say', () => {
    expect([0, 0.39, 0.4, 0.79, 0.8, 0.999, 1, 3].map(levelOf)).toEqual([
        'cool',
        'cool',
        'warm',
        'warm',
        'near',
        'near',
        'over',
        'over',
    ]);
    const on = track('a', 'wire', [0, 0, 0], [0, 0, 0], 363, [300, 363, 380]);
    expect([0, 1, 2].map(k => levelOf(shareAt(on, k, 300)))).toEqual(['cool', 'over', 'over']);
    expect(shareAt({ ...on, limit: 290 }, 0, 300)).toBe(1);
});

test('of a plot each line is explained, and a cross with its words once', () => {
    const plot = heatDocument(RIG).sections.find(each => each.kind === 'plot');
    if (plot?.kind !== 'plot') throw new Error();
    const curves = curvesOf(plot, FIELDS);
    expect(curves.series.filter(each => each.mark === 'line').map(each => each.line)).toEqual([
        0, 1, 2, 3,
    ]);
    const words = explained(curves).map(each => each.label);
    expect(words.filter(each => each === 'its limit').length).toBeLessThanOrEqual(1);
    expect(words.length).toBeGreaterThanOrEqual(4);
});
