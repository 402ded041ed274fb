import { useMemo } from 'preact/hooks';
import { siOf, wordsOf } from '../core/rows';
import type { Shares } from '../core/wire';
import type { PictureProps } from './api';
import type { Bar } from './Bars';
import { BarsPicture, WIDTH } from './BarsPicture';

/** What an amount consists of: bars end to end, as long as their part of the whole. */
export function SharesPicture(props: PictureProps & { section: Shares }) {
    const { section } = props;
    const bars = useMemo(() => barsOf(section), [section]);
    return (
        <BarsPicture
            {...props}
            bars={bars}
            joined={() => false}
            legend="Solid: a share, where the one before it ends. Outlined: the whole."
        />
    );
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
