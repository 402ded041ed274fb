import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { numeral, shownOn, ticks, type Axis } from '../core/axis';
import { brokenAs, columns, explained, valueAt, type Curves } from '../core/curve';
import { colours } from './colour';

const HEIGHT = 240;
const FONT = '12.5px "Helvetica Neue", Arial, "Liberation Sans", "DejaVu Sans", sans-serif';

function axis(of: Axis, colour: (token: string) => string, size: number): uPlot.Axis {
    return {
        stroke: () => colour('--quiet'),
        font: FONT,
        size,
        gap: 4,
        splits: () => ticks(of.low, of.high, of.step).map(tick => (tick - of.plus) / of.per),
        values: (_, splits) => splits.map(si => numeral(shownOn(of, si), of.step)),
        grid: { stroke: () => colour('--line'), width: 1 },
        ticks: { show: false },
        border: { show: true, stroke: () => colour('--ink'), width: 1.3 },
    };
}

function scale(of: Axis): uPlot.Scale {
    const si = (shown: number): number => (shown - of.plus) / of.per;
    return { time: false, auto: false, range: [si(of.low), si(of.high)] };
}

function series(curves: Curves, colour: (token: string) => string): uPlot.Series[] {
    return curves.series.map(({ mark, line: number }) => {
        const broken = mark === 'dashes' ? [7, 4] : [...brokenAs(number)];
        const line = mark === 'line' || mark === 'dashes';
        return {
            spanGaps: true,
            width: mark === 'line' ? 2 : 1.6,
            stroke: () => colour(mark === 'line' ? '--ink' : '--quiet'),
            ...(line && broken.length > 0 && { dash: broken }),
            ...(line ? {} : { paths: () => null }),
            points: { show: mark === 'dot', size: 8, fill: () => colour('--sheet') },
        };
    });
}

const HATCH = 10;

/** Hatched stretches behind all else, their ends drawn. */
function zones(plot: uPlot, curves: Curves, colour: (token: string) => string): void {
    const { ctx } = plot;
    const { top, height } = plot.bbox;
    const ratio = devicePixelRatio;
    for (const zone of curves.zones) {
        const from = plot.valToPos(zone.from, 'x', true);
        const wide = Math.max(1, plot.valToPos(zone.to, 'x', true) - from);
        ctx.save();
        ctx.strokeStyle = colour('--line');
        ctx.lineWidth = 1.4 * ratio;
        ctx.beginPath();
        ctx.rect(from, top, wide, height);
        ctx.clip();
        ctx.beginPath();
        for (let off = 0; off < wide + height; off += HATCH * ratio) {
            ctx.moveTo(from + off, top);
            ctx.lineTo(from + off - height, top + height);
        }
        ctx.stroke();
        ctx.restore();
        ctx.save();
        ctx.strokeStyle = colour('--quiet');
        ctx.lineWidth = ratio;
        ctx.setLineDash([3 * ratio, 2 * ratio]);
        ctx.strokeRect(from, top, wide, height);
        ctx.restore();
    }
}

/** Crosses and their words: what ends it, where it ends. */
function events(plot: uPlot, curves: Curves, colour: (token: string) => string): void {
    const { ctx } = plot;
    const ratio = devicePixelRatio;
    ctx.save();
    ctx.font = FONT.replace('12.5px', `${12.5 * ratio}px`);
    ctx.lineWidth = 2.6 * ratio;
    const said = explained(curves);
    for (const each of curves.series.filter(({ mark }) => mark === 'cross')) {
        for (const [si, value] of each.points) {
            const x = plot.valToPos(si, 'x', true);
            const y = plot.valToPos(value, 'y', true);
            const r = 5 * ratio;
            ctx.strokeStyle = colour('--unmet');
            ctx.beginPath();
            ctx.moveTo(x - r, y - r);
            ctx.lineTo(x + r, y + r);
            ctx.moveTo(x - r, y + r);
            ctx.lineTo(x + r, y - r);
            ctx.stroke();
            if (!said.includes(each)) continue; // said once
            ctx.fillStyle = colour('--ink');
            ctx.strokeStyle = colour('--sheet');
            ctx.textAlign = 'left';
            ctx.textBaseline = 'alphabetic';
            const wide = ctx.measureText(each.label).width;
            const at = clearest(plot, curves, [x, y], wide, r);
            ctx.lineJoin = 'round';
            ctx.strokeText(each.label, ...at);
            ctx.fillText(each.label, ...at);
        }
    }
    ctx.restore();
}

