import { axisOf, numeral, shownOn } from './axis';
import { signedWords, siOf } from './rows';
import type { AnswerDocument, Plot, Section, Table, Value, Waterfall } from './wire';

type Fields = AnswerDocument['fields'];

/** One cell of the table that equals a picture. */
export interface Cell {
    readonly words: string;
    readonly value?: Value;
    readonly si?: number;
    /** A number stands to the right. */
    readonly number: boolean;
}
export interface Head {
    readonly label: string;
    /** As a column of a file: SI, so that what reads it needs no other. */
    readonly siUnit: string;
}
export interface Numbers {
    readonly id: string;
    readonly title: string;
    readonly heads: readonly Head[];
    readonly rows: readonly (readonly Cell[])[];
}

function cellOf(value: Value): Cell {
    return {
        words: value.shown,
        value,
        number: value.kind === 'amount',
        ...(value.si === undefined ? {} : { si: value.si }),
    };
}

function text(words: string): Cell {
    return { words, number: false };
}

export function labelOf(fields: Fields, field: string): string {
    return fields[field]?.label ?? field.replaceAll('-', ' ');
}

function ofTable(table: Table, fields: Fields): Numbers {
    return {
        id: table.id,
        title: table.title,
        heads: table.columns.map((field, k) => ({
            label: labelOf(fields, field),
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
    const axes = [plot.x, plot.y].map(({ field }, k) =>
        axisOf(
            fields[field],
            field,
            points.map(p => p[k] ?? 0),
        ),
    );
    return plot.series.map((series, n) => ({
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
    }
}
