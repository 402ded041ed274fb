import type { Fields } from '../../core/cells';
import { numeral, shownOn } from '../../core/axis';
import { isSame } from '../../core/span';
import { timeAxis } from '../../core/stripDrawn';
import type { Looking } from './looking';

interface ToolsProps {
    looking: Looking;
    fields: Fields;
    besideLabel: string | undefined;
    /** What is shown: a test, a flight beside others, or one flight alone. */
    of: keyof typeof WORDS;
}

const WORDS = {
    test: {
        line: 'measured',
        expected: 'expected',
        band: '95 % band of what was expected',
        whole: 'Whole test',
    },
    flights: {
        line: 'flown as declared',
        expected: 'mean of the drawn flights',
        band: '95 % band of one more drawn flight',
        whole: 'Whole flight',
    },
    flight: { line: 'flown', expected: undefined, band: undefined, whole: 'Whole flight' },
};

/** What each line means, what stretch is seen, and the buttons that change it. */
export function Tools({ looking, fields, besideLabel, of }: ToolsProps) {
    const words = WORDS[of];
    const span = looking.span.value;
    const t = timeAxis(span, fields);
    const end = (time: number): string => numeral(shownOn(t, time), t.step / 10);
    const all = isSame(span, looking.whole);
    return (
        <div class="strip-tools">
            <ul class="legend">
                <Key kind="measured" words={words.line} />
                {words.expected !== undefined && <Key kind="expected" words={words.expected} />}
                {words.band !== undefined && <Key kind="band" words={words.band} />}
                {besideLabel !== undefined && (
                    <Key kind="beside" words={`measured, ${besideLabel}`} />
                )}
            </ul>
            <div class="row" role="group" aria-label="Stretch of time">
                <button
                    type="button"
                    class="plain small"
                    onClick={() => {
                        looking.zoom(looking.cursor.peek(), 0.5);
                    }}
                >
                    Zoom in
                </button>
                <button
                    type="button"
                    class="plain small"
                    aria-disabled={all}
                    onClick={() => {
                        looking.zoom(looking.cursor.peek(), 2);
                    }}
                >
                    Zoom out
                </button>
                <button
                    type="button"
                    class="plain small"
                    aria-disabled={all}
                    onClick={() => {
                        looking.all();
                    }}
                >
                    {words.whole}
                </button>
                <span class="quiet" role="status">
                    {end(span.from)} to {end(span.to)} {t.unit || 's'}
                </span>
            </div>
            <p class="quiet strip-hint">
                Drag over a stretch to see it nearer, or turn the wheel with Ctrl. On the clock
                below, keys do the same: arrows move the moment, + and − zoom, page keys go along, 0
                shows the whole.
            </p>
        </div>
    );
}

function Key({
    kind,
    words,
}: {
    kind: 'measured' | 'expected' | 'band' | 'beside';
    words: string;
}) {
    return (
        <li>
            <svg viewBox="0 0 30 14" width="30" height="14" aria-hidden="true">
                {kind === 'band' ? (
                    <rect class="strip-band" x="1" y="2" width="28" height="10" />
                ) : (
                    <path class={`strip-line ${kind}`} d="M1 7H29" />
                )}
            </svg>
            {words}
        </li>
    );
}
