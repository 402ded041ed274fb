import { between, numeral, roundStep, ticks, type Axis } from './axis';
import type { Fields } from './cells';
import { holds, type Span } from './span';
import {
    bandOf,
    envelopeLines,
    lineOf,
    rangeOf,
    type Envelope,
    type Ground,
    type Polyline,
} from './strips';
import type { Strip, StripEvent } from './wire';

/** What one strip draws, pixels from its own corner: the same for a canvas and for a vector picture. */
export interface StripDrawn {
    readonly width: number;
    readonly height: number;
    readonly y: Axis;
    readonly downs: readonly number[];
    readonly acrosses: readonly { y: number; words: string }[];
    readonly band: Polyline;
    readonly expected: Polyline;
    readonly measured: readonly Polyline[];
    /** Of another test. */
    readonly beside: readonly Polyline[];
    readonly events: readonly { x: number; number: number }[];
}

/** Values fit between these. */
const AIR = 6;
/** More lines across would leave no room for their words. */
const MOST_ACROSS = 5;

export interface StripAsked {
    readonly strip: Strip;
    readonly measured: Envelope;
    readonly beside: Envelope | undefined;
    readonly events: readonly StripEvent[];
    readonly span: Span;
    readonly fields: Fields;
    readonly width: number;
    readonly height: number;
}

export function stripDrawn(asked: StripAsked): StripDrawn {
    const { strip, measured, beside, events, span, fields, width, height } = asked;
    const lines = beside === undefined ? [measured] : [measured, beside];
    const y = fewer(rangeOf(strip, lines, span, fields));
    const ground: Ground = { span, y, width, height };
    const time = timeAxis(span, fields);
    const x = (si: number): number => ((si - span.from) / (span.to - span.from)) * width;
    return {
        width,
        height,
        y,
        downs: ticks(time.low, time.high, time.step).map(tick => x((tick - time.plus) / time.per)),
        acrosses: ticks(y.low, y.high, y.step)
            .map(tick => ({
                y: (1 - (tick - y.low) / (y.high - y.low)) * height,
                words: numeral(tick, y.step),
            }))
            .filter(across => across.y >= AIR && across.y <= height - AIR),
        band: bandOf(strip, ground),
        expected: lineOf(strip, strip.expected, ground),
        measured: envelopeLines(measured, ground),
        beside: beside === undefined ? [] : envelopeLines(beside, ground),
        events: events
            .map((event, k) => ({ time: event.time, x: x(event.time), number: k + 1 }))
            .filter(event => holds(span, event.time)),
    };
}

/** Of a low strip: not as many round values as a tall plot has. */
function fewer(axis: Axis): Axis {
    return { ...axis, step: Math.max(axis.step, roundStep((axis.high - axis.low) / MOST_ACROSS)) };
}

/** The clock of a span, without room beyond its ends. */
export function timeAxis(span: Span, fields: Fields): Axis {
    const field = fields['time'];
    const { per, plus } = field ?? { per: 1, plus: 0 };
    return between(field, 'time', span.from * per + plus, span.to * per + plus);
}
