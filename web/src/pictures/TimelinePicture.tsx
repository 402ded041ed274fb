import { useCallback, useId, useMemo, useRef, useState } from 'preact/hooks';
import { numeral, shareOn, ticks, type Axis } from '../core/axis';
import { cut, widthOf } from '../core/labels';
import { numbersOf } from '../core/numbers';
import { timelineRows, type TimelineRow } from '../core/timeline';
import type { Timeline } from '../core/wire';
import type { PictureProps } from './api';
import { Frame } from './Frame';
import { Hatches } from './Hatches';
import { exact } from './TableView';
import { useWidth } from './useWidth';

const ROW = 56;
const LINE = 15;
const BAR = 13;
const TOP = 8;
const FOOT = 40;
const INSET = 18; // padding and frame of a picture
const WIDEST = 680;
const TEETH = 6;

/**
 * What gives out when, a row a part in order of time. A bar that reaches its limit is solid and ends
 * there; one that does not is hatched and open.
 */
export function TimelinePicture(props: PictureProps & { section: Timeline }) {
    const { section, fields, fileName, stale, selected, onShow } = props;
    const id = useId();
    const room = useRef<HTMLDivElement>(null);
    const width = Math.min(WIDEST, Math.max(260, Math.floor(useWidth(room) - INSET)));
    const { rows, left, axis } = useMemo(() => timelineRows(section, fields), [section, fields]);
    const tables = useCallback(() => numbersOf(section, fields), [section, fields]);
    const [current, setCurrent] = useState(0);
    // In a narrow room all rows have part and place under each other, and what it came to in two lines.
    const narrow = rows.some(
        row =>
            widthOf(`${row.part}, ${row.what}`) + widthOf(row.when) + 12 > width ||
            widthOf(row.below) > width,
    );
    const two = narrow && rows.some(row => widthOf(row.below) > width);
    const high = narrow ? ROW + (two ? 2 : 1) * LINE : ROW;
    const bottom = TOP + high * rows.length;
    return (
        <Frame
            title={section.title}
            fileName={fileName}
            kind="timeline"
            tables={tables}
            stale={stale}
            selected={selected}
            onShow={onShow}
        >
            <div ref={room}>
                <svg
                    class="drawn"
                    viewBox={`0 0 ${width} ${bottom + FOOT}`}
                    role="group"
                    aria-label={section.title}
                    data-title={section.title}
                >
                    <Hatches id={id} />
                    <TimeAxis axis={axis} width={width} bottom={bottom} />
                    <g>
                        {rows.map((row, k) => (
                            <Row
                                key={k}
                                id={id}
                                row={row}
                                axis={axis}
                                y={TOP + high * k}
                                high={high}
                                width={width}
                                stop={k === Math.min(current, rows.length - 1)}
                                picked={row.part === selected}
                                onCurrent={() => {
                                    setCurrent(k);
                                }}
                                onShow={onShow}
                            />
                        ))}
                    </g>
                </svg>
            </div>
            <p class="picture-key">
                Solid: at its limit where the bar ends; whisker: 95 % band. Hatched with a torn end:
                comes to no limit. Below each: the worst, and what is allowed. Computed as far as{' '}
                <span {...exact(section.horizon)}>{section.horizon.shown}</span>. Arrow keys go from
                bar to bar; Enter shows the part.
                {left > 0 && ` ${left} more stand in the table.`}
            </p>
        </Frame>
    );
}

function TimeAxis({ axis, width, bottom }: { axis: Axis; width: number; bottom: number }) {
    const room = axis.step * Math.max(1, Math.ceil((7 * 44) / width)); // fewer words on a narrow one
    return (
        <g aria-hidden="true">
            {ticks(axis.low, axis.high, room).map(tick => {
                const words = numeral(tick, axis.step);
                const half = widthOf(words) / 2;
                const at = x(axis, width, (tick - axis.plus) / axis.per);
                return (
                    <g key={tick}>
                        <line class="hair" x1={at} y1={TOP} x2={at} y2={bottom} />
                        <text
                            class="soft"
                            x={Math.min(width - half, Math.max(half, at))}
                            y={bottom + 16}
                            text-anchor="middle"
                        >
                            {words}
                        </text>
                    </g>
                );
            })}
            <line class="axis" x1={1} y1={bottom} x2={width - 1} y2={bottom} />
            <text class="soft" x={width} y={bottom + 33} text-anchor="end">
                {axis.title}
            </text>
        </g>
    );
}

function x(axis: Axis, width: number, si: number): number {
    return 1 + shareOn(axis, si) * (width - 2);
}

