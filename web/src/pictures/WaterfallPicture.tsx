import { useCallback, useId, useMemo, useState } from 'preact/hooks';
import { numbersOf } from '../core/numbers';
import { fallRows, fallSpan } from '../core/rows';
import type { Waterfall } from '../core/wire';
import type { PictureProps } from './api';
import { Bars, ROW, type Bar } from './Bars';
import { Frame } from './Frame';
import { Hatches } from './Hatches';

const WIDTH = 420;
const TOP = 8;

/** What takes the rated thrust, a row a step: what is taken is hatched, what is added dotted. */
export function WaterfallPicture(props: PictureProps & { section: Waterfall }) {
    const { section, fields, fileName, stale } = props;
    const id = useId();
    const [note, setNote] = useState('');
    const bars = useMemo(() => barsOf(section), [section]);
    const tables = useCallback(() => numbersOf(section, fields), [section, fields]);
    return (
        <Frame
            title={section.title}
            fileName={fileName}
            kind="waterfall"
            tables={tables}
            stale={stale}
        >
            <svg
                class="drawn"
                viewBox={`0 0 ${WIDTH} ${TOP + ROW * bars.length + 4}`}
                role="group"
                aria-label={section.title}
                data-title={section.title}
                onPointerLeave={() => {
                    setNote('');
                }}
            >
                <Hatches id={id} />
                <Bars
                    id={id}
                    bars={bars}
                    width={WIDTH}
                    top={TOP}
                    joined={k => k + 2 < bars.length}
                    onNote={setNote}
                />
            </svg>
            <p class="picture-key">
                {note || 'Solid: a sum. Hatched: taken away. Dotted: added. Whisker: 95 % band.'}
            </p>
        </Frame>
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
