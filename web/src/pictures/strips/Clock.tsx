import { effect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { numeral, shownOn, ticks } from '../../core/axis';
import type { Fields } from '../../core/cells';
import { lengthOf, type Span } from '../../core/span';
import { timeAxis } from '../../core/stripDrawn';
import { measuredOf, momentOf, momentWords, rangeOf } from '../../core/strips';
import type { StripEvent, Strips } from '../../core/wire';
import { onTheme } from '../theme';
import { drawNoMore, drawSoon } from './frames';
import { keyed } from './handling';
import type { Looking } from './looking';
import { inksOf, LEFT, paintClock, type Inks } from './painter';

const HEIGHT = 26;

interface ClockProps {
    section: Strips;
    looking: Looking;
    fields: Fields;
    events: readonly StripEvent[];
}

/** The clock under all strips, which is also how keys reach a moment. */
export function Clock({ section, looking, fields, events }: ClockProps) {
    const canvas = useRef<HTMLCanvasElement>(null);
    useEffect(() => {
        const on = canvas.current;
        if (!on) return undefined;
        let inks: Inks | undefined;
        const draw = (span: Span, width: number): void => {
            inks ??= inksOf(on.parentElement ?? on);
            const t = timeAxis(span, fields);
            const marks = ticks(t.low, t.high, t.step).map(tick => ({
                x: (((tick - t.plus) / t.per - span.from) / lengthOf(span)) * width,
                words: numeral(tick, t.step),
            }));
            paintClock(on, marks, width, HEIGHT, inks);
        };
        const end = effect(() => {
            const span = looking.span.value;
            const width = looking.width.value;
            drawSoon(on, () => {
                draw(span, width);
            });
        });
        const deaf = onTheme(() => {
            inks = undefined;
            drawSoon(on, () => {
                draw(looking.span.peek(), looking.width.peek());
            });
        });
        return () => {
            end();
            deaf();
            drawNoMore(on);
        };
    }, [looking, fields]);
    const span = looking.span.value;
    const at = looking.cursor.value;
    const t = timeAxis(span, fields);
    const said = (time: number): string =>
        `${numeral(shownOn(t, time), t.step / 100)} ${t.unit || 's'}`;
    return (
        <div
            class="strip-clock"
            role="slider"
            tabIndex={0}
            aria-label={`Moment of ${section.title}`}
            aria-valuemin={looking.whole.from}
            aria-valuemax={looking.whole.to}
            aria-valuenow={at ?? span.from}
            aria-valuetext={
                at === undefined
                    ? 'no moment'
                    : spoken(at, said(at), { section, looking, fields, events })
            }
            onKeyDown={event => {
                if (keyed(event, looking)) event.preventDefault();
            }}
            onBlur={() => {
                looking.point(undefined);
            }}
        >
            <canvas ref={canvas} style={{ height: `${HEIGHT}px` }} />
            <p class="axis-title x" style={{ paddingInlineStart: `${LEFT}px` }}>
                {t.title}
                {at !== undefined && <span class="reading"> at {said(at)}</span>}
            </p>
        </div>
    );
}

/** Channels of which a listener hears; the others stand in the table. */
const HEARD = 4;

function spoken(
    at: number,
    time: string,
    { section, looking, fields, events }: ClockProps,
): string {
    const near = events.find(event => Math.abs(event.time - at) < 1e-9);
    const channels = section.strips.slice(0, HEARD).map(strip => {
        const told = measuredOf(strip);
        const y = rangeOf(strip, [told], looking.whole, fields);
        return `${strip.label} ${momentWords(momentOf(strip, told, at), y)}`;
    });
    return [time, ...(near ? [near.label] : []), ...channels].join('; ');
}
