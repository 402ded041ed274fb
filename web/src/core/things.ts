import { bareName } from './mounts';
import { thickM, type Scene } from './scene';
import { dot, minus, plus, type Point } from './space';

/** Something drawn in space that can be pointed at: about a point, or along a stretch. */
export interface Thing {
    readonly id: string;
    /** "fan, left-hand", "pack", "limb", "wire": what it is. */
    readonly what: string;
    readonly from: Point;
    readonly to: Point;
    /** How far it goes about its point or stretch, m. */
    readonly radiusM: number;
    /** What the file calls it; nothing of what no file has. */
    readonly part: string | undefined;
}

export function thingAt(
    id: string,
    what: string,
    at: Point,
    radiusM: number,
    part: string | undefined = bareName(id),
): Thing {
    return { id, what, from: at, to: at, radiusM, part };
}

/** Half of how large packs, other parts and mounts are drawn, m. */
export const HALF_M = { pack: 0.025, part: 0.0125, mount: 0.03 } as const;
export const CENTRE_M = 0.035;

/** All of a rig that can be pointed at, in the order in which keys go through it. */
export function thingsOf(scene: Scene): Thing[] {
    return [
        ...scene.fans.map(fan =>
            thingAt(
                fan.id,
                `fan, ${fan.rightHand ? 'right-hand' : 'left-hand'}`,
                fan.at,
                fan.tipM / 2,
            ),
        ),
        ...scene.parts.map(part => thingAt(part.id, part.kind, part.at, HALF_M[part.kind])),
        ...scene.limbs.map(limb => ({
            id: `limb ${limb.name}`,
            what: 'limb',
            from: limb.from,
            to: limb.to,
            radiusM: thickM(limb.name) / 2,
            part: undefined,
        })),
        ...(scene.centre
            ? [thingAt('the centre of mass', 'of the whole rig', scene.centre, CENTRE_M, undefined)]
            : []),
    ];
}

/** What a thing is called: limbs by their name alone. */
export function thingName({ id }: Thing): string {
    return bareName(id).replace(/^limb /, '');
}

/** The thing before or after one, round and round; from nothing the first or the last. */
export function beside(
    things: readonly Thing[],
    current: string | undefined,
    by: 1 | -1,
): Thing | undefined {
    const at = things.findIndex(thing => thing.id === current);
    const next = at < 0 ? (by > 0 ? 0 : things.length - 1) : at + by;
    return things[(next + things.length) % things.length];
}

/** A point as it is seen: place on the canvas, how far away, and how long a metre is there. */
export interface Seen {
    readonly x: number;
    readonly y: number;
    readonly depth: number;
    readonly perM: number;
}

/** A pointer this near to a thing means it, in units of the canvas. */
const NEAR = 9;

/** What is meant by a place of the canvas: what is under it, the nearest to the eye; else what is near. */
export function pointed(
    things: readonly Thing[],
    see: (p: Point) => Seen,
    x: number,
    y: number,
): Thing | undefined {
    let best: Thing | undefined;
    let least: readonly [number, number] = [NEAR, Infinity];
    for (const thing of things) {
        const [a, b] = [see(thing.from), see(thing.to)];
        const share = alongShare(x - a.x, y - a.y, b.x - a.x, b.y - a.y);
        const mix = (p: number, q: number): number => p + share * (q - p);
        const away = Math.hypot(x - mix(a.x, b.x), y - mix(a.y, b.y));
        const gap = Math.max(0, away - thing.radiusM * mix(a.perM, b.perM));
        const depth = mix(a.depth, b.depth) - thing.radiusM;
        if (gap < least[0] || (gap === least[0] && gap < NEAR && depth < least[1])) {
            best = thing;
            least = [gap, depth];
        }
    }
    return best;
}

/** Where the foot of a place lies on a way from nothing, 0 to 1. */
function alongShare(px: number, py: number, wx: number, wy: number): number {
    const square = wx * wx + wy * wy;
    return square > 0 ? Math.min(1, Math.max(0, (px * wx + py * wy) / square)) : 0;
}

/** The shortest way between two things, from middle to middle or axis to axis. */
export interface Measured {
    readonly from: Point;
    readonly to: Point;
}

/** Between two stretches: the pair of points of the least distance. */
export function measured(one: Thing, other: Thing): Measured {
    const u = minus(one.to, one.from);
    const v = minus(other.to, other.from);
    const w = minus(one.from, other.from);
    const [a, b, c] = [dot(u, u), dot(u, v), dot(v, v)];
    const [d, e] = [dot(u, w), dot(v, w)];
    const clamp = (t: number): number => Math.min(1, Math.max(0, t));
    const across = a * c - b * b;
    // The foot on one, held within it; then the nearest of the other, and back once.
    let s = a > 0 ? (across > 1e-12 * a * c ? clamp((b * e - c * d) / across) : 0) : 0;
    const t = c > 0 ? clamp((b * s + e) / c) : 0;
    s = a > 0 ? clamp((b * t - d) / a) : 0;
    return { from: plus(one.from, u, s), to: plus(other.from, v, t) };
}
