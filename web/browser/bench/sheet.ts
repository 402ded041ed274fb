import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';

interface Row {
    what: string;
    measured: string;
    budget: string;
}

/** The table that comes out of a measurement: printed, and kept as web/target/NAME.txt. */
export class Sheet {
    private readonly rows: Row[] = [];

    constructor(private readonly name: string) {}

    tell(what: string, measured: string, budget: string): void {
        this.rows.push({ what, measured, budget });
    }

    print(): void {
        const all = [{ what: 'what', measured: 'measured', budget: 'budget' }, ...this.rows];
        const wide = (of: (row: Row) => string) => Math.max(...all.map(row => of(row).length));
        const what = wide(row => row.what);
        const measured = wide(row => row.measured);
        const text = all
            .map(row =>
                `${row.what.padEnd(what)}  ${row.measured.padStart(measured)}  ${row.budget}`.trimEnd(),
            )
            .join('\n');
        const target = path.resolve(import.meta.dirname, '../../target');
        mkdirSync(target, { recursive: true });
        writeFileSync(path.join(target, `${this.name}.txt`), `${text}\n`);
        process.stdout.write(`\n${text}\n`);
    }
}

export function percentile(values: readonly number[], share: number): number {
    const sorted = [...values].sort((a, b) => a - b);
    const at = Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1);
    return sorted[Math.max(0, at)] ?? Number.NaN;
}

export const ms = (value: number) => `${value.toFixed(0)} ms`;
export const kB = (bytes: number) => `${(bytes / 1000).toFixed(0)} kB`;
