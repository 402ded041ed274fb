import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { endings, stateWords, summary } from '../src/core/jobs';
import { poseAt } from '../src/core/flightPath';
import type { Caller, Reply } from '../src/core/caller';
import type { FlightPath, Job, Watched } from '../src/core/wire';
import { Bay } from '../src/state/bay';
import { Page } from '../src/views/Page';

const HOSTILE = '<img src=x onerror=alert(1)>';

function job(more: Partial<Job> = {}): Job {
    return {
        job: 1,
        rig: 'rig.yaml',
        kind: 'flights',
        title: '200 flights of hold.yaml, seed 5',
        state: 'running',
        told: '',
        stage: 'flying',
        far: '50 of 200, 25 %; about 3 min left',
        done: 50,
        total: 200,
        begun: '2026-11-27T03:00:00Z',
        profile: 'hold.yaml',
        flights: 200,
        seed: '5',
        ...more,
    };
}

describe('work that takes minutes, in words', () => {
    test('tells how far it is, and what waits behind it', () => {
        expect(stateWords(job())).toBe('flying: 50 of 200, 25 %; about 3 min left');
        expect(stateWords(job({ state: 'stopped', far: '50 of 200, 25 %' }))).toBe(
            'stopped at 50 of 200, 25 %',
        );
        expect(summary([job({ job: 2, state: 'waiting' }), job()])).toBe(
            '200 flights of hold.yaml, seed 5: flying: 50 of 200, 25 %; about 3 min left; 1 more waits',
        );
        expect(summary([job({ state: 'done' })])).toBe('');
    });

    test('tells an end once, and nothing of what ended before', () => {
        const done = job({ state: 'done' });
        expect(endings([job()], [done])).toEqual(['200 flights of hold.yaml, seed 5: done.']);
        expect(endings([done], [done])).toEqual([]);
        expect(endings([], [done])).toEqual([]);
        expect(endings([job()], [job({ state: 'failed', told: 'No loops.' })])).toEqual([
            '200 flights of hold.yaml, seed 5: cannot be done. No loops.',
        ]);
    });
});

describe('a flight between its moments', () => {
    const path: FlightPath = {
        times: [0, 1, 2],
        places: [0, 0, -1, 2, 4, -3, 2, 4, -3],
        turns: [1, 0, 0, 0, Math.SQRT1_2, 0, 0, Math.SQRT1_2, -Math.SQRT1_2, 0, 0, -Math.SQRT1_2],
        fans: 0,
        thrusts: [],
        lines: [],
        pulls: [],
    };

    test('goes straight, and turns by half of the way in half of the time', () => {
        const { at, turn } = poseAt(path, 0.5);
        expect(at).toEqual({ x: 1, y: 2, z: -2 });
        // A quarter turn about the vertical, half done: an eighth.
        expect(turn[0]).toBeCloseTo(Math.cos(Math.PI / 8), 12);
        expect(turn[3]).toBeCloseTo(Math.sin(Math.PI / 8), 12);
    });

    test('does not go round the long way where the same turn has the other sign', () => {
        const { turn } = poseAt(path, 1.5);
        expect(Math.abs(turn[0])).toBeCloseTo(Math.SQRT1_2, 12);
        expect(Math.abs(turn[3])).toBeCloseTo(Math.SQRT1_2, 12);
    });

    test('stays at its ends beyond them', () => {
        expect(poseAt(path, -1)).toEqual(poseAt(path, 0));
        expect(poseAt(path, 9)).toEqual(poseAt(path, 2));
    });
});

