import { widthOf } from './labels';
import type { Numbers } from './numbers';

/** Height of letters in a table, and air beside a cell, pixels. */
const LETTER = 12.5;
const AIR = 15;
/** Words may break, but not into a heap of single ones. */
const FAIR_WORDS = 150;
/** A column that says more than this is worth a line of its own. */
const LONG = 110;

/**
 * Columns of words that do not fit beside the others: they stand below each row, where they have its whole
 * width. The longest goes first, the name of the row never.
 */
export function columnsBelow(table: Numbers, room: number): number[] {
    const columns = table.heads.map((head, k) => wanted(table, head.label, k));
    const below: number[] = [];
    const sum = () =>
        columns.reduce((all, { fair }, k) => (below.includes(k) ? all : all + fair + AIR), 0);
    while (sum() > room) {
        const next = columns
            .map((column, k) => ({ ...column, k }))
            .filter(({ k, words, whole }) => k > 0 && words && whole > LONG && !below.includes(k))
            .sort((a, b) => b.whole - a.whole)[0];
        if (next === undefined) break;
        below.push(next.k);
    }
    return below.sort((a, b) => a - b);
}

/** How wide a column is where nothing breaks, and where it may break fairly. */
function wanted(table: Numbers, head: string, k: number) {
    const width = (words: string) => widthOf(words, LETTER);
    const cells = table.rows.map(row => row[k]);
    const words = !cells.some(cell => cell?.number === true);
    const longestWord = Math.max(...head.split(' ').map(width));
    if (words) {
        const whole = Math.max(0, ...cells.map(cell => width(cell?.words ?? '')));
        return { words, whole, fair: Math.max(longestWord, Math.min(FAIR_WORDS, whole)) };
    }
    // A band may stand below its number.
    const pieces = cells.flatMap(cell => [cell?.words ?? '', `(${cell?.value?.shownBand ?? ''})`]);
    const whole = Math.max(longestWord, ...pieces.map(width));
    return { words, whole, fair: whole };
}

/** Longer tables show their first rows, and the others when they are asked for. */
const MOST_ROWS = 24;
const FIRST_ROWS = 12;

/** How many rows stand there at first. */
export function firstRows(rows: number): number {
    return rows > MOST_ROWS ? FIRST_ROWS : rows;
}
