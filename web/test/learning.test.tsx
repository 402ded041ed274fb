import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { asked, told, unasked } from '../src/core/verdicts';
import type { Section, Told } from '../src/core/wire';
import { Bay } from '../src/state/bay';
import { Page } from '../src/views/Page';
import { table, words } from './cards';
import { amount } from './pictures/faults';
import { learningAnswer, logbook, strips, type TestMade } from './tests';

const HOSTILE = '<img src=x onerror=alert(1)>';
const TESTS: TestMade[] = [
    { id: '2026-03-14-2', on: '2026-03-14', card: 'hop', outcome: 'not met', missing: 41 },
    { id: '2026-03-14-1', on: '2026-03-14', card: HOSTILE, outcome: 'met', missing: undefined },
];

let home: HTMLElement;
let bay: Bay;
let calls: { path: string; body: unknown; see: (line: Told) => void; signal: AbortSignal }[];

beforeEach(() => {
    localStorage.clear();
    bay = new Bay();
    calls = [];
    vi.spyOn(bay.server, 'call').mockReturnValue(new Promise(() => undefined));
    vi.spyOn(bay.server, 'stream').mockImplementation(
        (path, body, signal, see) =>
            new Promise(() => {
                calls.push({ path, body, see, signal });
            }),
    );
    home = document.createElement('div');
    document.body.append(home);
    bay.gate.state.value = 'in';
    bay.lay({
        rig: 'rig.yaml',
        revision: 'r1',
        text: 'rig: made up\n',
        saved: true,
        readable: true,
        problems: [],
        parts: [],
        outline: [],
    });
    bay.open.value = 'learning';
    draw();
    list([logbook(TESTS)]);
});
afterEach(() => {
    render(null, home);
    home.remove();
});

function draw(): void {
    void act(() => {
        render(<Page bay={bay} />, home);
    });
}

function list(sections: Section[]): void {
    void act(() => {
        bay.asks.rungs.value = told(asked(unasked()), 'r1', {
            stage: 'whole',
            question: 'learning',
            document: learningAnswer(sections, 'the last test lacks 41 N of its lift'),
        });
    });
}

function row(test: string): HTMLElement {
    const found = home.querySelector<HTMLElement>(`[data-test="${test}"]`);
    if (found === null) throw new Error(`no test ${test}`);
    return found;
}

function open(test: string): (typeof calls)[number] {
    void act(() => {
        row(test).click();
    });
    const last = calls.filter(({ path }) => path === '/api/test').at(-1);
    if (last === undefined) throw new Error('no test was asked for');
    return last;
}

function answer(to: (typeof calls)[number], stage: 'nominal' | 'whole', sections: Section[]): void {
    void act(() => {
        to.see({
            stage,
            question: 'learning',
            document: learningAnswer(sections, `lacks 41 N (${stage})`),
        });
        if (stage === 'whole') to.see({ end: 'done' });
    });
}

const STRIPS = strips(
    ['thrust left.1', 'current p.1'],
    [{ time: 2, label: `fan left.1 stops ${HOSTILE}`, part: 'left.1' }],
);
const FALL: Section = {
    kind: 'waterfall',
    id: 'missing-lift',
    title: 'Where the lift is',
    start: { label: 'predicted', value: amount('lift', 400, 12), note: '' },
    steps: [{ label: 'a worn joint', value: amount('lift', -41, 9), note: 'feed of p.1' }],
    end: { label: 'explained', value: amount('lift', 359, 12), note: '' },
    against: { label: 'measured', value: amount('lift', 358, 4), note: '' },
};
const CAUSES = table(
    'causes',
    ['cause', 'lift'],
    [
        [words('cause', 'a worn joint in the feed of p.1'), amount('lift', 41, 9)],
        [words('cause', 'none of these'), amount('lift', 0, 3)],
    ],
);

describe('the rung why', () => {
    test('stands in the ladder with its sentence, and opens by its key', () => {
        bay.open.value = 'lift';
        draw();
        const rung = [...home.querySelectorAll('.ladder button')].find(each =>
            each.textContent.includes('Why did it not do what was promised?'),
        );
        expect(rung?.textContent).toContain('the last test lacks 41 N of its lift');
        void act(() => {
            document.dispatchEvent(
                new KeyboardEvent('keydown', { key: '9', code: 'Digit9', altKey: true }),
            );
        });
        expect(bay.open.value).toBe('learning');
    });

    test('lists every test with everything told of it, as text', () => {
        const rows = [...home.querySelectorAll('.tests tbody tr')].map(each => each.textContent);
        expect(rows.length).toBe(TESTS.length);
        TESTS.forEach(({ id, on, card, outcome }, k) => {
            for (const said of [id, on, card, outcome]) expect(rows[k]).toContain(said);
        });
        expect(rows[0]).toContain('41.0 N (38.0 to 44.0 N)');
        expect(home.querySelector('.tests [data-si="41"]')?.getAttribute('data-low')).toBe('38');
        expect(home.querySelectorAll('img').length).toBe(0);
    });

    test('says that nothing is written down where nothing is', () => {
        list([]);
        expect(home.querySelector('.logbook')?.textContent).toContain('No test is written down');
    });
});

