import { useMemo } from 'preact/hooks';
import { fallRows, fallSpan } from '../core/rows';
import type { Waterfall } from '../core/wire';
import type { PictureProps } from './api';
import type { Bar } from './Bars';
import { BarsPicture, WIDTH } from './BarsPicture';

/** What takes the rated thrust, a row a step: what is taken is hatched, what is added dotted. */
export function WaterfallPicture(props: PictureProps & { section: Waterfall }) {
    const { section } = props;
    const bars = useMemo(() => barsOf(section), [section]);
    return (
        <BarsPicture
            {...props}
            bars={bars}
            joined={k => k + 2 < bars.length}
            legend="Solid: a sum. Hatched: taken away. Dotted: added. Whisker: 95 % band."
        />
    );
}

function barsOf(waterfall: Waterfall): Bar[] {
    const rows = fallRows(waterfall);
    const [low, high] = fallSpan(rows);
    const scale = high > low ? (WIDTH - 2) / (high - low) : 0;
    const x = (si: number): number => 1 + (si - low) * scale;
    return rows.map(row => ({
        label: row.label,
        words: row.words,
        note: row.note,
        value: row.value,
        from: x(row.from),
        to: x(row.to),
        band: row.band && [x(row.band[0]), x(row.band[1])],
        kind: row.kind,
        strong: row.kind === 'sum' || row.kind === 'against',
    }));
}
