import { useCallback, useMemo } from 'preact/hooks';
import { besideRows, besideWords, type Beside } from '../core/besides';
import { cellOf, text, type Cell } from '../core/cells';
import { fallSpan, type FallRow } from '../core/rows';
import type { Waterfall } from '../core/wire';
import type { PictureProps } from './api';
import type { Bar } from './Bars';
import { BarsPicture, WIDTH } from './BarsPicture';
import { CurvePicture } from './CurvePicture';

/** A picture of an answer with the same of before beneath it or in it. */
export function BesidePicture(props: Omit<PictureProps, 'section'> & { beside: Beside }) {
    const { beside } = props;
    switch (beside.kind) {
        case 'waterfall':
            return <BesideWaterfall {...props} before={beside.before} now={beside.now} />;
        case 'plot':
            return <CurvePicture {...props} section={beside.plot} />;
    }
}

interface FallProps extends Omit<PictureProps, 'section'> {
    before: Waterfall;
    now: Waterfall;
}

function BesideWaterfall({ before, now, ...props }: FallProps) {
    const bars = useMemo(() => barsOf(before, now), [before, now]);
    const tables = useCallback(() => [tableOf(before, now)], [before, now]);
    return (
        <BarsPicture
            {...props}
            section={now}
            tables={tables}
            bars={bars}
            joined={k => k + 2 < bars.length}
            legend="Upper bar: now; dashed below it: before. Solid: a sum. Hatched: taken away. Dotted: added. Declared values, without bands: those stand in the tables."
        />
    );
}

function barsOf(before: Waterfall, now: Waterfall): Bar[] {
    const rows = besideRows(before, now);
    const all = rows.flatMap(row => [row.now, row.was].filter(each => each !== undefined));
    const [low, high] = fallSpan(all);
    const scale = high > low ? (WIDTH - 2) / (high - low) : 0;
    const x = (si: number): number => 1 + (si - low) * scale;
    const ends = (row: FallRow | undefined): [number, number] => [
        x(row?.from ?? 0),
        x(row?.to ?? 0),
    ];
    return rows.flatMap(row => {
        const one = row.now ?? row.was;
        if (one === undefined) return [];
        const [from, to] = ends(row.now ?? { ...one, from: one.from, to: one.from });
        return [
            {
                label: row.label,
                words: besideWords(row),
                note: one.note,
                value: one.value,
                from,
                to,
                band: undefined,
                kind: one.kind,
                strong: one.kind === 'sum' || one.kind === 'against',
                was: row.was && ends(row.was),
            },
        ];
    });
}

function tableOf(before: Waterfall, now: Waterfall) {
    const cell = (row: FallRow | undefined): Cell =>
        row === undefined ? text('none') : { ...cellOf(row.value), words: row.words };
    return {
        id: now.id,
        title: now.title,
        heads: [
            { label: 'step', siUnit: '' },
            { label: 'before', siUnit: now.start.value.unit ?? '' },
            { label: 'now', siUnit: now.start.value.unit ?? '' },
        ],
        rows: besideRows(before, now).map(row => [text(row.label), cell(row.was), cell(row.now)]),
    };
}
