/** A stretch of time that is looked at, s. */
export interface Span {
    readonly from: number;
    readonly to: number;
}

/** Nothing shorter is looked at, s: clocks of logs tell no less. */
export const SHORTEST_S = 1e-3;

export function lengthOf(span: Span): number {
    return span.to - span.from;
}

/** From the first to the last of all times; a second where there is none. */
export function spanOver(times: readonly (readonly number[])[]): Span {
    let from = Infinity;
    let to = -Infinity;
    for (const each of times) {
        from = Math.min(from, each[0] ?? Infinity);
        to = Math.max(to, each.at(-1) ?? -Infinity);
    }
    if (!(from <= to)) return { from: 0, to: 1 };
    return to - from >= SHORTEST_S ? { from, to } : { from, to: from + 1 };
}

/** Within the whole, not shorter than the shortest, as long as it was where there is room. */
export function within(span: Span, whole: Span): Span {
    const long = Math.max(SHORTEST_S, lengthOf(span));
    if (long >= lengthOf(whole)) return whole; // to the last digit: it is compared
    const from = Math.min(Math.max(span.from, whole.from), whole.to - long);
    return { from, to: from + long };
}

/**
 * Nearer or further, with one moment left where it stands.
 *
 * @param factor below 1 is nearer
 */
export function zoomed(span: Span, whole: Span, about: number, factor: number): Span {
    const long = Math.max(SHORTEST_S, lengthOf(span) * factor);
    if (long >= lengthOf(whole)) return whole;
    const share = (about - span.from) / lengthOf(span);
    return within({ from: about - share * long, to: about + (1 - share) * long }, whole);
}

/** Along, by a share of its own length. */
export function moved(span: Span, whole: Span, share: number): Span {
    const by = share * lengthOf(span);
    return within({ from: span.from + by, to: span.to + by }, whole);
}

export function isSame(one: Span, other: Span): boolean {
    return one.from === other.from && one.to === other.to;
}

export function holds(span: Span, time: number): boolean {
    return time >= span.from && time <= span.to;
}
