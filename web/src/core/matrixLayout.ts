import type { Fields } from './cells';
import { labelOf } from './cells';
import { lineName } from './faults';
import { widthOf } from './labels';
import type { Matrix } from './wire';

/** Where rows and columns of a matrix stand on its picture. */
export interface MatrixLayout {
    readonly width: number;
    readonly height: number;
    /** Of the names of the lines. */
    readonly names: number;
    readonly columns: readonly MatrixColumn[];
    readonly top: number;
    readonly row: number;
    /** Where the cells of a line begin below its top: below its name where both do not fit beside each other. */
    readonly cellsAt: number;
    /** Of mark and hatch in a cell. */
    readonly marks: number;
}
export interface MatrixColumn {
    readonly label: string;
    /** The words of its head, line by line. */
    readonly head: readonly string[];
    readonly x: number;
    readonly width: number;
}

export const ROW = 26;
/** Of a name that stands above its cells. */
const NAME_ROW = 23;
const LINE = 15;
const LEAST_NAMES = 120;
const MOST_NAMES = 250;
const LEAST_CELL = 64;
const MOST_CELL = 168;
/** Mark, hatch and air of a cell. */
export const MARKS = 34;
/** The same where there is little room: the mark stands close to its words. */
const CLOSE_MARKS = 25;

/** As wide as the words need; wider where there is room. In a narrow room each name stands above its cells. */
export function layMatrix(
    matrix: Matrix,
    fields: Fields,
    room: number,
    rows: number,
): MatrixLayout {
    const lines = matrix.lines.slice(0, rows);
    const longest = Math.max(0, ...lines.map(line => widthOf(lineName(line))));
    const names = Math.min(MOST_NAMES, Math.max(LEAST_NAMES, longest + 12));
    const wanted = matrix.columns.map((field, k) => {
        const words = labelOf(fields, field).split(' ');
        const widest = Math.max(
            ...words.map(word => widthOf(word) + 10),
            ...lines.map(line => widthOf(line.cells[k]?.value.shown ?? '') + MARKS),
        );
        return Math.min(MOST_CELL, Math.max(LEAST_CELL, widest));
    });
    const whole = wanted.reduce((all, one) => all + one, 0);
    const above = names + whole > room;
    const marks = above ? CLOSE_MARKS : MARKS;
    const cells = whole - wanted.length * (MARKS - marks);
    const cellsAt = above ? NAME_ROW : 0;
    const more = Math.max(0, (room - cells - (above ? 0 : names)) / Math.max(1, wanted.length));
    let x = above ? 0 : names;
    const columns = matrix.columns.map((field, k) => {
        const width = (wanted[k] ?? LEAST_CELL) - MARKS + marks + Math.min(more, 60);
        const label = labelOf(fields, field);
        const column = { label, head: broken(label, width - 8), x, width };
        x += width;
        return column;
    });
    const top = 8 + LINE * Math.max(1, ...columns.map(column => column.head.length));
    return {
        width: Math.ceil(x),
        height: top + (ROW + cellsAt) * lines.length + 4,
        names: above ? Math.max(room, x) : names,
        columns,
        top,
        row: ROW + cellsAt,
        cellsAt,
        marks,
    };
}

function broken(words: string, room: number): string[] {
    const lines: string[] = [];
    for (const word of words.split(' ')) {
        const last = lines.at(-1);
        if (last !== undefined && widthOf(`${last} ${word}`) <= room) {
            lines[lines.length - 1] = `${last} ${word}`;
        } else {
            lines.push(word);
        }
    }
    return lines;
}
