import { useCallback, useId, useMemo } from 'preact/hooks';
import { numbersOf } from '../core/numbers';
import { siOf, wordsOf } from '../core/rows';
import type { Shares } from '../core/wire';
import type { PictureProps } from './api';
import { Bars, ROW, type Bar } from './Bars';
import { Frame } from './Frame';
import { Hatches } from './Hatches';

const WIDTH = 420;
const TOP = 8;

/** What an amount consists of: bars end to end, as long as their part of the whole. */
export function SharesPicture(props: PictureProps & { section: Shares }) {
    const { section, fields, fileName, stale } = props;
    const id = useId();
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
            >
                <Hatches id={id} />
                <Bars
                    id={id}
                    bars={bars}
                    width={WIDTH}
                    top={TOP}
                    joined={() => false}
                    onNote={noNote}
                />
            </svg>
            <p class="picture-key">
                Solid: a share, where the one before it ends. Outlined: the whole.
            </p>
        </Frame>
    );
}

function noNote(): void {
    // a share says it all
}

function barsOf(shares: Shares): Bar[] {
    const whole = siOf(shares.whole);
    const scale = whole > 0 ? (WIDTH - 2) / whole : 0;
    let sum = 0;
    const bars = shares.shares.map(({ label, value, share }): Bar => {
        const from = sum;
        sum += siOf(value);
        return {
            label,
            words: `${wordsOf(value)}, ${share.shown}`,
            note: '',
            value,
            from: 1 + scale * from,
            to: 1 + scale * sum,
            band: undefined,
            kind: 'sum',
            strong: false,
        };
    });
    return [
        ...bars,
        {
            label: 'together',
            words: wordsOf(shares.whole),
            note: '',
            value: shares.whole,
            from: 1,
            to: 1 + scale * whole,
            band: undefined,
            kind: 'against',
            strong: true,
        },
    ];
}
