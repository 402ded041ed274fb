import type { Table, Value, Waterfall, WaterfallStep } from './wire';

/** A bar that hangs where the sum stands. SI. */
export interface FallRow {
    readonly label: string;
    readonly note: string;
    readonly value: Value;
    readonly from: number;
    readonly to: number;
    readonly kind: 'sum' | 'taken' | 'added' | 'against';
    /** What its words are: a change carries its sign. */
    readonly words: string;
    /** Ends of the band about where the sum comes to. */
    readonly band: readonly [number, number] | undefined;
}

/** The amount, or nothing for what has none: its words stand in its place. */
export function siOf(value: Value): number {
    return value.kind === 'amount' ? (value.si ?? 0) : 0;
}

/** A value in words, with its band. */
export function wordsOf(value: Value): string {
    return value.shownBand ? `${value.shown} (${value.shownBand})` : value.shown;
}

/** With a plus, where it says more. */
export function signedWords(value: Value): string {
    const plain = wordsOf(value);
    return siOf(value) > 0 && !plain.startsWith('+') ? `+${plain}` : plain;
}

function whole(step: WaterfallStep, kind: 'sum' | 'against'): FallRow {
    const to = siOf(step.value);
    return { ...row(step, 0, to, kind), words: wordsOf(step.value) };
}

function row(step: WaterfallStep, from: number, to: number, kind: FallRow['kind']): FallRow {
    const { label, note, value } = step;
    const band = value.band;
    const off = to - siOf(value); // a step's band is of the change
    return {
        label,
        note,
        value,
        from,
        to,
        kind,
        words: signedWords(value),
        band: band && [band.low + off, band.high + off],
    };
}

/** The rows of a waterfall from start to what it is held against. */
export function fallRows(waterfall: Waterfall): FallRow[] {
    let sum = siOf(waterfall.start.value);
    const rows = [whole(waterfall.start, 'sum')];
    for (const step of waterfall.steps) {
        const to = sum + siOf(step.value);
        rows.push(row(step, sum, to, to < sum ? 'taken' : 'added'));
        sum = to;
    }
    rows.push(whole(waterfall.end, 'sum'), whole(waterfall.against, 'against'));
    return rows;
}

/** What the bars of a waterfall span, nothing included. */
export function fallSpan(rows: readonly FallRow[]): [number, number] {
    let low = 0;
    let high = 0;
    for (const { from, to, band } of rows) {
        low = Math.min(low, from, to);
        high = Math.max(high, from, to, band ? band[1] : to);
    }
    return [low, high];
}

export interface LedgerRow {
    readonly cause: string;
    readonly value: Value;
    readonly si: number;
}
export interface Ledger {
    readonly moment: string;
    readonly rows: readonly LedgerRow[];
    readonly sum: LedgerRow;
    /** How many causes add nothing, and are left out. */
    readonly leftOut: number;
    /** The longest bar or whisker, SI. */
    readonly reach: number;
}

/** Contributions to one turning moment, cause by cause; undefined where a table is no ledger. */
export function ledgerOf(table: Table): Ledger | undefined {
    const causes = table.columns.indexOf('turning-cause');
    const amounts = table.columns.findIndex(column => column.endsWith('-moment'));
    const moment = table.columns[amounts];
    if (!table.id.endsWith('-ledger') || causes < 0 || !moment) {
        return undefined;
    }
    const all: LedgerRow[] = [];
    for (const cells of table.rows) {
        const cause = cells[causes];
        const value = cells[amounts];
        if (cause && value) {
            all.push({ cause: cause.shown, value, si: siOf(value) });
        }
    }
    const sum = all.pop();
    if (!sum) {
        return undefined;
    }
    const rows = all.filter(each => !isNothing(each));
    let reach = 0;
    for (const { si, value } of [...rows, sum]) {
        reach = Math.max(reach, Math.abs(si));
        if (value.band) {
            reach = Math.max(reach, Math.abs(value.band.low), Math.abs(value.band.high));
        }
    }
    return { moment, rows, sum, leftOut: all.length - rows.length, reach };
}

function isNothing({ si, value }: LedgerRow): boolean {
    return si === 0 && (!value.band || value.band.low === value.band.high);
}

/** What the wearer feels of a moment below and above zero. */
export function directions(moment: string): [string, string] {
    switch (moment) {
        case 'roll-moment':
            return ['left side down', 'right side down'];
        case 'pitch-moment':
            return ['leans forward', 'leans back'];
        case 'yaw-moment':
            return ['turns left', 'turns right'];
        default:
            return ['negative', 'positive'];
    }
}
