import { axisOf, numeral, shownOn } from './axis';
import { length, minus, type Point } from './space';
import type { AnswerDocument, Units } from './wire';

type Fields = AnswerDocument['fields'];

const PLACE = 'place-forward';
/** As the table of fields tells places, for an answer that tells none. */
const USUAL = {
    si: { label: 'forward', unit: 'mm', per: 1000, plus: 0 },
    us: { label: 'forward', unit: 'in', per: 1 / 0.0254, plus: 0 },
} as const satisfies Record<Units, Fields[string]>;

/** The fields of an answer, with lengths to measure by where it has none. */
export function withLengths(fields: Fields, units: Units): Fields {
    return PLACE in fields ? fields : { ...fields, [PLACE]: USUAL[units] };
}

/** A length as the answer tells places: to a millimetre, or a hundredth of an inch. */
export function lengthWords(m: number, fields: Fields): string {
    const axis = axisOf(fields[PLACE], PLACE, [0, 1]);
    const unit = axis.unit || 'm';
    return `${numeral(shownOn(axis, m), axis.per * 0.001)} ${unit}`;
}

/** "432 mm: 120 mm back, 80 mm right, 407 mm up" from one place to another. */
export function wayWords(from: Point, to: Point, fields: Fields): string {
    const way = minus(to, from);
    const share = (value: number, more: string, less: string): string =>
        `${lengthWords(Math.abs(value), fields)} ${value < 0 ? less : more}`;
    const parts = [
        share(way.forward, 'forward', 'back'),
        share(way.right, 'right', 'left'),
        share(way.up, 'up', 'down'),
    ];
    return `${lengthWords(length(way), fields)}: ${parts.join(', ')}`;
}
