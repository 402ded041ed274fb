import type { AnswerDocument, Value } from './wire';

export type Fields = AnswerDocument['fields'];

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
    /** The kind of number below it: its formula is one key away. */
    readonly field?: string;
}
export interface Numbers {
    readonly id: string;
    readonly title: string;
    readonly heads: readonly Head[];
    readonly rows: readonly (readonly Cell[])[];
}

export function cellOf(value: Value): Cell {
    return {
        words: value.shown,
        value,
        number: value.kind === 'amount',
        ...(value.si === undefined ? {} : { si: value.si }),
    };
}

export function text(words: string): Cell {
    return { words, number: false };
}

/** The name of a part, which leads to it. */
export function part(words: string): Cell {
    const value: Value = { field: 'part', kind: 'words', text: words, shown: words, shownBand: '' };
    return { words, value, number: false };
}

export function labelOf(fields: Fields, field: string): string {
    return fields[field]?.label ?? field.replaceAll('-', ' ');
}

/** A number in a sentence: a count says what it counts, which in a table stands above it. */
export function counted(fields: Fields, value: Value): string {
    const unitless = value.kind === 'amount' && fields[value.field]?.unit === '';
    return unitless ? `${value.shown} ${labelOf(fields, value.field)}` : value.shown;
}
