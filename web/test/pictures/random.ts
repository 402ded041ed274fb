import { point, unit, type Point } from '../../src/core/space';
import type { Scene } from '../../src/core/scene';

/** Draws from a seed, so that what fails can be drawn again. */
export class Random {
    constructor(private state: number) {}

    /** From 0 to 1 (mulberry32, from memory). */
    next(): number {
        this.state = (this.state + 0x6d2b79f5) | 0;
        let t = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
        t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
        return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
    }

    between(low: number, high: number): number {
        return low + (high - low) * this.next();
    }

    whole(low: number, high: number): number {
        return Math.floor(this.between(low, high + 1));
    }

    of<T>(all: readonly T[]): T {
        return all[this.whole(0, all.length - 1)] as T;
    }

    point(reach: number): Point {
        const each = (): number => this.between(-reach, reach);
        return point(each(), each(), each());
    }
}

/** Like expect, and quick enough to be asked a hundred thousand times. */
export function must(holds: boolean, words: string): void {
    if (!holds) {
        throw new Error(words);
    }
}

/** Runs a property for many seeds; names the one that fails. */
export function forSeeds(count: number, property: (random: Random) => void): void {
    for (let seed = 1; seed <= count; seed++) {
        try {
            property(new Random(seed));
        } catch (fault) {
            throw new Error(`seed ${seed}: ${String(fault)}`, { cause: fault });
        }
    }
}

const NAMES = [
    'left',
    'back-top',
    'p',
    'links, außen',
    '左舷の送風機',
    'a very long name of a fan that no label could ever hold',
    'MMMMWWWW',
    '<b>&"quoted"</b>',
];

export function randomScene(random: Random): Scene {
    const groups = random.whole(1, 5);
    const fans = Array.from({ length: random.whole(1, 36) }, (_, k) => ({
        id: `${random.of(NAMES)}${k % groups}.${k}`,
        rightHand: random.next() < 0.5,
        at: random.point(0.9),
        tipM: random.between(0.03, 0.6),
        thrust: undefined,
        thrustN: random.between(0, 300),
        push: unit(random.point(1)),
    }));
    const kinds = ['pack', 'part', 'mount'] as const;
    const parts = Array.from({ length: random.whole(0, 14) }, (_, k) => ({
        id: `${random.of(NAMES)}.${k}`,
        kind: random.of(kinds),
        at: random.point(0.7),
    }));
    return {
        fans,
        parts,
        limbs: [{ name: 'trunk', from: point(0, 0, 0), to: point(0, 0, -0.5) }],
        centre: random.point(0.3),
        lift: undefined,
        jets: [],
        strikes: [],
    };
}