describe('a test', () => {
    test('is asked for when it is opened: first its channels, then what is missing', () => {
        const asked = open('2026-03-14-2');
        expect(asked.body).toMatchObject({ rig: 'rig.yaml', test: '2026-03-14-2', units: 'si' });
        expect(asked.body).not.toHaveProperty('base');
        answer(asked, 'nominal', [STRIPS]);
        expect(home.querySelector('.open-test')?.textContent).toContain('lacks 41 N (nominal)');
        expect(home.querySelector('.open-test .state')?.textContent).toContain('causes');
        expect(home.querySelectorAll('figure.strips svg.drawn').length).toBe(1);
        answer(asked, 'whole', [STRIPS, CAUSES, FALL]);
        expect(home.querySelector('.open-test .state')).toBeNull();
        const figures = [...home.querySelectorAll('.open-test figure, .open-test .picture.table')];
        expect(figures.map(each => each.className)).toEqual([
            expect.stringContaining('waterfall'),
            expect.stringContaining('table'),
            expect.stringContaining('strips'),
        ]);
        expect(home.querySelector('.open-test')?.textContent).toContain('none of these');
        expect(home.querySelectorAll('img').length).toBe(0);
    });

    test('draws every channel and every event, and says the same in a table', () => {
        answer(open('2026-03-14-2'), 'whole', [STRIPS]);
        const svg = home.querySelector('figure.strips svg.drawn');
        expect(svg?.querySelectorAll('.strip-line.measured').length).toBe(2);
        expect(svg?.querySelectorAll('.strip-band').length).toBe(2);
        expect(svg?.textContent).toContain('fan left.1 stops');
        expect(svg?.textContent).toContain('thrust left.1 [N]');
        const turn = [...home.querySelectorAll<HTMLElement>('figure.strips button')].find(
            each => each.textContent === 'as a table',
        );
        void act(() => {
            turn?.click();
        });
        const cells = [...home.querySelectorAll('figure.strips td, figure.strips th')].map(
            each => each.textContent,
        );
        for (const said of ['current p.1', '20.00 N', '24.00 N', 'left.1']) {
            expect(cells).toContain(said);
        }
        const numbers = [...home.querySelectorAll('figure.strips td[data-si]')].map(each =>
            Number(each.getAttribute('data-si')),
        );
        const of = STRIPS.strips.flatMap(each => [
            ...each.times,
            ...each.measured,
            ...each.expected,
        ]);
        expect(numbers.length).toBeGreaterThan(5);
        expect(numbers.filter(si => !of.includes(si))).toEqual([]);
    });

    test('can be stopped, goes on where it was, and closes', () => {
        const asked = open('2026-03-14-2');
        answer(asked, 'nominal', [STRIPS]);
        const press = (words: string) => {
            const found = [...home.querySelectorAll<HTMLElement>('.open-test button')].find(
                each => each.textContent === words,
            );
            void act(() => {
                found?.click();
            });
        };
        press('Stop');
        expect(asked.signal.aborted).toBe(true);
        expect(home.querySelector('.open-test .state')?.textContent).toContain('Stopped');
        const before = calls.length;
        press('Go on');
        expect(calls.length).toBe(before + 1);
        void act(() => {
            row('2026-03-14-2').click();
        });
        expect(home.querySelector('.open-test')).toBeNull();
    });

    test('that was closed meanwhile does not come to stand', () => {
        const late = open('2026-03-14-2');
        open('2026-03-14-1');
        answer(late, 'nominal', [STRIPS]);
        expect(home.querySelector('.open-test h3')?.textContent).toContain('2026-03-14-1');
        expect(home.querySelector('.open-test figure')).toBeNull();
    });

    test('can have another one laid over it, and no other', () => {
        answer(open('2026-03-14-2'), 'whole', [STRIPS]);
        const choice = home.querySelector<HTMLSelectElement>('.beside select');
        expect([...(choice?.options ?? [])].map(({ value }) => value)).toEqual([
            '',
            '2026-03-14-1',
        ]);
        void act(() => {
            if (choice === null) return;
            choice.value = '2026-03-14-1';
            choice.dispatchEvent(new Event('change', { bubbles: true }));
        });
        expect(bay.tests.beside.value).toBe('2026-03-14-1');
        const shift = home.querySelector<HTMLInputElement>('.beside input');
        const type = (value: string) => {
            void act(() => {
                if (shift === null) return;
                shift.value = value;
                shift.dispatchEvent(new Event('input', { bubbles: true }));
            });
        };
        type('−2,5');
        expect(bay.tests.shiftS.value).toBe(-2.5);
        type('two');
        expect(bay.tests.shiftS.value).toBe(-2.5);
        expect(shift?.getAttribute('aria-invalid')).toBe('true');
        open('2026-03-14-1');
        expect(bay.tests.beside.value).toBeUndefined();
    });

    test('stays as it is while the rig is changed: it keeps the rig of its day', () => {
        const asked = open('2026-03-14-2');
        answer(asked, 'whole', [STRIPS]);
        const before = calls.filter(({ path }) => path === '/api/test').length;
        void act(() => {
            const view = bay.desk.value;
            if (view === undefined) return;
            bay.desk.value = { ...view, document: { ...view.document, revision: 'r2' } };
            bay.askAgain();
        });
        expect(calls.filter(({ path }) => path === '/api/test').length).toBe(before);
        expect(home.querySelector('.open-test figure.strips')).not.toBeNull();
    });
});
