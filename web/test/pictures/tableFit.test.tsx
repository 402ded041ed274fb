import { describe, expect, test } from 'vitest';
import { columnsBelow, firstRows } from '../../src/core/tableFit';
import type { Cell, Numbers } from '../../src/core/numbers';
import { TableView } from '../../src/pictures/TableView';
import { act } from 'preact/test-utils';
import { render } from 'preact';

const words = (said: string): Cell => ({ words: said, number: false });
const number = (said: string): Cell => ({ words: said, number: true });

function table(rows: number): Numbers {
    return {
        id: 'any',
        title: 'What gives',
        heads: ['what gives', 'worst under', 'load', 'gives at'].map(label => ({
            label,
            siUnit: '',
        })),
        rows: Array.from({ length: rows }, (_, k) => [
            words(`the anchor ${k}`),
            words('a runaway of all fans, stopped by the wearer, or all thrust lost'),
            number('4340 N'),
            number('24000 N'),
        ]),
    };
}

describe('a table', () => {
    test('keeps its columns beside each other where there is room, and else the longest words go below', () => {
        expect(columnsBelow(table(3), 700)).toEqual([]);
        expect(columnsBelow(table(3), 400)).toEqual([1]);
    });

    test('never puts the name of a row or a number below', () => {
        for (const room of [0, 50, 200, 300]) expect(columnsBelow(table(3), room)).toEqual([1]);
    });

    test('of many rows shows the first, and all when they are asked for or one of them is chosen', () => {
        expect([24, 25, 96].map(firstRows)).toEqual([24, 12, 12]);
        const home = document.createElement('div');
        const rows = () => home.querySelectorAll('tbody tr').length;
        void act(() => {
            render(<TableView table={table(40)} />, home);
        });
        expect(rows()).toBe(12);
        const more = home.querySelector<HTMLButtonElement>('.more-rows');
        expect(more?.textContent).toBe('all 40 rows of What gives');
        void act(() => more?.click());
        expect(rows()).toBe(40);
    });
});
