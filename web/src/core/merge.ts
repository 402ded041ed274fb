// Three texts: what both began with, mine and theirs. Lines are the unit, as they are for who reads the file.

interface Hunk {
    from: number;
    to: number;
    lines: string[];
}

export type Merged =
    | { kind: 'merged'; text: string }
    /** Both changed the same lines, unlike. Neither is lost: the caller holds both. */
    | { kind: 'clash' };

export function merge(base: string, mine: string, theirs: string): Merged {
    if (mine === theirs || theirs === base) return { kind: 'merged', text: mine };
    if (mine === base) return { kind: 'merged', text: theirs };
    const from = linesOf(base);
    const left = hunks(from, linesOf(mine));
    const right = hunks(from, linesOf(theirs));
    const out: string[] = [];
    let at = 0;
    for (;;) {
        const a = left[0];
        const b = right[0];
        const next = a && b ? (a.from <= b.from ? a : b) : (a ?? b);
        if (next === undefined) break;
        if (a && b) {
            if (same(a, b)) right.shift();
            else if (meet(a, b)) return { kind: 'clash' };
        }
        out.push(...from.slice(at, next.from), ...next.lines);
        at = next.to;
        if (next === a) left.shift();
        else right.shift();
    }
    out.push(...from.slice(at));
    return { kind: 'merged', text: out.join('') };
}

function linesOf(text: string): string[] {
    return text === '' ? [] : text.split(/(?<=\n)/);
}

function same(a: Hunk, b: Hunk): boolean {
    return a.from === b.from && a.to === b.to && a.lines.join('') === b.lines.join('');
}

/** Whether it cannot be told in which order they belong, or both replace a line. */
function meet(a: Hunk, b: Hunk): boolean {
    if (a.from === b.from) return true;
    const [first, second] = a.from < b.from ? [a, b] : [b, a];
    return first.to > second.from;
}

const LARGEST_TABLE = 4_000_000;

/** What was changed, in order, by the longest common run of lines between the ends that agree. */
function hunks(from: string[], to: string[]): Hunk[] {
    let start = 0;
    while (start < from.length && start < to.length && from[start] === to[start]) start++;
    let endFrom = from.length;
    let endTo = to.length;
    while (endFrom > start && endTo > start && from[endFrom - 1] === to[endTo - 1]) {
        endFrom--;
        endTo--;
    }
    const rows = endFrom - start;
    const columns = endTo - start;
    if (rows === 0 && columns === 0) return [];
    if (rows === 0 || columns === 0 || rows * columns > LARGEST_TABLE) {
        return [{ from: start, to: endFrom, lines: to.slice(start, endTo) }];
    }
    return apart(from, to, start, rows, columns);
}

function apart(from: string[], to: string[], start: number, rows: number, columns: number): Hunk[] {
    const width = columns + 1;
    const common = new Uint32Array((rows + 1) * width);
    const held = (row: number, column: number) => common[row * width + column] ?? 0;
    for (let row = rows - 1; row >= 0; row--) {
        for (let column = columns - 1; column >= 0; column--) {
            common[row * width + column] =
                from[start + row] === to[start + column]
                    ? held(row + 1, column + 1) + 1
                    : Math.max(held(row + 1, column), held(row, column + 1));
        }
    }
    const found: Hunk[] = [];
    let open: Hunk | undefined;
    let row = 0;
    let column = 0;
    while (row < rows || column < columns) {
        if (row < rows && column < columns && from[start + row] === to[start + column]) {
            open = undefined;
            row++;
            column++;
            continue;
        }
        if (open === undefined) {
            open = { from: start + row, to: start + row, lines: [] };
            found.push(open);
        }
        if (column < columns && (row >= rows || held(row, column + 1) >= held(row + 1, column))) {
            open.lines.push(to[start + column] ?? '');
            column++;
        } else {
            row++;
            open.to = start + row;
        }
    }
    return found;
}

/** Two texts where they differ, with a line before and after; "⋯" stands for lines that are the same. */
export function compare(mine: string, theirs: string): { mine: string; theirs: string } {
    const from = linesOf(mine);
    const left: string[] = [];
    const right: string[] = [];
    let shown = 0;
    for (const { from: start, to: end, lines } of hunks(from, linesOf(theirs))) {
        const before = Math.max(shown, start - 1);
        const gap = before > shown ? ['⋯\n'] : [];
        const lead = [...gap, ...from.slice(before, start)];
        const tail = from.slice(end, end + 1);
        left.push(...lead, ...from.slice(start, end), ...tail);
        right.push(...lead, ...lines, ...tail);
        shown = Math.min(from.length, end + 1);
    }
    const rest = shown < from.length ? '⋯' : '';
    return { mine: left.join('') + rest, theirs: right.join('') + rest };
}

/** The one span in which two texts differ. */
export interface Span {
    from: number;
    to: number;
    insert: string;
}

/** So that a cursor outside of what changed stays where it is. */
export function difference(from: string, to: string): Span | undefined {
    if (from === to) return undefined;
    let start = 0;
    while (start < from.length && start < to.length && from[start] === to[start]) start++;
    let endFrom = from.length;
    let endTo = to.length;
    while (endFrom > start && endTo > start && from[endFrom - 1] === to[endTo - 1]) {
        endFrom--;
        endTo--;
    }
    return { from: start, to: endFrom, insert: to.slice(start, endTo) };
}
