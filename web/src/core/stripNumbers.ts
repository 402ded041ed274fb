import { axisOf, numeral, shownOn } from './axis';
import { part, text, type Cell, type Fields, type Numbers } from './cells';
import { wholeOf } from './strips';
import type { Strip, Strips } from './wire';

/** Strips in words and numbers: what happened, then a row a channel. */
export function stripNumbers(section: Strips, fields: Fields): Numbers[] {
    const whole = wholeOf(section);
    const t = axisOf(fields['time'], 'time', [whole.from, whole.to]);
    const time = (si: number): Cell => ({
        words: `${numeral(shownOn(t, si), t.step / 100)}${t.unit ? ` ${t.unit}` : ''}`,
        si,
        number: true,
    });
    const events: Numbers = {
        id: `${section.id}-events`,
        title: `${section.title}: what happened`,
        heads: [
            { label: 'time', siUnit: 's' },
            { label: 'what', siUnit: '' },
            { label: 'part', siUnit: '' },
        ],
        rows: [...section.events]
            .sort((a, b) => a.time - b.time)
            .map(event => [time(event.time), text(event.label), part(event.part)]),
    };
    const rows = section.strips.map(strip => stripRow(strip, fields, time));
    const channels: Numbers = {
        id: `${section.id}-channels`,
        title: section.title,
        heads: [
            { label: 'channel', siUnit: '' },
            { label: 'part', siUnit: '' },
            { label: 'least measured', siUnit: '' },
            { label: 'greatest measured', siUnit: '' },
            { label: 'farthest outside the band at', siUnit: 's' },
            { label: 'measured there', siUnit: '' },
            { label: 'expected there', siUnit: '' },
        ],
        rows,
    };
    return section.events.length > 0 ? [events, channels] : [channels];
}

function stripRow(strip: Strip, fields: Fields, time: (si: number) => Cell): Cell[] {
    const y = axisOf(fields[strip.field], strip.label, [...strip.measured, ...strip.expected]);
    const number = (si: number | undefined): Cell =>
        si === undefined
            ? text('not recorded')
            : {
                  words: `${numeral(shownOn(y, si), y.step / 100)}${y.unit ? ` ${y.unit}` : ''}`,
                  si,
                  number: true,
              };
    const worst = farthestOutside(strip);
    const extreme = (better: (a: number, b: number) => boolean): number | undefined =>
        strip.measured.reduce<number | undefined>(
            (best, value) => (best === undefined || better(value, best) ? value : best),
            undefined,
        );
    return [
        text(strip.label),
        strip.part === '' ? text('') : part(strip.part),
        number(extreme((a, b) => a < b)),
        number(extreme((a, b) => a > b)),
        worst === undefined ? text('nowhere') : time(strip.times[worst] ?? 0),
        worst === undefined ? text('') : number(strip.measured[worst]),
        worst === undefined ? text('') : number(strip.expected[worst]),
    ];
}

/** Where what was measured lies farthest beyond its band; undefined where it never does. */
export function farthestOutside(strip: Strip): number | undefined {
    let best: number | undefined;
    let most = 0;
    strip.measured.forEach((value, k) => {
        const low = strip.low[k];
        const high = strip.high[k];
        if (low === undefined || high === undefined) return;
        const out = Math.max(low - value, value - high);
        if (out > most) {
            most = out;
            best = k;
        }
    });
    return best;
}

/** Every point of every strip, for a file: a block a channel. */
export function pointsOf(section: Strips, fields: Fields): Numbers[] {
    const cell = (si: number | undefined): Cell =>
        si === undefined ? text('') : { words: String(si), si, number: true };
    return section.strips.map(strip => ({
        id: `${section.id}-${strip.label}`,
        title: strip.label,
        heads: [
            { label: fields['time']?.label ?? 'time', siUnit: 's' },
            ...['measured', 'expected', 'band low', 'band high'].map(label => ({
                label,
                siUnit: '',
            })),
        ],
        rows: strip.times.map((time, k) => [
            cell(time),
            cell(strip.measured[k]),
            cell(strip.expected[k]),
            cell(strip.low[k]),
            cell(strip.high[k]),
        ]),
    }));
}
