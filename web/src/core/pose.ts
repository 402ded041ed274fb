import { point, type Point } from './space';

/** Forward, right, down, m: axes of a flight (ISO 1151-1). */
export interface At {
    readonly x: number;
    readonly y: number;
    readonly z: number;
}
/** Of length one, from the body to the world: w, x, y, z. */
export type Turn = readonly [number, number, number, number];

export const UNTURNED: Turn = [1, 0, 0, 0];

/** As a renderer wants it: x right, y up, z back; x, y, z, w. A turn keeps its sense: both axes are right-handed. */
export function rendered([w, x, y, z]: Turn): [number, number, number, number] {
    return [y, -z, -x, w];
}

export function placed({ x, y, z }: At): Point {
    return point(x, y, -z);
}
