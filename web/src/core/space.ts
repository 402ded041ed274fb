/** Forward, right, up: m, or a direction. A left-handed set of axes: mind the vector product. */
export interface Point {
    readonly forward: number;
    readonly right: number;
    readonly up: number;
}

export const ORIGIN: Point = { forward: 0, right: 0, up: 0 };

export function point(forward: number, right: number, up: number): Point {
    return { forward, right, up };
}

export function plus(a: Point, b: Point, times = 1): Point {
    return point(a.forward + times * b.forward, a.right + times * b.right, a.up + times * b.up);
}

export function minus(a: Point, b: Point): Point {
    return plus(a, b, -1);
}

export function dot(a: Point, b: Point): number {
    return a.forward * b.forward + a.right * b.right + a.up * b.up;
}

export function cross(a: Point, b: Point): Point {
    return point(
        a.right * b.up - a.up * b.right,
        a.up * b.forward - a.forward * b.up,
        a.forward * b.right - a.right * b.forward,
    );
}

export function length(a: Point): number {
    return Math.hypot(a.forward, a.right, a.up);
}

/** Of length one; up, where a length is missing. */
export function unit(a: Point): Point {
    const size = length(a);
    return size > 0 ? point(a.forward / size, a.right / size, a.up / size) : point(0, 0, 1);
}

/**
 * Two directions across an axis, square to each other, such that growing angles from the first to
 * the second turn right-hand about the axis.
 */
export function across(axis: Point): [Point, Point] {
    const along = unit(axis);
    const any = Math.abs(along.forward) < 0.9 ? point(1, 0, 0) : point(0, 1, 0);
    const first = unit(cross(any, along));
    return [first, cross(first, along)]; // the other way round: these axes are left-handed
}

/** The other side of the wearer's middle. */
export function mirrored(a: Point): Point {
    return point(a.forward, -a.right, a.up);
}
