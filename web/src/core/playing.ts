/** What is played: moments between a first and a last, s, ascending. */
export interface Film {
    readonly moments: readonly number[];
    /** How many seconds of the film pass in one second at speed 1. */
    readonly pace: number;
}

export const SPEEDS = [0.1, 0.25, 0.5, 1, 2, 4] as const;
/** How many steps the long keys make, at least one moment each. */
const LONG_STEPS = 12;
/** Who wants no motion goes through the whole in so many presses. */
const CALM_STEPS = 12;

export function firstOf({ moments }: Film): number {
    return moments[0] ?? 0;
}

export function lastOf({ moments }: Film): number {
    return moments.at(-1) ?? 0;
}

/** Where the film is after so many seconds of the clock. */
export function later(film: Film, at: number, seconds: number, speed: number): number {
    return Math.min(lastOf(film), at + Math.max(0, seconds) * film.pace * speed);
}

/** The moment that is shown at a time: the last one that has come. */
export function momentAt(moments: readonly number[], at: number): number {
    let [low, high] = [0, moments.length - 1];
    while (low < high) {
        const middle = Math.ceil((low + high) / 2);
        if ((moments[middle] ?? Infinity) <= at) {
            low = middle;
        } else {
            high = middle - 1;
        }
    }
    return Math.max(0, low);
}

/** Where a key goes from a time; undefined for a key that goes nowhere. */
export function keyed(film: Film, at: number, key: string): number | undefined {
    const { moments } = film;
    const last = moments.length - 1;
    const here = momentAt(moments, at);
    const long = Math.max(1, Math.round(last / LONG_STEPS));
    const to = (k: number): number => moments[Math.min(last, Math.max(0, k))] ?? at;
    switch (key) {
        case 'ArrowRight':
        case 'ArrowUp':
            return to(here + 1);
        case 'ArrowLeft':
        case 'ArrowDown':
            return at > (moments[here] ?? at) ? to(here) : to(here - 1);
        case 'PageUp':
            return to(here + long);
        case 'PageDown':
            return to(here - long);
        case 'Home':
            return to(0);
        case 'End':
            return to(last);
        default:
            return undefined;
    }
}

/** One press of who wants no motion: a twelfth of the film on, and from its end back to its start. */
export function pressed(film: Film, at: number): number {
    const last = film.moments.length - 1;
    const here = momentAt(film.moments, at);
    const step = Math.max(1, Math.round(last / CALM_STEPS));
    return film.moments[here >= last ? 0 : Math.min(last, here + step)] ?? at;
}

/** The speed next to one, quicker or slower. */
export function speedBeside(speed: number, by: 1 | -1): number {
    const at = SPEEDS.findIndex(each => each === speed);
    return SPEEDS[Math.min(SPEEDS.length - 1, Math.max(0, at + by))] ?? 1;
}
