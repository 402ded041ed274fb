import { Group, LineSegments, type LineBasicMaterial } from 'three';
import { length, minus, plus, point, type Point } from '../../core/space';
import type { Measured } from '../../core/things';
import type { Ghost } from '../dragging';
import type { Overlay } from './exhibit';
import { dashes, strokes, type Colour } from './shapes';

/** Half of the cross where a dragged part comes to stand, m. */
const CROSS_M = 0.05;

function cross(at: Point, colour: string): LineSegments {
    const arm = (f: number, r: number, u: number): Point[] => [
        plus(at, point(f, r, u), CROSS_M),
        plus(at, point(f, r, u), -CROSS_M),
    ];
    return strokes([...arm(1, 0, 0), ...arm(0, 1, 0), ...arm(0, 0, 1)], colour);
}

/** Where a part and its twin come to stand, and the ways there. */
export function ghostOverlay(ghost: Ghost): Overlay {
    const ways: [Point, Point][] = [[ghost.from, ghost.stand]];
    if (ghost.twinFrom && ghost.twinTo) ways.push([ghost.twinFrom, ghost.twinTo]);
    return {
        build: (colour: Colour) => {
            const all = new Group();
            for (const [from, to] of ways) {
                all.add(cross(to, colour('--accent')));
                if (length(minus(to, from)) > 1e-6) {
                    all.add(dashes(from, to, colour('--accent'), 0.02));
                }
            }
            return all;
        },
        names: [],
    };
}

/** The way that is measured, with its length beside its middle. */
export function measureOverlay({ from, to }: Measured, words: string): Overlay {
    return {
        build: (colour: Colour) => {
            const all = new Group();
            const line = strokes([from, to], colour('--mark-2'));
            const ends = [cross(from, colour('--mark-2')), cross(to, colour('--mark-2'))];
            for (const each of [line, ...ends]) {
                (each.material as LineBasicMaterial).depthTest = false;
                each.renderOrder = 4;
                all.add(each);
            }
            return all;
        },
        names: [{ words, at: [plus(from, minus(to, from), 0.5)] }],
    };
}

/** One over the other. */
export function together(...overlays: readonly (Overlay | undefined)[]): Overlay | undefined {
    const some = overlays.filter(each => each !== undefined);
    if (some.length === 0) return undefined;
    return {
        build: colour => {
            const all = new Group();
            some.forEach(each => all.add(each.build(colour)));
            return all;
        },
        names: some.flatMap(each => each.names),
    };
}
