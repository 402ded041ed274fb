import { minus, mirrored, plus, point, type Point } from './space';
import type { View } from './view';

/** To the nearest step of each coordinate that the view shows; the others stay. */
export function snapped(place: Point, from: Point, view: View, stepM: number): Point {
    const round = (value: number, seen: number, kept: number): number =>
        seen === 0 ? kept : Math.round(value / stepM) * stepM;
    const seen = (axis: keyof Point): number => view.across[axis] || view.upward[axis];
    return point(
        round(place.forward, seen('forward'), from.forward),
        round(place.right, seen('right'), from.right),
        round(place.up, seen('up'), from.up),
    );
}

const STEPS: Readonly<Record<string, readonly [number, number]>> = {
    ArrowLeft: [-1, 0],
    ArrowRight: [1, 0],
    ArrowUp: [0, 1],
    ArrowDown: [0, -1],
};

/** Where an arrow key takes a place; undefined for any other key. */
export function stepped(place: Point, key: string, view: View, stepM: number): Point | undefined {
    const step = STEPS[key];
    return step && plus(plus(place, view.across, step[0] * stepM), view.upward, step[1] * stepM);
}

/** Where the twin goes while a part goes from one place to another: the mirrored way. */
export function twinPlace(twinFrom: Point, from: Point, to: Point): Point {
    return plus(twinFrom, mirrored(minus(to, from)));
}
