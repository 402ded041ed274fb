import { axisOf, numeral, shareOn, shownOn, type Axis } from './axis';
import type { Fields } from './cells';
import { holds, spanOver, type Span } from './span';
import type { Stretch, Strip, StripEvent, Strips } from './wire';

/** Times with the least and the greatest that was seen about each; one sample is both. SI. */
export interface Envelope {
    readonly times: readonly number[];
    readonly low: readonly number[];
    readonly high: readonly number[];
    /** Longest time between two neighbours that a line may join, s. */
    readonly joins: number;
}

/** Points of a line in pixels: x, y, x, y, … */
export type Polyline = number[];

/** So many usual steps without a sample are a gap. */
const GAP = 6;

export function envelopeOf(stretch: Stretch): Envelope {
    const { times, low, high } = stretch;
    return { times, low, high, joins: GAP * usualStep(times) };
}

/** What an answer has of a channel, which is thinned already. */
export function measuredOf(strip: Strip): Envelope {
    const { times, measured } = strip;
    return { times, low: measured, high: measured, joins: GAP * usualStep(times) };
}

/** The middle one of all steps, s. */
export function usualStep(times: readonly number[]): number {
    const steps: number[] = [];
    for (let k = 1; k < times.length; k++) steps.push((times[k] ?? 0) - (times[k - 1] ?? 0));
    steps.sort((a, b) => a - b);
    return steps[Math.floor(steps.length / 2)] ?? 0;
}

/** Number of the last time that is not later; −1 before the first. */
export function upTo(times: readonly number[], time: number): number {
    let low = 0;
    let high = times.length;
    while (low < high) {
        const middle = (low + high) >>> 1;
        if ((times[middle] ?? Infinity) <= time) low = middle + 1;
        else high = middle;
    }
    return low - 1;
}

/** First and last that a line through a span needs: one more on each side, so that it leaves at the edge. */
export function seen(times: readonly number[], span: Span): readonly [number, number] {
    const first = Math.max(0, upTo(times, span.from));
    const last = Math.min(times.length - 1, upTo(times, span.to) + 1);
    return [first, last];
}

/** All whole of it: what is measured and what was to be expected. */
export function wholeOf(strips: Strips): Span {
    return spanOver(strips.strips.map(({ times }) => times));
}

/** What the values of one strip span within a span of time, with room beyond. */
export function rangeOf(
    strip: Strip,
    lines: readonly Envelope[],
    span: Span,
    fields: Fields,
): Axis {
    let low = Infinity;
    let high = -Infinity;
    const take = (times: readonly number[], values: readonly number[]): void => {
        if (values.length === 0) return;
        const [first, last] = seen(times, span);
        for (let k = first; k <= last; k++) {
            const value = values[k];
            if (value === undefined) continue;
            if (value < low) low = value;
            if (value > high) high = value;
        }
    };
    for (const line of lines) {
        take(line.times, line.low);
        take(line.times, line.high);
    }
    for (const values of [strip.expected, strip.low, strip.high]) take(strip.times, values);
    return axisOf(fields[strip.field], strip.label, low <= high ? [low, high] : []);
}

/** Where a time and a value lie on a strip, pixels. */
export interface Ground {
    readonly span: Span;
    readonly y: Axis;
    readonly width: number;
    readonly height: number;
}

function xOn(ground: Ground, time: number): number {
    const { span, width } = ground;
    return ((time - span.from) / (span.to - span.from)) * width;
}

function yOn(ground: Ground, si: number): number {
    return (1 - shareOn(ground.y, si)) * ground.height;
}

/** Least and greatest as lines that join each other the short way; a new one after each gap. */
export function envelopeLines(line: Envelope, ground: Ground): Polyline[] {
    const [first, last] = seen(line.times, ground.span);
    const all: Polyline[] = [];
    let now: Polyline = [];
    let before = -Infinity;
    let y = 0;
    for (let k = first; k <= last; k++) {
        const time = line.times[k];
        const low = line.low[k];
        const high = line.high[k];
        if (time === undefined || low === undefined || high === undefined) continue;
        if (time - before > line.joins) {
            if (now.length > 0) all.push(now);
            now = [];
            y = yOn(ground, low);
        }
        before = time;
        const x = xOn(ground, time);
        const one = yOn(ground, low);
        const other = yOn(ground, high);
        const [near, far] = Math.abs(one - y) <= Math.abs(other - y) ? [one, other] : [other, one];
        now.push(x, near);
        if (far !== near) now.push(x, far);
        y = far;
    }
    if (now.length > 0) all.push(now);
    return all;
}

