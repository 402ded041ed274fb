import { axisOf, numeral, shownOn, type Axis } from './axis';
import { cellOf, labelOf, part, text, type Cell, type Fields, type Numbers } from './cells';
import { ofCases, ofElevation, ofMatrix } from './faultNumbers';
import { signedWords, siOf } from './rows';
import { stripNumbers } from './stripNumbers';
import { whenOf } from './timeline';
export { labelOf, type Cell, type Head, type Numbers } from './cells';
import type { Playback, Plot, Section, Shares, Table, Timeline, Waterfall, Zone } from './wire';

function ofTable(table: Table, fields: Fields): Numbers {
    return {
        id: table.id,
        title: table.title,
        heads: table.columns.map((field, k) => ({
            label: labelOf(fields, field),
            field,
            siUnit: table.rows.find(row => row[k]?.unit !== undefined)?.[k]?.unit ?? '',
        })),
        rows: table.rows.map(row => row.map(cellOf)),
    };
}

function ofWaterfall(waterfall: Waterfall): Numbers {
    const { start, steps, end, against } = waterfall;
    return {
        id: waterfall.id,
        title: waterfall.title,
        heads: [
            { label: 'step', siUnit: '' },
            { label: 'amount', siUnit: start.value.unit ?? '' },
            { label: 'why', siUnit: '' },
        ],
        rows: [start, ...steps, end, against].map(step => {
            const signed = steps.includes(step) && siOf(step.value) > 0;
            const cell = cellOf(step.value);
            const words = signed ? signedWords({ ...step.value, shownBand: '' }) : cell.words;
            return [text(step.label), { ...cell, words }, text(step.note)];
        }),
    };
}

/** Points as their axes show them, to a hundredth of a step. */
function ofPlot(plot: Plot, fields: Fields): Numbers[] {
    const points = plot.series.flatMap(series => series.points);
    const zones = plot.zones ?? [];
    const ends = zones.flatMap(zone => [zone.from, zone.to]);
    const axes = [plot.x, plot.y].map(({ field }, k) =>
        axisOf(fields[field], field, [...points.map(p => p[k] ?? 0), ...(k === 0 ? ends : [])]),
    );
    const series = plot.series.map((series, n) => ({
        id: `${plot.id}-${n}`,
        title: series.label ? `${plot.title}: ${series.label}` : plot.title,
        heads: [plot.x, plot.y].map(({ unit }, k) => ({
            label: axes[k]?.title ?? '',
            siUnit: unit,
        })),
        rows: series.points.map(p =>
            axes.map((axis, k) => {
                const si = p[k] ?? 0;
                return {
                    words: numeral(shownOn(axis, si), axis.step / 100),
                    si,
                    number: true,
                };
            }),
        ),
    }));
    const [x] = axes;
    return x && zones.length > 0 ? [...series, ofZones(plot, zones, x)] : series;
}

function ofZones(plot: Plot, zones: readonly Zone[], x: Axis): Numbers {
    const number = (si: number): Cell => ({
        words: numeral(shownOn(x, si), x.step / 10),
        si,
        number: true,
    });
    return {
        id: `${plot.id}-zones`,
        title: `${plot.title}: zones`,
        heads: [
            { label: 'what', siUnit: '' },
            ...['from', 'to'].map(label => ({
                label: `${label}${x.unit ? ` [${x.unit}]` : ''}`,
                siUnit: plot.x.unit,
            })),
        ],
        rows: zones.map(zone => [text(zone.label), number(zone.from), number(zone.to)]),
    };
}

/** Limits of several measures stand in one column: the unit of a file has a column of its own. */
function ofTimeline(timeline: Timeline): Numbers {
    const heads = [
        'part',
        'limit of',
        'reached after',
        'worst',
        'limit',
        'SI unit of both',
        'where',
    ];
    return {
        id: timeline.id,
        title: timeline.title,
        heads: heads.map((label, k) => ({ label, siUnit: k === 2 ? 's' : '' })),
        rows: timeline.bars.map(bar => [
            part(bar.part),
            text(bar.what),
            { ...cellOf(bar.at), words: whenOf(timeline, bar.at) },
            cellOf(bar.hottest),
            cellOf(bar.limit),
            text(bar.limit.unit ?? ''),
            text([bar.where, bar.at.reason ?? ''].filter(Boolean).join('; ')),
        ]),
    };
}

