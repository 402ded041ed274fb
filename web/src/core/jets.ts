import type { DrawnJet, Scene } from './scene';
import { across, plus, type Point } from './space';

/** One jet as rings about its axis, from the exit on: narrow to wide. */
export interface JetShape {
    readonly fan: string;
    readonly struck: boolean;
    readonly rings: readonly { readonly at: Point; readonly radius: number }[];
    /** Unit vector the way the air goes. */
    readonly along: Point;
}

/** From exit to the end of its core and on to where it is drawn. */
export function jetShapes(scene: Scene): JetShape[] {
    const struck = new Set(scene.strikes.map(strike => strike.fan));
    return scene.jets.flatMap(jet => {
        const fan = scene.fans.find(each => each.id === jet.fan);
        if (!fan) return [];
        const ring = (way: number, wide: number) => ({
            at: plus(fan.at, fan.push, -way),
            radius: wide / 2,
        });
        return [
            {
                fan: jet.fan,
                struck: struck.has(jet.fan),
                along: plus({ forward: 0, right: 0, up: 0 }, fan.push, -1),
                rings: stations(jet).map(([way, wide]) => ring(way, wide)),
            },
        ];
    });
}

function stations(jet: DrawnJet): [number, number][] {
    const exit: [number, number] = [0, jet.exitM];
    const end: [number, number] = [jet.longM, jet.wideM];
    return jet.longM > jet.coreM ? [exit, [jet.coreM, jet.coreWideM], end] : [exit, end];
}

export const JET_SIDES = 16;

function on(ring: JetShape['rings'][number], along: Point, k: number): Point {
    const [first, second] = across(along);
    const angle = (2 * Math.PI * k) / JET_SIDES;
    return plus(
        plus(ring.at, first, ring.radius * Math.cos(angle)),
        second,
        ring.radius * Math.sin(angle),
    );
}

/** Corners of the triangles of its side. */
export function jetCorners({ rings, along }: JetShape): Point[] {
    return rings.slice(1).flatMap((ring, k) => {
        const before = rings[k] ?? ring;
        return Array.from({ length: JET_SIDES }, (_, j) => {
            const [a, b] = [on(before, along, j), on(before, along, j + 1)];
            const [c, d] = [on(ring, along, j), on(ring, along, j + 1)];
            return [a, c, b, b, c, d];
        }).flat();
    });
}

/** Ends of its strokes: a circle at its far end, and four lines along its side. */
export function jetStrokes({ rings, along }: JetShape): Point[] {
    const ends: Point[] = [];
    const last = rings.at(-1);
    if (last) {
        for (let k = 0; k < JET_SIDES; k++) {
            ends.push(on(last, along, k), on(last, along, k + 1));
        }
    }
    rings.slice(1).forEach((ring, k) => {
        const before = rings[k] ?? ring;
        for (let j = 0; j < JET_SIDES; j += JET_SIDES / 4) {
            ends.push(on(before, along, j), on(ring, along, j));
        }
    });
    return ends;
}
