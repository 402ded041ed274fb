import { useCallback, useId, useState } from 'preact/hooks';
import { numbersOf, type Numbers } from '../core/numbers';
import type { Shares, Waterfall } from '../core/wire';
import type { PictureProps } from './api';
import { Bars, rowHigh, type Bar } from './Bars';
import { Frame } from './Frame';
import { Hatches } from './Hatches';

/** Across a picture of bars, in its own units. */
export const WIDTH = 420;
const TOP = 8;

interface BarsPictureProps extends PictureProps {
    section: Shares | Waterfall;
    bars: readonly Bar[];
    /** Which bars hang on from the one before. */
    joined: (k: number) => boolean;
    /** Where they are not those of the section alone. */
    tables?: (() => readonly Numbers[]) | undefined;
    /** What solid, hatched and outlined mean; stands there until a row has a note of its own. */
    legend: string;
}

/** A section whose picture is rows of bars, in its frame. */
export function BarsPicture(props: BarsPictureProps) {
    const { section, fields, fileName, stale, bars, joined, legend } = props;
    const id = useId();
    const [note, setNote] = useState('');
    const own = useCallback(() => numbersOf(section, fields), [section, fields]);
    return (
        <Frame
            title={section.title}
            fileName={fileName}
            kind="waterfall"
            tables={props.tables ?? own}
            stale={stale}
        >
            <svg
                class="drawn"
                viewBox={`0 0 ${WIDTH} ${TOP + rowHigh(bars) * bars.length + 4}`}
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
                    joined={joined}
                    onNote={setNote}
                />
            </svg>
            <p class="picture-key">{note || legend}</p>
        </Frame>
    );
}
