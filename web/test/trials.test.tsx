import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, test, vi, type MockInstance } from 'vitest';
import { voidingsOf, wayOf } from '../src/core/trials';
import { asked, told, unasked } from '../src/core/verdicts';
import type { Section, Told } from '../src/core/wire';
import { Bay } from '../src/state/bay';
import { Page } from '../src/views/Page';
import { cardOf, programme, reproof, trialsAnswer, voided, type CardMade } from './cards';
import { seeded, settle } from './fakeBay';

const HOSTILE = '<img src=x onerror=alert(1)>';
const STATES = ['passed', 'open', 'closed', 'voided', 'expired'] as const;
const RUNGS = ['measured', 'one fan', 'one pod', 'hop'];

/** A programme as it may come: rungs in order, some without a card. */
function randomCards(random: () => number): CardMade[] {
    return RUNGS.flatMap((rung, r) =>
        Array.from({ length: Math.floor(4 * random()) }, (_, k): CardMade => {
            const state = STATES[Math.floor(STATES.length * random())] ?? 'open';
            return {
                id: `card${r}.${k} of “left pod”`,
                title: `card ${k} on ${rung}`,
                rung,
                state,
                minutes: Math.ceil(90 * random()),
                ...(state === 'passed' ? { on: '2026-01-02', until: '2026-03-04' } : {}),
                ...(state === 'closed' ? { why: `something is open ${HOSTILE}` } : {}),
            };
        }),
    );
}

describe('the way', () => {
    test('has every card once, in its order, on its rung', () => {
        const random = seeded(11);
        let met = 0;
        for (let i = 0; i < 300; i++) {
            const cards = randomCards(random);
            const way = wayOf([programme(cards)]);
            met += cards.length;
            expect(way.flatMap(({ cards }) => cards.map(({ id }) => id))).toEqual(
                cards.map(({ id }) => id),
            );
            expect(way.map(({ rung }) => rung)).toEqual([
                ...new Set(cards.map(({ rung }) => rung)),
            ]);
            expect(way.every(({ rung, cards }) => cards.every(card => card.rung === rung))).toBe(
                true,
            );
        }
        expect(met).toBeGreaterThan(300);
    });

    test('opens nothing for a state that it does not know, and is empty without a programme', () => {
        const strange: CardMade = {
            id: 'a',
            title: 'a',
            rung: 'r',
            state: 'something new',
            minutes: 1,
        };
        expect(wayOf([programme([strange])])[0]?.cards[0]?.state).toBe('closed');
        expect(wayOf([])).toEqual([]);
        expect(voidingsOf([]).size).toBe(0);
    });
});

const CARDS: CardMade[] = [
    {
        id: 'mass',
        title: 'weigh the parts',
        rung: 'measured',
        state: 'passed',
        on: '2026-01-02',
        until: '2026-03-04',
        minutes: 30,
    },
    { id: 'kill', title: 'prove the kills', rung: 'one fan', state: 'open', minutes: 20 },
    {
        id: 'pod.left pod',
        title: 'one pod: left pod',
        rung: 'one pod',
        state: 'voided',
        on: '2026-01-03',
        minutes: 45,
    },
    {
        id: 'hop',
        title: 'restrained hop',
        rung: 'hop',
        state: 'closed',
        why: `needs ${HOSTILE}`,
        minutes: 90,
    },
];
const SECTIONS: Section[] = [
    programme(CARDS),
    voided([
        ['pod.left pod', 'wearer/mass', '62 kg', '70 kg'],
        ['pod.left pod', 'packs/p1/at', HOSTILE, ''],
    ]),
];

let home: HTMLElement;
let bay: Bay;
let call: MockInstance<Bay['server']['call']>;
let calls: { path: string; body: unknown; see: (line: Told) => void; end: () => void }[];

