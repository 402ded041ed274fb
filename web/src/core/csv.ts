import type { Cell, Numbers } from './numbers';

const BREAK = '\r\n'; // RFC 4180

/**
 * One field of a CSV file. Words that a spreadsheet would take for a formula get an apostrophe
 * before them, which it hides.
 */
export function field(words: string): string {
    const guarded = /^[=+\-@\t\r\n]/.test(words) ? `'${words}` : words;
    return /[",\r\n]|^\s|\s$/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}

/** A double as it is: every digit, no grouping, a point. */
function plain(si: number): string {
    return String(si);
}

function cells(cell: Cell, banded: boolean): string[] {
    const number = cell.si === undefined ? field(cell.words) : plain(cell.si);
    if (!banded) {
        return [number];
    }
    const band = cell.value?.band;
    return [number, band ? plain(band.low) : '', band ? plain(band.high) : ''];
}

/**
 * Tables as CSV, one below the other with an empty line between and their titles above where there
 * are several. Numbers are SI with every digit; units stand in the header, `time [s]`. A column with
 * bands is followed by its lower and upper end.
 */
export function csvOf(tables: readonly Numbers[]): string {
    const blocks = tables.map(table => {
        const banded = table.heads.map((_, k) =>
            table.rows.some(row => row[k]?.value?.band !== undefined),
        );
        const head = table.heads.flatMap(({ label, siUnit }, k) => {
            const bare = label.replace(/ \[[^\]]*\]$/, '');
            const unit = siUnit && siUnit !== '1' ? ` [${siUnit}]` : '';
            const names = banded[k] ? [bare, `${bare} low`, `${bare} high`] : [bare];
            return names.map(name => field(name + unit));
        });
        const rows = table.rows.map(row =>
            row.flatMap((cell, k) => cells(cell, banded[k] === true)),
        );
        const lines = [head, ...rows].map(line => line.join(',') + BREAK);
        return (tables.length > 1 ? field(table.title) + BREAK : '') + lines.join('');
    });
    return blocks.join(BREAK);
}
