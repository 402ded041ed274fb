import type { Fields } from './cells';
import { labelOf } from './cells';
import { lineName } from './faults';
import { widthOf } from './labels';
import type { Matrix, MatrixLine, Value } from './wire';

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
    /** Of mark, hatch and air in a cell; where there is little room there is no hatch. */
    readonly marks: number;
    readonly hatched: boolean;
}
export interface MatrixColumn {
    readonly label: string;
    /** The words of its head, line by line. */
    readonly head: readonly string[];
    readonly x: number;
    readonly width: number;
}

/** What stands in a cell. Why a number is not computed has no room there; the table says it. */
export function cellWords(value: Value): string {
    return value.kind === 'not computed' ? '–' : value.shown;
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
/** The same where there is little room, without a hatch: each mark has a shape of its own. */
const CLOSE_MARKS = 26;

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
    const wanted = (marks: number): number[] =>
        matrix.columns.map((field, k) => {
            const words = labelOf(fields, field).split(' ');
            const widest = Math.max(
                ...words.map(word => widthOf(word) + 12),
                ...lines.map(line => cellWidth(line.cells[k]) + marks),
            );
            return Math.min(MOST_CELL, Math.max(LEAST_CELL, widest));
        });
    const sum = (widths: number[]): number => widths.reduce((all, one) => all + one, 0);
    const above = names + sum(wanted(MARKS)) > room;
    const marks = above ? CLOSE_MARKS : MARKS;
    const widths = wanted(marks);
    const cells = sum(widths);
    const cellsAt = above ? NAME_ROW : 0;
    const more = Math.max(0, (room - cells - (above ? 0 : names)) / Math.max(1, widths.length));
    let x = above ? 0 : names;
    const columns = matrix.columns.map((field, k) => {
        const width = (widths[k] ?? LEAST_CELL) + Math.min(more, 60);
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
        hatched: !above,
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

function cellWidth(cell: MatrixLine['cells'][number] | undefined): number {
    return cell === undefined ? 0 : widthOf(cellWords(cell.value));
}