interface RowProps {
    id: string;
    row: TimelineRow;
    axis: Axis;
    y: number;
    high: number;
    width: number;
    /** Whether the Tab key stops here: once a picture. */
    stop: boolean;
    picked: boolean;
    onCurrent: () => void;
    onShow: (part: string) => void;
}

function Row({ id, row, axis, y: top, high, width, stop, picked, onCurrent, onShow }: RowProps) {
    const label = `${row.part}, ${row.what}`;
    const when = cut(row.when, width / 2);
    const narrow = high > ROW;
    const y = narrow ? top + LINE : top;
    const below = narrow ? inTwo(row.below, width) : [row.below];
    const onKeyDown = (event: KeyboardEvent): void => {
        const here = event.currentTarget as Element;
        const rows = here.parentElement?.parentElement;
        const all = Array.from(rows?.querySelectorAll('.row-ground') ?? []);
        const at = all.indexOf(here);
        const next = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: all.length - 1 }[
            event.key
        ];
        const to = next === undefined ? undefined : all[next];
        if (event.key === 'Enter' || event.key === ' ') {
            event.preventDefault();
            onShow(row.part);
        } else if (to instanceof SVGElement) {
            event.preventDefault();
            to.focus();
        }
    };
    return (
        <g
            class={`bar-row${picked ? ' picked' : ''}`}
            onClick={() => {
                onShow(row.part);
            }}
        >
            <rect
                class="row-ground"
                x={-4}
                y={top - 3}
                width={width + 8}
                height={high - 4}
                role="button"
                tabindex={stop ? 0 : -1}
                aria-label={`${label}: ${row.when}${band(row)}. ${row.below}`}
                onFocus={onCurrent}
                onKeyDown={onKeyDown}
            />
            <g aria-hidden="true">
                <text class={picked ? 'clear strong' : 'clear'} x={0} y={top + 11}>
                    {narrow
                        ? cut(`${row.part},`, width - widthOf(when) - 12)
                        : cut(label, width - widthOf(when) - 12)}
                </text>
                {narrow && (
                    <text class={picked ? 'clear strong' : 'clear'} x={0} y={top + 11 + LINE}>
                        {cut(row.what, width)}
                    </text>
                )}
                <text
                    class="clear strong"
                    x={width}
                    y={top + 11}
                    text-anchor="end"
                    {...exact(row.at)}
                >
                    {when}
                </text>
                {row.reached === undefined ? (
                    <path
                        class="taken"
                        fill={`url(#${id}-taken)`}
                        d={open(x(axis, width, -axis.plus / axis.per), width - 1, y + 16)}
                    />
                ) : (
                    <rect
                        class="sum"
                        x={1}
                        y={y + 16}
                        width={Math.max(1.5, x(axis, width, row.reached) - 1)}
                        height={BAR}
                    />
                )}
                <Whisker row={row} axis={axis} width={width} y={y + 16 + BAR / 2} />
                {below.map((line, k) => (
                    <text key={k} class="soft clear" x={0} y={y + 43 + LINE * k}>
                        {cut(line, width)}
                    </text>
                ))}
            </g>
        </g>
    );
}

/** Parted at a semicolon, where it is too long for one line. */
function inTwo(words: string, width: number): string[] {
    const ends = [...words.matchAll(/; /g)].map(match => match.index + 1);
    const end = ends.findLast(at => widthOf(words.slice(0, at)) <= width);
    return widthOf(words) <= width || end === undefined
        ? [words]
        : [words.slice(0, end), words.slice(end + 1)];
}

function band(row: TimelineRow): string {
    return row.at.shownBand ? ` (${row.at.shownBand})` : '';
}

function Whisker({ row, axis, width, y }: Pick<RowProps, 'row' | 'axis' | 'width' | 'y'>) {
    const of = row.at.band;
    if (!of) {
        return null;
    }
    const most = (axis.high - axis.plus) / axis.per;
    const low = x(axis, width, Math.max(0, of.low));
    const high = x(axis, width, Math.min(most, of.high));
    return high - low > 1 ? (
        <>
            <line class="halo" x1={low} y1={y} x2={high} y2={y} />
            <path
                class="whisker"
                d={`M${low} ${y} L${high} ${y} M${low} ${y - 4} v8 M${high} ${y - 4} v8`}
            />
        </>
    ) : null;
}

/** A bar whose far end is torn. */
function open(from: number, to: number, top: number): string {
    const quarter = BAR / 4;
    const teeth = [0, 1, 2, 3, 4].map(
        k => `L${(k % 2 === 0 ? to : to - TEETH).toFixed(1)} ${(top + k * quarter).toFixed(1)}`,
    );
    return `M${from.toFixed(1)} ${top} ${teeth.join(' ')} L${from.toFixed(1)} ${top + BAR} Z`;
}
