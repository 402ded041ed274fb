import type { Signal } from '@preact/signals';
import { render } from 'preact';
import { useCallback, useEffect, useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import type { BesideSource, RawSource } from '../../core/samples';
import { pointsOf, stripNumbers } from '../../core/stripNumbers';
import { wholeOf } from '../../core/strips';
import type { Strips } from '../../core/wire';
import type { PictureProps } from '../api';
import { Frame } from '../Frame';
import { Clock } from './Clock';
import { EventList } from './EventList';
import { handled } from './handling';
import { Looking } from './looking';
import { LEFT } from './painter';
import { StripRow } from './StripRow';
import { StripsSvg } from './StripsSvg';
import { Tools } from './Tools';

interface StripsProps extends PictureProps {
    section: Strips;
    /** All samples, where the strips are of a recording. */
    raw?: RawSource | undefined;
    beside?: (BesideSource & { label: string }) | undefined;
    /** The moment, where another picture shows it too, s. */
    moment?: Signal<number | undefined> | undefined;
}

/** What was measured beside what was to be expected, a strip a channel over one clock. */
export function StripsPicture(props: StripsProps) {
    const { section, fields, fileName, stale, selected, onShow } = props;
    const tables = useCallback(() => stripNumbers(section, fields), [section, fields]);
    const file = useCallback(() => pointsOf(section, fields), [section, fields]);
    const drawn = useCallback(
        (frame: HTMLElement) => vectors(props, frame),
        [props.section, props.fields],
    );
    return (
        <Frame
            title={section.title}
            fileName={fileName}
            kind="strips"
            tables={tables}
            file={file}
            stale={stale}
            selected={selected}
            onShow={onShow}
            drawn={drawn}
        >
            {canDraw() ? <Drawn {...props} /> : <StripsSvg section={section} fields={fields} />}
        </Frame>
    );
}

let drawable: boolean | undefined;

function canDraw(): boolean {
    drawable ??= Boolean(document.createElement('canvas').getContext('2d'));
    return drawable;
}

/** The same strips as a vector picture, drawn aside so that they take the look of the page. */
function vectors({ section, fields }: StripsProps, frame: HTMLElement): SVGSVGElement[] {
    const aside = document.createElement('div');
    aside.className = 'aside';
    frame.append(aside);
    render(<StripsSvg section={section} fields={fields} />, aside);
    const svg = aside.querySelector('svg');
    setTimeout(() => {
        render(null, aside);
        aside.remove();
    });
    return svg ? [svg] : [];
}

function Drawn({ section, fields, raw, beside, moment, onShow }: StripsProps) {
    const whole = useMemo(() => wholeOf(section), [section]);
    const home = useRef<HTMLDivElement>(null);
    const looking = useMemo(() => new Looking(whole, raw, moment), [raw?.id, moment]);
    useEffect(() => {
        looking.over(whole);
    }, [looking, whole]);
    useEffect(() => {
        looking.compare(beside);
    }, [looking, beside]);
    useEffect(
        () => () => {
            looking.leave();
        },
        [looking],
    );
    useLayoutEffect(() => {
        const on = home.current;
        if (!on) return undefined;
        const measure = (): void => {
            if (on.clientWidth > 0) looking.widen(Math.max(120, on.clientWidth - LEFT));
        };
        measure();
        const watched = new ResizeObserver(measure);
        watched.observe(on);
        const deaf = handled(on, looking);
        return () => {
            watched.disconnect();
            deaf();
        };
    }, [looking]);
    const kind =
        section.id !== 'flight-strips' ? 'test' : moment === undefined ? 'flights' : 'flight';
    const events = useMemo(() => [...section.events].sort((a, b) => a.time - b.time), [section]);
    return (
        <>
            <Tools looking={looking} fields={fields} besideLabel={beside?.label} of={kind} />
            {events.length > 0 && (
                <EventList events={events} looking={looking} fields={fields} onShow={onShow} />
            )}
            <div
                ref={home}
                class={beside === undefined ? 'strip-plots' : 'strip-plots with-beside'}
            >
                {section.strips.map(strip => (
                    <StripRow
                        key={strip.channel ?? strip.label}
                        strip={strip}
                        events={events}
                        looking={looking}
                        fields={fields}
                        besideLabel={beside?.label}
                        line={kind === 'test' ? 'measured' : 'flown'}
                    />
                ))}
                <Clock looking={looking} section={section} fields={fields} events={events} />
                <div class="strip-cursor" hidden />
                <div class="strip-picked" hidden />
            </div>
        </>
    );
}
