import type { AnswerDocument } from './wire';

type Field = AnswerDocument['fields'][string];

/** Free room beyond the outermost points, as a share of their span. */
const ROOM = 0.05;
const MOST_TICKS = 7;
const MINUS = '−';

/** What one direction of a plot spans, in the reader's units. */
export interface Axis {
    /** With its unit. */
    readonly title: string;
    readonly unit: string;
    /** shown = si * per + plus */
    readonly per: number;
    readonly plus: number;
    /** Ends, in the reader's units. */
    readonly low: number;
    readonly high: number;
    /** Distance of round values. */
    readonly step: number;
}

/** Of values in SI; of a field the answer does not explain, in SI as well. Whole numbers have no ticks between. */
export function axisOf(field: Field | undefined, name: string, values: readonly number[]): Axis {
    const { per, plus } = field ?? { per: 1, plus: 0 };
    let low = Infinity;
    let high = -Infinity;
    for (const si of values) {
        low = Math.min(low, si * per + plus);
        high = Math.max(high, si * per + plus);
    }
    if (!(low <= high)) {
        [low, high] = [0, 1];
    }
    const room = high > low ? ROOM * (high - low) : Math.max(Math.abs(high), 1) * ROOM;
    const axis = between(field, name, low - room, high + room);
    const counted = axis.unit === '' && values.length > 0 && values.every(Number.isInteger);
    return counted ? { ...axis, step: Math.max(1, axis.step) } : axis;
}

/** From end to end, in the reader's units, without room beyond. */
export function between(field: Field | undefined, name: string, low: number, high: number): Axis {
    const { label, unit, per, plus } = field ?? { label: name, unit: '', per: 1, plus: 0 };
    return {
        title: unit ? `${label} [${unit}]` : label,
        unit,
        per,
        plus,
        low,
        high,
        step: roundStep((high - low) / MOST_TICKS),
    };
}

/** The least of 1, 2, 5 times a power of ten that is not below. */
export function roundStep(rough: number): number {
    const ten = Math.pow(10, Math.floor(Math.log10(rough)));
    for (const round of [1, 2, 5]) {
        if (round * ten >= rough * (1 - 1e-12)) {
            return round * ten;
        }
    }
    return 10 * ten;
}

/** The greatest of 1, 2, 5 times a power of ten that is not above. */
export function roundBelow(most: number): number {
    const ten = Math.pow(10, Math.floor(Math.log10(most)));
    for (const round of [5, 2]) {
        if (round * ten <= most * (1 + 1e-12)) {
            return round * ten;
        }
    }
    return ten;
}

export function shownOn(axis: Axis, si: number): number {
    return si * axis.per + axis.plus;
}

/** Where a value in SI lies between the ends, 0 to 1. */
export function shareOn(axis: Axis, si: number): number {
    return (shownOn(axis, si) - axis.low) / (axis.high - axis.low);
}

/** Round values between two ends, in the same units. */
export function ticks(low: number, high: number, step: number): number[] {
    const all: number[] = [];
    const last = Math.floor(high / step + 1e-9);
    for (let i = Math.ceil(low / step - 1e-9); i <= last; i++) {
        all.push(i * step || 0); // no −0
    }
    return all;
}

/** A value of an axis, to the digits that a step needs. */
export function numeral(shown: number, step: number): string {
    const decimals = Math.min(12, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
    const text = shown.toFixed(decimals);
    return /^-0(\.0*)?$/.test(text) ? text.slice(1) : text.replace('-', MINUS);
}