function ofShares(shares: Shares): Numbers {
    return {
        id: shares.id,
        title: shares.title,
        heads: [
            { label: 'what', siUnit: '' },
            { label: 'amount', siUnit: shares.whole.unit ?? '' },
            { label: 'share', siUnit: '' },
        ],
        rows: [
            ...shares.shares.map(({ label, value, share }) => [
                text(label),
                cellOf(value),
                cellOf(share),
            ]),
            [text('together'), cellOf(shares.whole), text('')],
        ],
    };
}

/** A row a part: its limit, where it begins, the most it comes to and when, where it ends. */
function ofPlayback(playback: Playback, fields: Fields): Numbers {
    const { x, y } = axesOf(playback, fields);
    const number = (axis: Axis, si: number): Cell => ({
        words: numeral(shownOn(axis, si), axis.step / 100),
        si,
        number: true,
    });
    return {
        id: playback.id,
        title: playback.title,
        heads: [
            { label: 'part', siUnit: '' },
            { label: 'what', siUnit: '' },
            ...['limit', 'at the start', 'most'].map(label => ({
                label: `${label}${y.unit ? ` [${y.unit}]` : ''}`,
                siUnit: playback.y.unit,
            })),
            { label: `at${x.unit ? ` [${x.unit}]` : ''}`, siUnit: playback.x.unit },
            { label: `at the end${y.unit ? ` [${y.unit}]` : ''}`, siUnit: playback.y.unit },
        ],
        rows: playback.tracks.map(track => {
            const most = Math.max(...track.values);
            return [
                part(track.part),
                text(track.kind),
                number(y, track.limit),
                number(y, track.values[0] ?? 0),
                number(y, most),
                number(x, playback.times[track.values.indexOf(most)] ?? 0),
                number(y, track.values.at(-1) ?? 0),
            ];
        }),
    };
}

/** Every moment of every part, for a file: a row a moment, a column a part. */
export function momentsOf(playback: Playback, fields: Fields): Numbers {
    const { x } = axesOf(playback, fields);
    return {
        id: playback.id,
        title: playback.title,
        heads: [
            { label: x.title, siUnit: playback.x.unit },
            ...playback.tracks.map(track => ({
                label: `${track.part} ${track.kind}`,
                siUnit: playback.y.unit,
            })),
        ],
        rows: playback.times.map((time, k) =>
            [time, ...playback.tracks.map(track => track.values[k] ?? 0)].map(si => ({
                words: String(si),
                si,
                number: true,
            })),
        ),
    };
}

function axesOf(playback: Playback, fields: Fields): { x: Axis; y: Axis } {
    const { x, y } = playback;
    return {
        x: axisOf(fields[x.field], x.field, playback.times),
        y: axisOf(
            fields[y.field],
            y.field,
            playback.tracks.flatMap(track => [...track.values, track.limit]),
        ),
    };
}

/** The tables that say the same as the picture of a section. */
export function numbersOf(section: Section, fields: Fields): Numbers[] {
    switch (section.kind) {
        case 'waterfall':
            return [ofWaterfall(section)];
        case 'table':
            return [ofTable(section, fields)];
        case 'plot':
            return ofPlot(section, fields);
        case 'drawing':
            return section.layers.map(layer => ofTable(layer, fields));
        case 'timeline':
            return [ofTimeline(section)];
        case 'shares':
            return [ofShares(section)];
        case 'playback':
            return [ofPlayback(section, fields)];
        case 'matrix':
            return [ofMatrix(section, fields)];
        case 'cases':
            return [ofCases(section, fields)];
        case 'elevation':
            return ofElevation(section, fields);
        case 'strips':
            return stripNumbers(section, fields);
        case 'card':
            return section.blocks.flatMap(block =>
                block.kind === 'lines' ? [] : numbersOf(block, fields),
            );
    }
}