beforeEach(() => {
    localStorage.clear();
    bay = new Bay();
    calls = [];
    call = vi.spyOn(bay.server, 'call').mockReturnValue(new Promise(() => undefined));
    vi.spyOn(bay.server, 'stream').mockImplementation((path, body, _, see) => {
        return new Promise(resolve => {
            calls.push({
                path,
                body,
                see,
                end: () => {
                    resolve({ kind: 'ended' });
                },
            });
        });
    });
    home = document.createElement('div');
    document.body.append(home);
    bay.gate.state.value = 'in';
    lay('r1');
    draw(() => {
        bay.open.value = 'trials';
    });
    answer('r1');
});
afterEach(() => {
    render(null, home);
    home.remove();
});

function lay(revision: string, saved = true): void {
    bay.lay({
        rig: 'rig.yaml',
        revision,
        text: 'rig: made up\nwearer:\n  mass: 62 kg\n',
        saved,
        readable: true,
        problems: [],
        parts: [],
        outline: [
            { path: 'wearer', key: 'wearer', line: 2, from: 13, to: 34, children: [] },
            { path: 'packs', key: 'packs', line: 3, from: 34, to: 40, children: [] },
        ],
    });
}

function draw(change: () => void = () => undefined): void {
    void act(() => {
        change();
        render(<Page bay={bay} />, home);
    });
}

function answer(of: string, sections = SECTIONS): void {
    draw(() => {
        bay.asks.rungs.value = told(asked(unasked()), of, {
            stage: 'whole',
            question: 'trials',
            document: trialsAnswer(sections),
        });
    });
}

function row(card: string): HTMLElement {
    const found = [...home.querySelectorAll<HTMLElement>('.card-row')].find(
        each => each.dataset['card'] === card,
    );
    if (found === undefined) throw new Error(`no card ${card}`);
    return found;
}

function press(card: string): void {
    void act(() => {
        row(card).click();
    });
}

function cardAsked(): (typeof calls)[number] {
    const last = calls.filter(({ path }) => path === '/api/card').at(-1);
    if (last === undefined) throw new Error('no card was asked for');
    return last;
}

function open(card: CardMade, of: CardMade[] = [card]): void {
    press(card.id);
    void act(() => {
        cardAsked().see({
            stage: 'whole',
            question: 'trials',
            document: trialsAnswer(
                [reproof(of), cardOf(card.id, card.title)],
                'proved by two cards in 65 min',
            ),
        });
        cardAsked().see({ end: 'done' });
    });
}

const KILL = CARDS[1] as CardMade;
const POD = CARDS[2] as CardMade;

describe('the rung of the trials', () => {
    test('says of every card its state in words, its dates, and why', () => {
        const rows = [...home.querySelectorAll('.card-step')].map(step => step.textContent);
        expect(rows.length).toBe(CARDS.length);
        CARDS.forEach(({ title, state, on, until, why }, k) => {
            for (const said of [title, state, on, until, why, `${CARDS[k]?.minutes}.0 minutes`]) {
                if (said !== undefined) expect(rows[k]).toContain(said);
            }
        });
        // Each state has a shape of its own, and no two the same.
        const marks = CARDS.map(({ id }) => row(id).querySelector('svg')?.innerHTML);
        expect(new Set(marks).size).toBe(CARDS.length);
        expect(home.querySelectorAll('img').length).toBe(0);
    });

    test('shows what voids a pass, from what to what, and leads to it in the file', () => {
        const step = row('pod.left pod').closest('.card-step');
        expect(step?.textContent).toContain('wearer/mass: from 62 kg to 70 kg');
        expect(step?.textContent).toContain(`from ${HOSTILE} to nothing`);
        void act(() => {
            step?.querySelector<HTMLElement>('.voidings button')?.click();
        });
        expect(bay.look.value).toEqual({ from: 13, to: 34 });
    });

    test('gathers what is proved, voided and open', () => {
        const said = [...home.querySelectorAll('.standing dl > div')].map(each => each.textContent);
        expect(said.find(each => each.startsWith('Still proved'))).toContain('weigh the parts');
        expect(said.find(each => each.startsWith('Voided'))).toContain('left pod');
        expect(said.find(each => each.startsWith('Open'))).toContain('prove the kills');
        expect(said.some(each => each.startsWith('Passed too long'))).toBe(false);
    });

    test('is walked by arrows', () => {
        row('mass').focus();
        const key = (key: string) => {
            document.activeElement?.dispatchEvent(
                new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }),
            );
            return (document.activeElement as HTMLElement).dataset['card'];
        };
        expect(key('ArrowDown')).toBe('kill');
        expect(key('End')).toBe('hop');
        expect(key('ArrowDown')).toBe('hop');
        expect(key('ArrowUp')).toBe('pod.left pod');
        expect(key('Home')).toBe('mass');
    });
});