/** The corner about a point whose words lie farthest from every line, within the plot. */
function clearest(
    plot: uPlot,
    curves: Curves,
    [x, y]: [number, number],
    wide: number,
    r: number,
): [number, number] {
    const { left, top, width, height } = plot.bbox;
    let best: [number, number] = [x + 2 * r, y - 2 * r];
    let clear = -1;
    for (const at of [
        [x + 2 * r, y - 2 * r],
        [x - 2 * r - wide, y - 2 * r],
        [x + 2 * r, y + 4 * r],
        [x - 2 * r - wide, y + 4 * r],
    ] as [number, number][]) {
        const middle = at[1] - 0.8 * r;
        const inside =
            at[0] >= left && at[0] + wide <= left + width && middle > top && middle < top + height;
        let near = inside ? Infinity : 0;
        for (const share of [0, 0.25, 0.5, 0.75, 1]) {
            const si = plot.posToVal(at[0] + share * wide, 'x', true);
            for (const { mark, points } of curves.series) {
                const value = mark === 'cross' || mark === 'dot' ? undefined : valueAt(points, si);
                if (value !== undefined) {
                    near = Math.min(near, Math.abs(plot.valToPos(value, 'y', true) - middle));
                }
            }
        }
        if (near > clear) {
            clear = near;
            best = at;
        }
    }
    return best;
}

export interface Plotter {
    /** Puts the cursor on one of the steps; undefined takes it away. */
    point(step: number | undefined): void;
    show(curves: Curves): void;
    redraw(): void;
    dispose(): void;
}

/**
 * Plots into an element; undefined where nothing can be plotted.
 *
 * @param together plots with the same word share their cursor
 * @param onStep the step under the pointer
 */
export function plotter(
    home: HTMLElement,
    first: Curves,
    together: string,
    onStep: (step: number | undefined) => void,
): Plotter | undefined {
    if (!document.createElement('canvas').getContext('2d')) {
        return undefined;
    }
    let curves = first;
    const colour = colours(home);
    const make = (): uPlot =>
        new uPlot(
            {
                width: Math.max(200, home.clientWidth),
                height: HEIGHT,
                legend: { show: false },
                scales: { x: scale(curves.x), y: scale(curves.y) },
                axes: [axis(curves.x, colour, 26), axis(curves.y, colour, 52)],
                series: [{}, ...series(curves, colour)],
                cursor: {
                    drag: { x: false, y: false, setScale: false },
                    sync: { key: together, setSeries: false },
                    points: { show: false },
                    y: false,
                },
                hooks: {
                    drawClear: [
                        plot => {
                            zones(plot, curves, colour);
                        },
                    ],
                    draw: [
                        plot => {
                            events(plot, curves, colour);
                        },
                    ],
                    setCursor: [
                        plot => {
                            const at = plot.cursor.idx;
                            const x = at == null ? undefined : plot.data[0][at];
                            onStep(x === undefined ? undefined : nearest(curves, x));
                        },
                    ],
                },
            },
            columns(curves),
            home,
        );
    let plot = make();
    const resized = new ResizeObserver(() => {
        const width = Math.max(200, home.clientWidth);
        if (home.clientWidth > 0 && width !== plot.width) {
            plot.setSize({ width, height: HEIGHT });
        }
    });
    resized.observe(home);
    return {
        point(step) {
            const at = step === undefined ? undefined : curves.steps[step];
            plot.setCursor(
                at
                    ? { left: plot.valToPos(at[0], 'x'), top: plot.valToPos(at[1], 'y') }
                    : { left: -10, top: -10 },
            );
        },
        show(next) {
            curves = next;
            plot.destroy();
            plot = make();
        },
        redraw() {
            plot.redraw(false, true);
        },
        dispose() {
            resized.disconnect();
            plot.destroy();
        },
    };
}

function nearest(curves: Curves, x: number): number {
    let best = 0;
    curves.steps.forEach((step, k) => {
        if (Math.abs(step[0] - x) < Math.abs((curves.steps[best]?.[0] ?? 0) - x)) {
            best = k;
        }
    });
    return best;
}