/** A line of values over the times of a strip. */
export function lineOf(strip: Strip, values: readonly number[], ground: Ground): Polyline {
    const points: Polyline = [];
    if (values.length === 0) return points;
    const [first, last] = seen(strip.times, ground.span);
    for (let k = first; k <= last; k++) {
        const time = strip.times[k];
        const value = values[k];
        if (time === undefined || value === undefined) continue;
        points.push(xOn(ground, time), yOn(ground, value));
    }
    return points;
}

/** The band as one outline: along its upper end and back along its lower. */
export function bandOf(strip: Strip, ground: Ground): Polyline {
    const upper = lineOf(strip, strip.high, ground);
    const lower = lineOf(strip, strip.low, ground);
    for (let k = lower.length - 2; k >= 0; k -= 2) upper.push(lower[k] ?? 0, lower[k + 1] ?? 0);
    return upper;
}

/** What stands at a moment; absent where nothing was recorded near it. SI. */
export interface Moment {
    readonly measured: readonly [number, number] | undefined;
    readonly expected: number | undefined;
    readonly band: readonly [number, number] | undefined;
}

export function momentOf(strip: Strip, line: Envelope, time: number): Moment {
    const k = nearestTo(line.times, time);
    const low = line.low[k];
    const high = line.high[k];
    const near = Math.abs((line.times[k] ?? Infinity) - time) <= line.joins;
    const at = (values: readonly number[]): number | undefined => valueOver(strip, values, time);
    const bandLow = at(strip.low);
    const bandHigh = at(strip.high);
    return {
        measured: near && low !== undefined && high !== undefined ? [low, high] : undefined,
        expected: at(strip.expected),
        band: bandLow !== undefined && bandHigh !== undefined ? [bandLow, bandHigh] : undefined,
    };
}

export function nearestTo(times: readonly number[], time: number): number {
    const before = upTo(times, time);
    const after = before + 1;
    const back = time - (times[before] ?? -Infinity);
    const on = (times[after] ?? Infinity) - time;
    return back <= on ? before : after;
}

/** Straight between two times of a strip; undefined beyond its ends. */
function valueOver(strip: Strip, values: readonly number[], time: number): number | undefined {
    const k = upTo(strip.times, time);
    const one = values[k];
    const from = strip.times[k];
    if (one === undefined || from === undefined) return undefined;
    const other = values[k + 1];
    const to = strip.times[k + 1];
    if (other === undefined || to === undefined) return time === from ? one : undefined;
    return one + ((other - one) * (time - from)) / (to - from);
}

/** A moment in words: "measured 23.1 to 23.4 N, expected 24.0 N (22.9 to 25.1 N)". */
export function momentWords(moment: Moment, y: Axis, line = 'measured'): string {
    const say = (si: number): string => numeral(shownOn(y, si), y.step / 100);
    const unit = y.unit ? ` ${y.unit}` : '';
    const { measured, expected, band } = moment;
    const said: string[] = [];
    if (measured) {
        const [low, high] = measured;
        said.push(`${line} ${low === high ? say(low) : `${say(low)} to ${say(high)}`}${unit}`);
    }
    const ends = band ? ` (${say(band[0])} to ${say(band[1])}${unit})` : '';
    if (expected !== undefined) said.push(`expected ${say(expected)}${unit}${ends}`);
    return said.length > 0 ? said.join(', ') : 'nothing recorded here';
}

/** Events in a span, in the order of time. */
export function eventsIn(events: readonly StripEvent[], span: Span): StripEvent[] {
    return events.filter(({ time }) => holds(span, time)).sort((a, b) => a.time - b.time);
}
