import { useCallback, useId, useMemo } from 'preact/hooks';
import { numbersOf } from '../core/numbers';
import { directions, wordsOf, type Ledger, type LedgerRow } from '../core/rows';
import type { Table } from '../core/wire';
import type { PictureProps } from './api';
import { Bars, ROW, type Bar } from './Bars';
import { Frame } from './Frame';
import { Hatches } from './Hatches';

const WIDTH = 360;
const TOP = 26;

/** Contributions to one turning moment as bars to both sides of nothing, each with its band. */
export function LedgerPicture(props: PictureProps & { section: Table; ledger: Ledger }) {
    const { section, ledger, fields, fileName, stale } = props;
    const id = useId();
    const bars = useMemo(() => barsOf(ledger), [ledger]);
    const tables = useCallback(() => numbersOf(section, fields), [section, fields]);
    const [negative, positive] = directions(ledger.moment);
    const last = TOP + ROW * ledger.rows.length;
    return (
        <Frame
            title={section.title}
            fileName={fileName}
            kind="ledger"
            tables={tables}
            stale={stale}
        >
            <svg
                class="drawn"
                viewBox={`0 0 ${WIDTH} ${last + ROW + 4}`}
                role="group"
                aria-label={section.title}
                data-title={section.title}
            >
                <Hatches id={id} />
                <text x={0} y={13} text-anchor="start" class="soft">
                    ← {negative}
                </text>
                <text x={WIDTH} y={13} text-anchor="end" class="soft">
                    {positive} →
                </text>
                <line x1={0} y1={last - 4} x2={WIDTH} y2={last - 4} class="hair" />
                <Bars
                    id={id}
                    bars={bars}
                    width={WIDTH}
                    top={TOP}
                    joined={() => false}
                    onNote={noNote}
                />
                {bars.map((_, k) => (
                    <line
                        key={k}
                        x1={WIDTH / 2}
                        y1={TOP + ROW * k + 14}
                        x2={WIDTH / 2}
                        y2={TOP + ROW * k + 31}
                        class="axis"
                    />
                ))}
            </svg>
            <p class="picture-key">
                Whisker: 95 % band.
                {ledger.leftOut > 0 && ' Causes that add nothing are left out here.'}
            </p>
        </Frame>
    );
}

function noNote(): void {
    // the rows of a ledger carry none
}

function barsOf(ledger: Ledger): Bar[] {
    const scale = ledger.reach > 0 ? (WIDTH / 2 - 4) / ledger.reach : 0;
    const x = (si: number): number => WIDTH / 2 + scale * si;
    const bar = (row: LedgerRow, sum: boolean): Bar => ({
        label: row.cause,
        words: row.value.shown,
        note: row.value.shownBand ? `band ${row.value.shownBand}` : '',
        value: row.value,
        from: x(0),
        to: x(row.si),
        band: row.value.band && [x(row.value.band.low), x(row.value.band.high)],
        kind: sum ? 'sum' : row.si < 0 ? 'taken' : 'added',
        strong: sum,
    });
    return [...ledger.rows.map(row => bar(row, false)), bar(ledger.sum, true)];
}

/** The ledger's sum in words, for who cannot see it. */
export function sumWords(ledger: Ledger): string {
    return `${ledger.sum.cause} ${wordsOf(ledger.sum.value)}`;
}