describe('a card', () => {
    test('is computed when it is opened, and shows every sentence and number of it', () => {
        open(POD, [KILL, POD]);
        expect(cardAsked().body).toMatchObject({ card: POD.id, base: 'r1', rig: 'rig.yaml' });
        const read = home.querySelector('.open-card')?.textContent ?? '';
        for (const block of cardOf(POD.id, POD.title).blocks) {
            const said =
                block.kind === 'lines'
                    ? block.lines.map(({ shown }) => shown)
                    : block.kind === 'table'
                      ? block.rows.flat().flatMap(({ shown, shownBand }) => [shown, shownBand])
                      : [];
            expect(said.length).toBeGreaterThan(0);
            for (const words of [block.title, ...said]) expect(read).toContain(words);
        }
        expect(home.querySelector('.aborts')?.textContent).toContain('123');
        expect(home.querySelectorAll('.aborts').length).toBe(1);
    });

    test('says the cheapest way to it, and leads to each card of it', () => {
        open(POD, [KILL, POD]);
        const way = home.querySelector('.reproof');
        expect(way?.textContent).toContain('proved by two cards in 65 min');
        expect([...(way?.querySelectorAll('li') ?? [])].map(li => li.textContent)).toEqual([
            expect.stringMatching(/^prove the kills, /),
            expect.stringMatching(/^one pod: left pod, /),
        ]);
        void act(() => {
            way?.querySelector<HTMLElement>('li button')?.click();
        });
        expect(bay.cards.open.value).toBe('kill');
        expect(document.activeElement).toBe(row('kill'));
    });

    test('of the rig before a change says so, and is asked for anew', () => {
        open(POD);
        expect(home.querySelector('.open-card.old')).toBeNull();
        const before = calls.length;
        draw(() => {
            const view = bay.desk.value;
            if (view === undefined) return;
            bay.desk.value = { ...view, document: { ...view.document, revision: 'r2' } };
            bay.cards.changed(true);
        });
        const again = calls.slice(before).filter(({ path }) => path === '/api/card');
        expect(again.length).toBe(1);
        expect(home.querySelector('.open-card.old')?.textContent).toContain('before your last');
    });

    test('that was closed meanwhile does not come to stand', () => {
        press(POD.id);
        const late = cardAsked();
        press(POD.id);
        void act(() => {
            late.see({
                stage: 'whole',
                question: 'trials',
                document: trialsAnswer([cardOf(POD.id, POD.title)]),
            });
        });
        expect(home.querySelector('.open-card')).toBeNull();
        press(KILL.id);
        expect(home.querySelector('.picture.card')).toBeNull();
    });

    test('is kept on the paper that was chosen', async () => {
        const file = vi
            .spyOn(bay.server, 'file')
            .mockResolvedValue({ kind: 'fault', fault: { fault: 'x', sentence: 'no paper' } });
        open(POD);
        const paper = home.querySelector<HTMLSelectElement>('.on-paper select');
        if (paper === null) throw new Error('no choice of paper');
        expect(paper.value).toBe('a4');
        void act(() => {
            paper.value = 'letter';
            paper.dispatchEvent(new Event('change', { bubbles: true }));
        });
        void act(() => {
            home.querySelector<HTMLElement>('.on-paper button')?.click();
        });
        await settle();
        expect(file).toHaveBeenCalledExactlyOnceWith(
            '/api/sheet',
            expect.objectContaining({ card: POD.id, form: 'pdf', paper: 'letter', base: 'r1' }),
        );
        expect(bay.told.value.sentence).toBe('no paper');
    });
});

