import { axisOf, numeral, shownOn, type Axis } from './axis';
import type { AnswerDocument, Plot, Zone } from './wire';

/** A plot with its axes, x ascending, ready to be drawn. */
export interface Curves {
    readonly title: string;
    readonly x: Axis;
    readonly y: Axis;
    readonly series: readonly Curve[];
    /** Points of the longest line: what a cursor steps through. */
    readonly steps: readonly (readonly [number, number])[];
    /** Hatched stretches of x behind the curves. */
    readonly zones: readonly Zone[];
}
export interface Curve {
    readonly label: string;
    readonly mark: Plot['series'][number]['mark'];
    /** Which of the named lines it is, from 0: lines after the first are broken, each in its own way. */
    readonly line: number;
    /** SI. */
    readonly points: readonly (readonly [number, number])[];
}

export function curvesOf(plot: Plot, fields: AnswerDocument['fields']): Curves {
    let line = -1;
    const series = plot.series.map(({ label, mark, points }) => ({
        label,
        mark,
        line: (line += mark === 'line' && label ? 1 : 0),
        points: [...points].sort((a, b) => a[0] - b[0]),
    }));
    const all = series.flatMap(each => each.points);
    const lines = series.filter(each => each.mark === 'line');
    const longest = [...(lines.length > 0 ? lines : series)].sort(
        (a, b) => b.points.length - a.points.length,
    )[0];
    const zones = plot.zones ?? [];
    return {
        title: plot.title,
        x: axisOf(fields[plot.x.field], plot.x.field, [
            ...all.map(p => p[0]),
            ...zones.flatMap(zone => [zone.from, zone.to]),
        ]),
        y: axisOf(
            fields[plot.y.field],
            plot.y.field,
            all.map(p => p[1]),
        ),
        series,
        steps: longest?.points ?? [],
        zones,
    };
}

/** A zone with its ends in the unit of its axis: "no way out, 1.5 to 6.0 m". */
export function zoneWords(curves: Curves, zone: Zone): string {
    const { x } = curves;
    const end = (si: number): string => numeral(shownOn(x, si), x.step / 10);
    return `${zone.label}, ${end(zone.from)} to ${end(zone.to)}${x.unit ? ` ${x.unit}` : ''}`;
}

/** Series that a legend explains: each mark with its words once. */
export function explained(curves: Curves): Curve[] {
    return curves.series.filter(
        (each, k) =>
            each.label &&
            (each.mark === 'line' ||
                !curves.series
                    .slice(0, k)
                    .some(other => other.mark === each.mark && other.label === each.label)),
    );
}

/**
 * Columns over one x, as a plotter wants them: no value where a series has no point. A step has two points
 * at one x, and keeps both.
 */
export function columns(curves: Curves): [number[], ...(number | null)[][]] {
    const placed = curves.series.map(each => placesOf(each.points));
    const places = [...new Set(placed.flatMap(at => [...at.keys()]))]
        .map(key => key.split(' ').map(Number))
        .sort(([x0 = 0, k0 = 0], [x1 = 0, k1 = 0]) => x0 - x1 || k0 - k1);
    const ys = placed.map(at => places.map(([x, k]) => at.get(`${x} ${k}`) ?? null));
    return [places.map(([x = 0]) => x), ...ys];
}

/** Values by x and by how many points of the series lie at that x before. */
function placesOf(points: Curve['points']): Map<string, number> {
    const at = new Map<string, number>();
    let [before, k] = [NaN, 0];
    for (const [x, y] of points) {
        k = x === before ? k + 1 : 0;
        before = x;
        at.set(`${x} ${k}`, y);
    }
    return at;
}

/** What a line of points, x ascending, is between two of them; undefined beyond its ends. */
export function valueAt(
    points: readonly (readonly [number, number])[],
    x: number,
): number | undefined {
    const k = points.findIndex(p => p[0] >= x);
    const after = points[k];
    const before = points[k - 1] ?? after;
    if (!after || !before || (k === 0 && after[0] > x)) {
        return undefined;
    }
    const wide = after[0] - before[0];
    return wide > 0 ? before[1] + ((after[1] - before[1]) * (x - before[0])) / wide : after[1];
}

/** How lines after the first are broken, in pixels on and off. */
export const BROKEN: readonly (readonly number[])[] = [
    [],
    [11, 3],
    [2, 3],
    [11, 3, 2, 3],
    [5, 2, 1, 2, 1, 2],
];

export function brokenAs(line: number): readonly number[] {
    return BROKEN[Math.max(0, line) % BROKEN.length] ?? [];
}
