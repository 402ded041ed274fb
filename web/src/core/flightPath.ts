import { momentAt } from './playing';
import type { At, Turn } from './pose';
import type { FlightPath } from './wire';

/** Where a flight is at a moment. */
export interface Pose {
    readonly at: At;
    readonly turn: Turn;
}

/** Between two moments of a path: straight in place, and the shorter way round in turn. */
export function poseAt(path: FlightPath, time: number): Pose {
    const k = momentAt(path.times, time);
    const last = path.times.length - 1;
    const next = Math.min(last, k + 1);
    const t0 = path.times[k] ?? 0;
    const t1 = path.times[next] ?? t0;
    const share = t1 > t0 ? Math.min(1, Math.max(0, (time - t0) / (t1 - t0))) : 0;
    const mixed = (values: readonly number[], width: number, i: number, sign = 1): number => {
        const a = values[width * k + i] ?? 0;
        const b = sign * (values[width * next + i] ?? 0);
        return a + share * (b - a);
    };
    const dot = [0, 1, 2, 3].reduce(
        (sum, i) => sum + (path.turns[4 * k + i] ?? 0) * (path.turns[4 * next + i] ?? 0),
        0,
    );
    const sign = dot < 0 ? -1 : 1;
    const turn = [0, 1, 2, 3].map(i => mixed(path.turns, 4, i, sign));
    const length = Math.hypot(...turn);
    const unit = (i: number): number => (length > 0 ? (turn[i] ?? 0) / length : i === 0 ? 1 : 0);
    return {
        at: {
            x: mixed(path.places, 3, 0),
            y: mixed(path.places, 3, 1),
            z: mixed(path.places, 3, 2),
        },
        turn: [unit(0), unit(1), unit(2), unit(3)],
    };
}
