import { effect, signal } from '@preact/signals';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { Axis } from '../../core/axis';
import type { Fields } from '../../core/cells';
import { stripDrawn } from '../../core/stripDrawn';
import { measuredOf, momentOf, momentWords, rangeOf, type Envelope } from '../../core/strips';
import type { Strip, StripEvent } from '../../core/wire';
import { onTheme } from '../theme';
import { drawNoMore, drawSoon } from './frames';
import type { Channels, Looking, View } from './looking';
import { inksOf, paint, type Inks } from './painter';

const HEIGHT = 104;

interface StripRowProps {
    strip: Strip;
    events: readonly StripEvent[];
    looking: Looking;
    fields: Fields;
    besideLabel: string | undefined;
    /** What the line is, in a word. */
    line: string;
}

/** One channel: its name, what stands under the cursor, and its strip. Drawn while it is in sight. */
export function StripRow(props: StripRowProps) {
    const { strip, events, looking, fields } = props;
    const canvas = useRef<HTMLCanvasElement>(null);
    const told = useMemo(() => measuredOf(strip), [strip]);
    const seen = useMemo(() => signal(false), []);
    useEffect(() => {
        const on = canvas.current;
        if (!on) return undefined;
        const watched = new IntersectionObserver(
            entries => {
                const now = entries.at(-1)?.isIntersecting === true;
                if (now === seen.peek()) return;
                seen.value = now;
                looking.sees(strip.channel, now);
            },
            { rootMargin: '120px' },
        );
        watched.observe(on);
        return () => {
            watched.disconnect();
            if (seen.peek()) looking.sees(strip.channel, false);
            seen.value = false;
        };
    }, [looking, strip.channel, seen]);
    useEffect(() => {
        const on = canvas.current;
        if (!on) return undefined;
        let inks: Inks | undefined;
        const draw = (view: View): void => {
            inks ??= inksOf(on.parentElement ?? on);
            const { span, width } = view;
            const measured = seenOf(view.raw, strip) ?? told;
            const beside = seenOf(view.other, strip);
            const asked = { strip, measured, beside, events, span, fields, width, height: HEIGHT };
            paint(on, stripDrawn(asked), inks);
        };
        const end = effect(() => {
            const view = looking.view.value;
            if (!seen.value) return;
            drawSoon(on, () => {
                draw(view);
            });
        });
        const deaf = onTheme(() => {
            inks = undefined;
            drawSoon(on, () => {
                draw(looking.view.peek());
            });
        });
        return () => {
            end();
            deaf();
            drawNoMore(on);
        };
    }, [strip, told, events, looking, fields, seen]);
    return (
        <div class="strip">
            <p class="strip-head">
                <strong>{strip.label}</strong>
                <Reading {...props} told={told} />
            </p>
            <canvas ref={canvas} class="strip-canvas" style={{ height: `${HEIGHT}px` }} />
        </div>
    );
}

function seenOf(channels: Channels, { channel }: Strip): Envelope | undefined {
    return channel === undefined ? undefined : channels.get(channel);
}

/** The unit, and what stands under the cursor in words. */
function Reading({
    strip,
    looking,
    fields,
    told,
    besideLabel,
    line,
}: StripRowProps & { told: Envelope }) {
    const y = useMemo(
        (): Axis => rangeOf(strip, [told], looking.whole, fields),
        [strip, told, fields, looking],
    );
    const at = looking.cursor.value;
    const unit = y.unit === '' ? '' : ` [${y.unit}]`;
    if (at === undefined)
        return (
            <>
                {unit}
                <span class="reading" />
            </>
        );
    const other = seenOf(looking.other.value, strip);
    const beside = other && momentOf({ ...strip, times: [] }, other, at);
    return (
        <>
            {unit}
            <span class="reading">
                {momentWords(
                    momentOf(strip, seenOf(looking.raw.value, strip) ?? told, at),
                    y,
                    line,
                )}
                {beside?.measured && `; ${besideLabel ?? 'other'} ${momentWords(beside, y)}`}
            </span>
        </>
    );
}
