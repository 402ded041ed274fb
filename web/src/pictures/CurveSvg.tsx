import { numeral, shareOn, shownOn, ticks, type Axis } from '../core/axis';
import { useId } from 'preact/hooks';
import { brokenAs, explained, zoneWords, type Curve, type Curves } from '../core/curve';
import { Hatches } from './Hatches';

const WIDTH = 420;
const PLOT = 220;
const LEFT = 52;
const RIGHT = 12;
const LEGEND = 18;

/** Curves as a vector picture: what is saved, and what is shown where nothing can be plotted. */
export function CurveSvg({ curves }: { curves: Curves }) {
    const id = useId();
    const named = explained(curves);
    const top = 34 + LEGEND * (named.length + curves.zones.length);
    const x = (si: number): number => LEFT + shareOn(curves.x, si) * (WIDTH - LEFT - RIGHT);
    const y = (si: number): number => top + (1 - shareOn(curves.y, si)) * PLOT;
    return (
        <svg
            class="drawn"
            viewBox={`0 0 ${WIDTH} ${top + PLOT + 46}`}
            role="img"
            data-title={curves.title}
            aria-label={`${curves.title}: ${wordsOf(curves)}`}
        >
            {named.map((each, k) => (
                <g key={k}>
                    <Mark mark={each.mark} line={each.line} x={14} y={11 + LEGEND * k} />
                    <text x={36} y={15 + LEGEND * k} class="label">
                        {each.label}
                    </text>
                </g>
            ))}
            {curves.zones.length > 0 && <Hatches id={id} />}
            {curves.zones.map((zone, k) => (
                <g key={k}>
                    <ZoneBox
                        id={id}
                        x={1}
                        y={5 + LEGEND * (named.length + k)}
                        width={27}
                        height={12}
                    />
                    <text x={36} y={15 + LEGEND * (named.length + k)} class="label">
                        {zoneWords(curves, zone)}
                    </text>
                    <ZoneBox
                        id={id}
                        x={x(zone.from)}
                        y={top}
                        width={Math.max(1.5, x(zone.to) - x(zone.from))}
                        height={PLOT}
                    />
                </g>
            ))}
            <text x={0} y={top - 12} class="soft">
                {curves.y.title}
            </text>
            {ticks(curves.x.low, curves.x.high, curves.x.step).map(tick => (
                <g key={tick}>
                    <line
                        x1={x(si(curves.x, tick))}
                        y1={top}
                        x2={x(si(curves.x, tick))}
                        y2={top + PLOT}
                        class="hair"
                    />
                    <text
                        x={x(si(curves.x, tick))}
                        y={top + PLOT + 16}
                        text-anchor="middle"
                        class="soft"
                    >
                        {numeral(tick, curves.x.step)}
                    </text>
                </g>
            ))}
            {ticks(curves.y.low, curves.y.high, curves.y.step).map(tick => (
                <g key={tick}>
                    <line
                        x1={LEFT}
                        y1={y(si(curves.y, tick))}
                        x2={WIDTH - RIGHT}
                        y2={y(si(curves.y, tick))}
                        class="hair"
                    />
                    <text
                        x={LEFT - 6}
                        y={y(si(curves.y, tick)) + 4.5}
                        text-anchor="end"
                        class="soft"
                    >
                        {numeral(tick, curves.y.step)}
                    </text>
                </g>
            ))}
            <path class="axis" d={`M${LEFT} ${top} V${top + PLOT} H${WIDTH - RIGHT}`} />
            <text x={WIDTH - RIGHT} y={top + PLOT + 36} text-anchor="end" class="soft">
                {curves.x.title}
            </text>
            {curves.series.map((each, k) => (
                <Line key={k} curve={each} x={x} y={y} />
            ))}
        </svg>
    );
}

interface ZoneBoxProps {
    id: string;
    x: number;
    y: number;
    width: number;
    height: number;
}

/** A stretch of x, hatched. */
export function ZoneBox({ id, ...box }: ZoneBoxProps) {
    return <rect class="zone" fill={`url(#${id}-zone)`} {...box} />;
}

function si(axis: Axis, shown: number): number {
    return (shown - axis.plus) / axis.per;
}

interface LineProps {
    curve: Curve;
    x: (si: number) => number;
    y: (si: number) => number;
}

function Line({ curve, x, y }: LineProps) {
    switch (curve.mark) {
        case 'dot':
        case 'cross':
            return (
                <>
                    {curve.points.map((p, k) => (
                        <Mark key={k} mark={curve.mark} x={x(p[0])} y={y(p[1])} />
                    ))}
                </>
            );
        case 'line':
        case 'dashes': {
            const d = curve.points.map(p => `${x(p[0]).toFixed(1)} ${y(p[1]).toFixed(1)}`);
            return <path {...stroke(curve.mark, curve.line)} d={`M${d.join(' L')}`} />;
        }
    }
}

function stroke(mark: 'line' | 'dashes', line: number) {
    const broken = mark === 'line' ? brokenAs(line) : [];
    return {
        class: mark === 'line' ? 'curveline' : 'dashes',
        ...(broken.length > 0 && { 'stroke-dasharray': broken.join(' ') }),
    };
}

interface MarkProps {
    mark: Curve['mark'];
    /** Which of the lines, where there are several. */
    line?: number;
    x: number;
    y: number;
}

export function Mark({ mark, line = 0, x, y }: MarkProps) {
    switch (mark) {
        case 'dot':
            return <circle cx={x} cy={y} r={3.6} class="dot" />;
        case 'cross':
            return (
                <path class="cross" d={`M${x - 5} ${y - 5} l10 10 M${x - 5} ${y + 5} l10 -10`} />
            );
        case 'line':
        case 'dashes':
            return <path {...stroke(mark, line)} d={`M${x - 14} ${y} h28`} />;
    }
}

/** Where each series begins and ends, as its axes show it. */
export function wordsOf(curves: Curves): string {
    const place = ([px, py]: readonly [number, number]): string =>
        `${numeral(shownOn(curves.y, py), curves.y.step / 100)} at ${numeral(shownOn(curves.x, px), curves.x.step / 100)}`;
    const each = curves.series.map(({ label, points }) => {
        const first = points[0];
        const last = points.at(-1);
        if (!first || !last) {
            return label;
        }
        return points.length === 1
            ? `${label}, ${place(first)}`
            : `${label} from ${place(first)} to ${place(last)}`;
    });
    const zones = curves.zones.map(zone => zoneWords(curves, zone));
    return [`${curves.y.title} over ${curves.x.title}`, ...each, ...zones].join('; ');
}
