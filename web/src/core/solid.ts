import { across, plus, type Point } from './space';

/** Where one looks from; the middle of the rig is looked at. */
export interface Outlook {
    readonly name: string;
    readonly words: string;
    /** Towards whoever looks. */
    readonly from: Point;
}

export const OUTLOOKS: readonly Outlook[] = [
    { name: 'corner', words: 'three-quarter', from: { forward: -0.8, right: 0.7, up: 0.5 } },
    { name: 'front', words: 'from the front', from: { forward: 1, right: 0, up: 0.12 } },
    { name: 'behind', words: 'from behind', from: { forward: -1, right: 0, up: 0.12 } },
    { name: 'left', words: 'from its left side', from: { forward: 0, right: -1, up: 0.12 } },
    { name: 'right', words: 'from its right side', from: { forward: 0, right: 1, up: 0.12 } },
    { name: 'above', words: 'from above', from: { forward: -0.0001, right: 0, up: 1 } },
];

/** x right, y up, z back: right-handed, as a renderer wants it. */
export function xyz({ forward, right, up }: Point): [number, number, number] {
    return [right, up, -forward];
}

/** The other way. */
export function fromXyz([x, y, z]: readonly [number, number, number]): Point {
    return { forward: 0 - z, right: x, up: y };
}

export interface Ring {
    readonly at: Point;
    readonly push: Point;
    readonly radius: number;
}

function on({ at, push, radius }: Ring, r: number, angle: number): Point {
    const [first, second] = across(push);
    return plus(
        plus(at, first, r * radius * Math.cos(angle)),
        second,
        r * radius * Math.sin(angle),
    );
}

const SIDES = 32;
const TEETH = 20;
const INNER = 0.72;

/** Ends of the strokes of a fan: both circles of its rim and the slanted hatch between. */
export function fanStrokes(ring: Ring, rightHand: boolean): Point[] {
    const ends: Point[] = [];
    for (const r of [1, INNER]) {
        for (let k = 0; k < SIDES; k++) {
            ends.push(on(ring, r, (2 * Math.PI * k) / SIDES));
            ends.push(on(ring, r, (2 * Math.PI * (k + 1)) / SIDES));
        }
    }
    const slant = ((rightHand ? 1 : -1) * 1.6 * Math.PI) / TEETH;
    for (let k = 0; k < TEETH; k++) {
        const angle = (2 * Math.PI * k) / TEETH;
        ends.push(on(ring, INNER, angle), on(ring, 1, angle + slant));
    }
    return ends;
}

/** Ends of the strokes of an arrow that goes round the hub the way the rotor turns. */
export function spinStrokes(ring: Ring, rightHand: boolean): Point[] {
    const sense = rightHand ? 1 : -1;
    const R = 0.42;
    const steps = 12;
    const turn = 1.5 * Math.PI;
    const ends: Point[] = [];
    for (let k = 0; k < steps; k++) {
        ends.push(on(ring, R, (sense * turn * k) / steps));
        ends.push(on(ring, R, (sense * turn * (k + 1)) / steps));
    }
    const tip = on(ring, R, sense * turn);
    const back = sense * (turn - 0.5);
    ends.push(tip, on(ring, R * 1.35, back), tip, on(ring, R * 0.65, back));
    return ends;
}

/** Corners of the triangles that fill a circle. */
export function diskCorners(ring: Ring): Point[] {
    return Array.from({ length: SIDES }, (_, k) => [
        ring.at,
        on(ring, 1, (2 * Math.PI * k) / SIDES),
        on(ring, 1, (2 * Math.PI * (k + 1)) / SIDES),
    ]).flat();
}
