import { numeral, shownOn, ticks } from '../../core/axis';
import type { Fields } from '../../core/cells';
import { stripDrawn, timeAxis } from '../../core/stripDrawn';
import { measuredOf, wholeOf, type Polyline } from '../../core/strips';
import type { Strip, StripEvent, Strips } from '../../core/wire';

const WIDTH = 640;
const LEFT = 56;
const HEIGHT = 96;
const HEAD = 20;
const ROW = HEAD + HEIGHT + 10;
const LINE = 18;

/** Strips as one vector picture: what is saved, and what is shown where nothing can be drawn on. */
export function StripsSvg({ section, fields }: { section: Strips; fields: Fields }) {
    const span = wholeOf(section);
    const t = timeAxis(span, fields);
    const events = [...section.events].sort((a, b) => a.time - b.time);
    const top = events.length * LINE + (events.length > 0 ? 10 : 0);
    const bottom = top + section.strips.length * ROW;
    const x = (si: number): number => LEFT + ((si - span.from) / (span.to - span.from)) * WIDTH;
    return (
        <svg
            class="drawn"
            viewBox={`0 0 ${LEFT + WIDTH + 12} ${bottom + 40}`}
            role="img"
            data-title={section.title}
            aria-label={`${section.title}: ${section.strips.map(strip => strip.label).join(', ')}`}
        >
            {events.map((event, k) => (
                <text key={k} x={0} y={12 + LINE * k} class="label">
                    {`${k + 1}: ${numeral(shownOn(t, event.time), t.step / 100)} ${t.unit || 's'}, ${event.label}`}
                </text>
            ))}
            {section.strips.map((strip, k) => (
                <g key={k} transform={`translate(${LEFT} ${top + k * ROW + HEAD})`}>
                    <One strip={strip} section={section} events={events} fields={fields} />
                </g>
            ))}
            {ticks(t.low, t.high, t.step).map(tick => (
                <text
                    key={tick}
                    x={x((tick - t.plus) / t.per)}
                    y={bottom + 10}
                    text-anchor="middle"
                    class="soft"
                >
                    {numeral(tick, t.step)}
                </text>
            ))}
            <text x={LEFT + WIDTH} y={bottom + 30} text-anchor="end" class="soft">
                {t.title}
            </text>
        </svg>
    );
}

interface OneProps {
    strip: Strip;
    section: Strips;
    events: readonly StripEvent[];
    fields: Fields;
}

function One({ strip, section, events, fields }: OneProps) {
    const drawn = stripDrawn({
        strip,
        measured: measuredOf(strip),
        beside: undefined,
        events,
        span: wholeOf(section),
        fields,
        width: WIDTH,
        height: HEIGHT,
    });
    return (
        <>
            <text x={0} y={-6} class="label">
                {strip.label}
                {drawn.y.unit ? ` [${drawn.y.unit}]` : ''}
            </text>
            {drawn.downs.map(x => (
                <line key={`d${x}`} x1={x} y1={0} x2={x} y2={HEIGHT} class="hair" />
            ))}
            {drawn.acrosses.map(({ y, words }) => (
                <g key={`a${y}`}>
                    <line x1={0} y1={y} x2={WIDTH} y2={y} class="hair" />
                    <text x={-6} y={y + 4} text-anchor="end" class="soft">
                        {words}
                    </text>
                </g>
            ))}
            {drawn.band.length > 4 && <path class="strip-band" d={`${pathOf(drawn.band)}Z`} />}
            {drawn.events.map(({ x, number }) => (
                <g key={`e${number}`}>
                    <line x1={x} y1={0} x2={x} y2={HEIGHT} class="strip-flag" />
                    <text x={x + 3} y={11} class="soft">
                        {String(number)}
                    </text>
                </g>
            ))}
            <path class="strip-line expected" d={pathOf(drawn.expected)} />
            {drawn.measured.map((line, k) => (
                <path key={`m${k}`} class="strip-line measured" d={pathOf(line)} />
            ))}
            <path class="axis" d={`M0 0V${HEIGHT}H${WIDTH}`} />
        </>
    );
}

function pathOf(line: Polyline): string {
    const said: string[] = [];
    for (let k = 0; k + 1 < line.length; k += 2) {
        const [x = 0, y = 0] = line.slice(k, k + 2);
        said.push(`${k === 0 ? 'M' : 'L'}${x.toFixed(2)} ${y.toFixed(2)}`);
    }
    return said.join('');
}
