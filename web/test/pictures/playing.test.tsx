import { render } from 'preact';
import { act } from 'preact/test-utils';
import { Quaternion, Vector3 } from 'three';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keyed, later, momentAt, pressed, speedBeside, type Film } from '../../src/core/playing';
import { placed, rendered, type Turn } from '../../src/core/pose';
import { xyz } from '../../src/core/solid';
import { point } from '../../src/core/space';
import { Player } from '../../src/pictures/Player';
import { Random } from './random';

const FILM: Film = { moments: [0, 0.5, 1, 2, 4, 8, 16, 20, 24, 28, 30, 32, 40], pace: 2 };

let home: HTMLElement;
let frames: FrameRequestCallback[];

beforeEach(() => {
    home = document.createElement('div');
    document.body.append(home);
    frames = [];
    vi.stubGlobal('requestAnimationFrame', (call: FrameRequestCallback) => frames.push(call));
    vi.stubGlobal('cancelAnimationFrame', () => {
        frames = [];
    });
});
afterEach(() => {
    render(null, home);
    home.remove();
    vi.unstubAllGlobals();
});

/** Turns by the matrix of a quaternion written out: a second way, in the axes of a flight. */
function turned([w, x, y, z]: Turn, [a, b, c]: readonly number[]): [number, number, number] {
    const row = (p: number, q: number, r: number): number =>
        p * (a ?? 0) + q * (b ?? 0) + r * (c ?? 0);
    return [
        row(1 - 2 * (y * y + z * z), 2 * (x * y - w * z), 2 * (x * z + w * y)),
        row(2 * (x * y + w * z), 1 - 2 * (x * x + z * z), 2 * (y * z - w * x)),
        row(2 * (x * z - w * y), 2 * (y * z + w * x), 1 - 2 * (x * x + y * y)),
    ];
}

test('a turn of a flight is the same turn as drawn', () => {
    const from = new Random(11);
    const draw = (): number => from.next();
    for (let k = 0; k < 200; k++) {
        const raw = Array.from({ length: 4 }, () => draw() - 0.5);
        const size = Math.hypot(...raw);
        const turn = raw.map(each => each / size) as unknown as Turn;
        const [forward, right, down] = [draw(), draw(), draw()];
        const wanted = turned(turn, [forward, right, down]);
        const seen = new Vector3(...xyz(point(forward, right, -down))).applyQuaternion(
            new Quaternion(...rendered(turn)),
        );
        const [x, y, z] = xyz(placed({ x: wanted[0], y: wanted[1], z: wanted[2] }));
        expect(seen.distanceTo(new Vector3(x, y, z))).toBeLessThan(1e-12);
    }
});

test('a time shows the last moment that has come', () => {
    const from = new Random(12);
    const draw = (): number => from.next();
    for (let k = 0; k < 300; k++) {
        const at = 44 * draw() - 2;
        const plain = FILM.moments.filter(each => each <= at).length - 1;
        expect(momentAt(FILM.moments, at)).toBe(Math.max(0, plain));
    }
    expect(momentAt([], 3)).toBe(0);
});

test('keys go by moments, by long ways and to the ends, and never beyond them', () => {
    expect(keyed(FILM, 1, 'ArrowRight')).toBe(2);
    expect(keyed(FILM, 1.4, 'ArrowLeft')).toBe(1);
    expect(keyed(FILM, 1, 'ArrowLeft')).toBe(0.5);
    expect(keyed(FILM, 0, 'PageDown')).toBe(0);
    expect(keyed(FILM, 40, 'ArrowRight')).toBe(40);
    expect(keyed(FILM, 1, 'Home')).toBe(0);
    expect(keyed(FILM, 1, 'End')).toBe(40);
    expect(keyed(FILM, 1, 'x')).toBeUndefined();
    expect(later(FILM, 1, 3, 0.5)).toBe(4);
    expect(later(FILM, 39, 3, 4)).toBe(40);
    expect(speedBeside(4, 1)).toBe(4);
    expect(speedBeside(1, -1)).toBe(0.5);
});

test('presses of who wants no motion reach the end and begin anew', () => {
    let at = 0;
    for (let k = 0; k < 12; k++) {
        at = pressed(FILM, at);
    }
    expect(at).toBe(40);
    expect(pressed(FILM, at)).toBe(0);
});

function shown(calm: boolean) {
    vi.stubGlobal('matchMedia', () => ({
        matches: calm,
        addEventListener: vi.fn(),
        removeEventListener: vi.fn(),
    }));
    let at = 0;
    const draw = (): void => {
        render(
            <Player
                title="A flight"
                film={FILM}
                at={at}
                words={s => `${s.toFixed(1)} s`}
                told={s => (s > 0 ? 'climbs' : '')}
                onAt={to => {
                    at = to;
                    draw();
                }}
            />,
            home,
        );
    };
    void act(draw);
    const button = home.querySelector('button');
    const slider = home.querySelector('input');
    if (!button || !slider) throw new Error('nothing to play with');
    return {
        at: () => at,
        button,
        slider,
        press(on: Element, key: string): void {
            void act(() => {
                on.dispatchEvent(
                    new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }),
                );
            });
        },
        frame(clock: number): void {
            const now = frames;
            frames = [];
            void act(() => {
                now.forEach(call => {
                    call(clock);
                });
            });
        },
    };
}

test('it plays by the clock, pauses, and asks for no frame at rest', () => {
    const player = shown(false);
    expect(frames).toHaveLength(0);
    void act(() => {
        player.button.click();
    });
    player.frame(1000);
    player.frame(3500);
    expect(player.at()).toBe(5);
    player.press(player.slider, '+');
    player.frame(4000);
    expect(player.at()).toBe(7);
    void act(() => {
        player.button.click();
    });
    expect(frames).toHaveLength(0);
    expect(player.slider.getAttribute('aria-valuetext')).toBe('7.0 s: climbs');
    player.press(player.slider, 'End');
    expect(player.at()).toBe(40);
    player.press(player.slider, ' ');
    player.frame(5000);
    player.frame(6000);
    expect(player.at()).toBe(4);
});

test('who wants no motion gets single moments and no speed', () => {
    const player = shown(true);
    expect(player.button.textContent).toBe('next moment');
    void act(() => {
        player.button.click();
    });
    expect(player.at()).toBe(0.5);
    expect(frames).toHaveLength(0);
    expect(home.querySelector('select')).toBeNull();
});
