import { useState } from 'preact/hooks';
import type { Value } from '../core/wire';
import { exact } from './TableView';

export const ROW = 38;
/** A row with a second bar below the first. */
export const ROW_OF_TWO = 48;
const BAR = 13;

export interface Bar {
    label: string;
    words: string;
    note: string;
    value: Value;
    /** Ends of the bar on the picture. */
    from: number;
    to: number;
    /** Ends of the whisker on the picture. */
    band: readonly [number, number] | undefined;
    kind: 'sum' | 'taken' | 'added' | 'against';
    strong: boolean;
    /** Ends of the bar of before, where two revisions stand beside each other. */
    was?: readonly [number, number] | undefined;
}

export function rowHigh(bars: readonly Bar[]): number {
    return bars.some(bar => bar.was) ? ROW_OF_TWO : ROW;
}

interface BarsProps {
    id: string;
    bars: readonly Bar[];
    width: number;
    top: number;
    /** Which bars hang on from the one before: a hair joins them. */
    joined: (k: number) => boolean;
    onNote: (note: string) => void;
}

/** Rows of words and number with a bar below; one stop for the Tab key, arrows go up and down. */
export function Bars({ id, bars, width, top, joined, onNote }: BarsProps) {
    const [current, setCurrent] = useState(0);
    const at = Math.min(current, bars.length - 1);
    const high = rowHigh(bars);
    const go = (event: KeyboardEvent, k: number): void => {
        const next =
            { ArrowDown: k + 1, ArrowUp: k - 1, Home: 0, End: bars.length - 1 }[event.key] ?? -1;
        const rows = (event.currentTarget as Element).parentElement?.children;
        const row = next >= 0 ? rows?.[next] : undefined;
        if (row instanceof SVGElement) {
            event.preventDefault();
            setCurrent(next);
            row.focus();
        }
    };
    return (
        <g>
            {bars.map((bar, k) => (
                <g
                    key={k}
                    class="bar-row"
                    role="img"
                    tabindex={k === at ? 0 : -1}
                    aria-label={`${bar.label} ${bar.words}${bar.note ? `: ${bar.note}` : ''}`}
                    onKeyDown={event => {
                        go(event, k);
                    }}
                    onFocus={() => {
                        setCurrent(k);
                        onNote(bar.note);
                    }}
                    onPointerEnter={() => {
                        onNote(bar.note);
                    }}
                >
                    <BarRow
                        id={id}
                        bar={bar}
                        y={top + high * k}
                        high={high}
                        width={width}
                        joined={joined(k)}
                    />
                </g>
            ))}
        </g>
    );
}

interface RowProps {
    id: string;
    bar: Bar;
    y: number;
    high: number;
    width: number;
    joined: boolean;
}

function BarRow({ id, bar, y, high, width, joined }: RowProps) {
    const left = Math.min(bar.from, bar.to);
    const wide = Math.abs(bar.to - bar.from);
    const hatch = bar.kind === 'taken' || bar.kind === 'added';
    const middle = y + 16 + BAR / 2;
    return (
        <>
            <rect class="row-ground" x={-4} y={y - 3} width={width + 8} height={high - 2} />
            <text x={0} y={y + 11} text-anchor="start" class={bar.strong ? 'strong' : 'label'}>
                {bar.label}
            </text>
            <text
                x={width}
                y={y + 11}
                text-anchor="end"
                class={bar.strong ? 'strong number' : 'number'}
                {...exact(bar.value)}
            >
                {bar.words}
            </text>
            <rect
                x={left}
                y={y + 16}
                width={wide > 0 ? Math.max(1.5, wide) : 0}
                height={BAR}
                class={bar.kind}
                {...(hatch && { fill: `url(#${id}-${bar.kind})` })}
            />
            {joined && (
                <line x1={bar.to} y1={y + 16 + BAR} x2={bar.to} y2={y + high + 16} class="hair" />
            )}
            {bar.was && (
                <rect
                    x={Math.min(...bar.was)}
                    y={y + 18 + BAR}
                    width={Math.max(1.5, Math.abs(bar.was[1] - bar.was[0]))}
                    height={6}
                    class="was-bar"
                />
            )}
            {bar.band && bar.band[1] - bar.band[0] > 1 && (
                <Whisker low={bar.band[0]} high={bar.band[1]} y={middle} />
            )}
        </>
    );
}

function Whisker({ low, high, y }: { low: number; high: number; y: number }) {
    return (
        <>
            <line x1={low} y1={y} x2={high} y2={y} class="halo" />
            <path
                class="whisker"
                d={`M${low} ${y} L${high} ${y} M${low} ${y - 4} L${low} ${y + 4} M${high} ${y - 4} L${high} ${y + 4}`}
            />
        </>
    );
}