describe('on the page', () => {
    let home: HTMLElement;
    let bay: Bay;
    let asked: { path: string; body: unknown }[];
    let watch: (line: Watched) => void;

    beforeEach(() => {
        localStorage.clear();
        bay = new Bay();
        asked = [];
        const call: Caller['call'] = (path, body) => {
            asked.push({ path, body });
            return new Promise<Reply<never>>(() => undefined);
        };
        vi.spyOn(bay.server, 'call').mockImplementation(call);
        vi.spyOn(bay.server, 'stream').mockImplementation((path, _, __, see) => {
            if (path === '/api/watch') watch = see;
            return new Promise(() => undefined);
        });
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
        bay.open.value = 'flight';
        void act(() => {
            render(<Page bay={bay} />, home);
        });
    });
    afterEach(() => {
        render(null, home);
        home.remove();
    });

    function heard(...jobs: Job[]): void {
        void act(() => {
            watch({ jobs });
        });
    }
    function field(label: string): HTMLInputElement {
        const all = [...home.querySelectorAll<HTMLLabelElement>('.ask-flights label')];
        const found = all.find(each => each.textContent.startsWith(label))?.querySelector('input');
        if (!found) throw new Error(`no field ${label}`);
        return found;
    }
    function type(label: string, text: string): void {
        void act(() => {
            const at = field(label);
            at.value = text;
            at.dispatchEvent(new Event('input', { bubbles: true }));
        });
    }
    function submit(): void {
        void act(() => {
            home.querySelector('.ask-flights')?.dispatchEvent(
                new Event('submit', { bubbles: true, cancelable: true }),
            );
        });
    }
    function press(label: RegExp): void {
        const button = [...home.querySelectorAll('button')].find(each =>
            label.test(each.getAttribute('aria-label') ?? each.textContent),
        );
        if (!button) throw new Error(`no button ${label.source}`);
        void act(() => {
            button.click();
        });
    }
    const begun = () => asked.filter(each => each.path === '/api/jobbegin');

    test('is begun with so many flights and a seed that no number could hold', () => {
        type('Flights', '500');
        type('Seed', '9007199254740993');
        submit();
        expect(begun()).toEqual([
            {
                path: '/api/jobbegin',
                body: {
                    rig: 'rig.yaml',
                    base: 'r1',
                    kind: 'flights',
                    flights: 500,
                    seed: '9007199254740993',
                },
            },
        ]);
    });

    test('is not begun with what is no number of flights, and says so', () => {
        for (const wrong of ['0', '-3', '1e9', '100000', '', 'many', '1.5']) {
            type('Flights', wrong);
            submit();
            expect(home.querySelector('.ask-flights .problem')?.hasAttribute('hidden')).toBe(false);
        }
        expect(begun()).toEqual([]);
    });

    test('is told from every question, and can be stopped and taken up', () => {
        heard(job());
        expect(home.querySelector('.job')?.textContent).toContain('about 3 min left');
        expect(home.querySelector('.job progress')?.getAttribute('value')).toBe('50');
        press(/^Stop 200 flights/);
        expect(asked.at(-1)).toEqual({ path: '/api/jobstop', body: { job: 1 } });
        void act(() => {
            bay.open.value = 'lift';
        });
        expect(home.querySelector('.jobs-line')?.textContent).toContain('50 of 200');
        press(/^Work that goes on/);
        expect(bay.open.value).toBe('flight');
        heard(job({ state: 'stopped', far: '50 of 200, 25 %' }));
        expect(home.querySelector('.jobs-line')).toBeNull();
        expect(bay.told.value.sentence).toContain('stopped');
        press(/^Go on with 200 flights/);
        expect(asked.at(-1)).toEqual({ path: '/api/jobresume', body: { job: 1 } });
    });

    test('of another state of the rig is told to be old and does not go on', () => {
        heard(job({ state: 'stopped', stale: 'This is of the rig as it was.' }));
        expect(home.querySelector('.job')?.textContent).toContain('as it was');
        expect(() => {
            press(/^Go on with/);
        }).toThrow('no button');
        press(/^Let go of/);
        expect(asked.at(-1)).toEqual({ path: '/api/jobforget', body: { job: 1 } });
    });

    test('is text, whatever its name is', () => {
        heard(job({ title: HOSTILE, told: HOSTILE }));
        expect(home.querySelector('img')).toBeNull();
        expect(home.querySelector('.job')?.textContent).toContain(HOSTILE);
    });
});