describe('what came of a card', () => {
    function form(): HTMLFormElement {
        open(KILL);
        const fold = home.querySelector<HTMLDetailsElement>('.open-card details:last-of-type');
        void act(() => {
            if (fold !== null) {
                fold.open = true;
                fold.dispatchEvent(new Event('toggle'));
            }
        });
        const found = home.querySelector<HTMLFormElement>('.pass-form');
        if (found === null) throw new Error('no form');
        return found;
    }
    function fill(form: HTMLFormElement, label: string, value: string): void {
        const field = [...form.querySelectorAll('label')]
            .find(each => each.textContent.startsWith(label))
            ?.querySelector<HTMLInputElement>('input, select, textarea');
        if (!field) throw new Error(`no field ${label}`);
        void act(() => {
            field.value = value;
            field.dispatchEvent(new Event('input', { bubbles: true }));
            field.dispatchEvent(new Event('change', { bubbles: true }));
        });
    }
    function submit(form: HTMLFormElement): void {
        void act(() => {
            form.dispatchEvent(new Event('submit', { bubbles: true, cancelable: true }));
        });
    }
    const passes = () => call.mock.calls.filter(([path]) => path === '/api/pass');

    test('is sent when everything is said, once, and then the way is asked anew', async () => {
        const made = form();
        submit(made);
        fill(made, 'What came', 'aborted');
        fill(made, 'Who', ' A. Nobody ');
        fill(made, 'Clean runs', 'three');
        submit(made);
        expect(passes()).toEqual([]);
        fill(made, 'Clean runs', '3');
        fill(made, 'Notes', 'hot at 60 %');
        call.mockResolvedValue({
            kind: 'done',
            value: { sentence: 'written as number 3' },
        });
        const before = calls.filter(({ path }) => path === '/api/ask').length;
        submit(made);
        submit(made);
        await act(settle);
        expect(passes()).toEqual([
            [
                '/api/pass',
                {
                    rig: 'rig.yaml',
                    base: 'r1',
                    card: 'kill',
                    outcome: 'aborted',
                    who: 'A. Nobody',
                    repeats: 3,
                    notes: 'hot at 60 %',
                },
            ],
        ]);
        expect(made.textContent).toContain('written as number 3');
        expect(calls.filter(({ path }) => path === '/api/ask').length).toBe(before + 1);
    });

    test('waits for a rig file that is saved', () => {
        const made = form();
        fill(made, 'What came', 'passed');
        fill(made, 'Who', 'A. Nobody');
        fill(made, 'Clean runs', '10');
        draw(() => {
            const view = bay.desk.value;
            if (view === undefined) return;
            bay.desk.value = { ...view, document: { ...view.document, saved: false } };
        });
        submit(made);
        expect(passes()).toEqual([]);
        expect(made.textContent).toContain('Save the rig file first');
    });

    test('that is refused says why, and keeps what was written', async () => {
        const made = form();
        fill(made, 'What came', 'passed');
        fill(made, 'Who', 'A. Nobody');
        fill(made, 'Clean runs', '10');
        call.mockResolvedValue({
            kind: 'fault',
            fault: { fault: 'refused', sentence: `closed ${HOSTILE}` },
        });
        submit(made);
        await act(settle);
        expect(made.querySelector('.is-unmet')?.textContent).toBe(`closed ${HOSTILE}`);
        expect(made.querySelector('input')?.value).toBe('A. Nobody');
        expect(home.querySelectorAll('img').length).toBe(0);
    });
});

test('the sheet of the day stands there when there is one, and not when there is none', () => {
    expect(home.querySelector('.today')).toBeNull();
    answer('r1', [...SECTIONS, cardOf('today', 'Today’s sheet')]);
    expect(home.querySelector('.today summary')?.textContent).toBe('Today’s sheet');
    expect(home.querySelector('.today .on-paper')).not.toBeNull();
});
