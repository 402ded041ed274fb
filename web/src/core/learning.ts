import { labelOf, type Fields } from './cells';
import { rowsOf, tableNamed } from './trials';
import type { Section, Table, Value } from './wire';

/** A test of the logbook, as the list tells it. */
export interface TestRow {
    readonly id: string;
    /** All that the list says of it, in its order, the name left out. */
    readonly told: readonly { readonly label: string; readonly value: Value }[];
}

/** Table of an answer to the question why: a row a test. */
export const TESTS = 'tests';
const NAME = 'test';

/** The tests, the newest first as they come. */
export function testsOf(sections: readonly Section[], fields: Fields): TestRow[] {
    const table = tableNamed(sections, TESTS);
    return rowsOf(table).flatMap(cell => {
        const id = cell(NAME)?.text ?? cell(NAME)?.shown ?? '';
        return id === '' ? [] : [{ id, told: toldOf(table, cell, fields) }];
    });
}

function toldOf(
    table: Table | undefined,
    cell: (column: string) => Value | undefined,
    fields: Fields,
): TestRow['told'] {
    return (table?.columns ?? []).flatMap(column => {
        const value = cell(column);
        return column === NAME || value === undefined
            ? []
            : [{ label: labelOf(fields, column), value }];
    });
}

/** What of an answer is of one test, without the list. */
export function withoutTests(sections: readonly Section[]): Section[] {
    return sections.filter(section => section.id !== TESTS);
}
