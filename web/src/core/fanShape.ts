import { across, dot, type Point } from './space';
import type { Laid } from './view';

/** Marks of the hatched rim. */
const TEETH = 20;
/** Radius of the inner circle of the rim over that of the tips. */
export const INNER = 0.72;
/** A rotor has some depth: seen on edge it stays to be seen. */
const LEAST_DEPTH = 0.03;

/** A circle of radius one, as a path. */
function circle(r: number): string {
    return `M${r} 0A${r} ${r} 0 1 1 ${-r} 0A${r} ${r} 0 1 1 ${r} 0Z`;
}
export const DISK = circle(1);
export const RIM = circle(INNER);

/** Strokes of the rim from the inner circle to the outer, slanted the way the rotor turns. */
function teeth(sense: 1 | -1): string {
    const slant = (sense * 1.6 * Math.PI) / TEETH;
    return Array.from({ length: TEETH }, (_, k) => {
        const a = (2 * Math.PI * k) / TEETH;
        const at = (r: number, angle: number): string =>
            `${(r * Math.cos(angle)).toFixed(4)} ${(r * Math.sin(angle)).toFixed(4)}`;
        return `M${at(INNER, a)}L${at(1, a + slant)}`;
    }).join('');
}
export const RIGHT_HAND = teeth(1);
export const LEFT_HAND = teeth(-1);

/**
 * How a view shows the unit circle of a fan: an SVG matrix for the paths above. Their x and y are two
 * directions across its thrust; growing angles turn right-hand about the thrust.
 */
export type Matrix = readonly [number, number, number, number, number, number];

export function fanMatrix(laid: Laid, at: Point, push: Point, tipM: number): Matrix {
    const { view, scale } = laid;
    const [first, second] = across(push);
    const r = (tipM / 2) * scale;
    let a = r * dot(first, view.across);
    let b = -r * dot(first, view.upward);
    let c = r * dot(second, view.across);
    let d = -r * dot(second, view.upward);
    if (Math.abs(a * d - b * c) < LEAST_DEPTH * r * r) {
        // On edge both columns lie along one line: push them a little to its two sides.
        const first = Math.hypot(a, b) >= Math.hypot(c, d);
        const [ux, uy] = first ? [a, b] : [c, d];
        const long = Math.hypot(ux, uy) || 1;
        const depth = LEAST_DEPTH * r;
        if (first) {
            c -= (depth * uy) / long;
            d += (depth * ux) / long;
        } else {
            a -= (depth * uy) / long;
            b += (depth * ux) / long;
        }
    }
    const e = (dot(at, view.across) - laid.left) * scale;
    const f = (laid.top - dot(at, view.upward)) * scale;
    return [a, b, c, d, e, f];
}

export function transform(matrix: Matrix): string {
    return `matrix(${matrix.map(each => each.toFixed(2)).join(' ')})`;
}

/** Half the width and half the height of what a matrix makes of the unit circle. */
export function halves([a, b, c, d]: Matrix): [number, number] {
    return [Math.hypot(a, c), Math.hypot(b, d)];
}
