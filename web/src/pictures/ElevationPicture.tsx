import { useCallback, useId, useMemo, useRef } from 'preact/hooks';
import { numeral, ticks, type Axis } from '../core/axis';
import {
    acrossOn,
    arrowsOf,
    isUpright,
    layElevation,
    upOn,
    type Arrow,
    type LaidElevation,
} from '../core/faults';
import { holdOf } from '../core/hold';
import { Labels, widthOf, type Label } from '../core/labels';
import { withLengths } from '../core/lengths';
import { numbersOf } from '../core/numbers';
import { wordsOf } from '../core/rows';
import { NO_SCENE, sceneOf } from '../core/scene';
import type { Elevation, ElevationShape } from '../core/wire';
import type { PictureProps } from './api';
import { Frame } from './Frame';
import { Hatches } from './Hatches';
import { InSpace } from './InSpace';
import { PlacedNames } from './Leaders';
import { exact } from './TableView';
import { useWidth } from './useWidth';

const INSET = 18; // padding and frame of a picture
const WIDEST = 680;
const MOST_HIGH = 400;
const STRIP = 12;
const HEAD = 8;

/** What holds the rig, from the side and to scale, with numbered arrows for what pulls at it. */
export function ElevationPicture(props: PictureProps & { section: Elevation }) {
    const { section, fields, fileName, stale, selected, onShow, rig } = props;
    const id = useId();
    const room = useRef<HTMLDivElement>(null);
    const width = Math.min(WIDEST, Math.max(240, Math.floor(useWidth(room) - INSET)));
    const laid = useMemo(
        () => layElevation(section, fields, width, MOST_HIGH),
        [section, fields, width],
    );
    const arrows = useMemo(() => arrowsOf(section, laid), [section, laid]);
    const labels = useMemo(() => labelsOf(section, laid, arrows), [section, laid, arrows]);
    const hold = useMemo(() => holdOf(section), [section]);
    const scene = useMemo(() => (rig ? sceneOf(rig) : NO_SCENE), [rig]);
    const lengths = useMemo(() => withLengths(fields, props.units), [fields, props.units]);
    const tables = useCallback(() => numbersOf(section, fields), [section, fields]);
    const shapes = section.shapes.filter(isDrawn);
    const out = section.shapes.filter(({ shape }) => shape === 'keep out');
    const words = [...new Set(out.map(shape => shape.label).filter(Boolean))].join('; ');
    return (
        <Frame
            title={section.title}
            fileName={fileName}
            kind="elevation"
            tables={tables}
            stale={stale}
            selected={selected}
            onShow={onShow}
        >
            <div ref={room}>
                <svg
                    class="drawn view"
                    viewBox={`0 0 ${laid.width} ${laid.height}`}
                    role="img"
                    aria-label={`${section.title}: ${spoken(section)}`}
                    data-title={section.title}
                >
                    <Hatches id={id} />
                    <Edges laid={laid} />
                    {out.map((shape, k) => (
                        <KeepOut key={k} id={id} shape={shape} laid={laid} />
                    ))}
                    {shapes.map((shape, k) => (
                        <Drawn key={k} id={id} shape={shape} laid={laid} />
                    ))}
                    <line
                        class="axis"
                        x1={laid.left}
                        y1={upOn(laid, 0)}
                        x2={laid.right}
                        y2={upOn(laid, 0)}
                    />
                    {arrows.map((arrow, k) => (
                        <Pull key={k} arrow={arrow} />
                    ))}
                    <PlacedNames labels={labels} />
                </svg>
            </div>
            {hold && (
                <InSpace
                    title={section.title}
                    load={() => import('./solid/HoldSpace')}
                    props={{
                        words: `${section.title.replace(/, from .*/, '')} in 3D: ${spoken(section)}`,
                        title: section.title,
                        hold,
                        scene,
                        fields: lengths,
                        selected,
                        onShow,
                    }}
                />
            )}
            <ol class="loads">
                {section.loads.map((load, k) => (
                    <li key={k}>
                        {load.label}: <span {...exact(load.value)}>{wordsOf(load.value)}</span>
                    </li>
                ))}
            </ol>
            <p class="picture-key">
                Numbered arrows: loads, longer where they are stronger. Broken lines: ropes and
                reach.
                {words && ` Hatched strip below the ground, torn where it goes on: ${words}.`}
            </p>
        </Frame>
    );
}

function isDrawn({ shape }: ElevationShape): boolean {
    return shape !== 'keep out' && shape !== 'ground';
}

function spoken({ shapes, loads }: Elevation): string {
    const drawn = new Set(shapes.map(shape => shape.label || shape.shape));
    const pulls = loads.map(load => `${load.label} ${wordsOf(load.value)}`);
    return [...drawn, ...pulls].join('; ');
}

/** Round heights at the left, round places below. */
function Edges({ laid }: { laid: LaidElevation }) {
    const si = (axis: Axis, tick: number): number => (tick - axis.plus) / axis.per;
    const { across, up, bottom } = laid;
    return (
        <g aria-hidden="true">
            {ticks(up.low, up.high, up.step).map(tick => {
                const at = upOn(laid, si(up, tick));
                return (
                    <g key={tick}>
                        <line class="hair" x1={laid.left} y1={at} x2={laid.right} y2={at} />
                        <text class="soft" x={laid.left - 6} y={at + 4.5} text-anchor="end">
                            {numeral(tick, up.step)}
                        </text>
                    </g>
                );
            })}
            {ticks(across.low, across.high, across.step).map(tick => {
                const at = acrossOn(laid, si(across, tick));
                const words = numeral(tick, across.step);
                return (
                    <g key={tick}>
                        <line class="axis" x1={at} y1={bottom} x2={at} y2={bottom + 4} />
                        <text
                            class="soft"
                            x={Math.min(at, laid.width - widthOf(words) / 2)}
                            y={bottom + STRIP + 22}
                            text-anchor="middle"
                        >
                            {words}
                        </text>
                    </g>
                );
            })}
            <text class="soft" x={0} y={bottom + STRIP + 42}>
                up: {up.title}
            </text>
            <text class="soft" x={laid.width} y={bottom + STRIP + 42} text-anchor="end">
                {across.title}
            </text>
        </g>
    );
}

/** Where nobody may stand: a hatched strip below the ground, torn where it goes on. */
function KeepOut({ id, shape, laid }: { id: string; shape: ElevationShape; laid: LaidElevation }) {
    const xs = shape.outline.map(p => acrossOn(laid, p[0]));
    const wall = isUpright(shape);
    const before = (xs[0] ?? 0) < (laid.left + laid.right) / 2;
    const from = wall && before ? -1 : Math.min(...xs);
    const to = wall && !before ? laid.width : Math.max(...xs);
    const high = upOn(laid, Math.max(...shape.outline.map(p => p[1])));
    const [left, right] = [Math.max(laid.left, from), Math.min(laid.right, to)];
    if (right <= left) {
        return null;
    }
    const top = laid.bottom + 5;
    const [middle, low] = [top + STRIP / 2, top + STRIP];
    const d = [
        `M${n(left)} ${n(top)} L${n(right)} ${n(top)}`,
        ...(to > laid.right ? [`L${n(right - 6)} ${n(middle)}`] : []),
        `L${n(right)} ${n(low)} L${n(left)} ${n(low)}`,
        ...(from < laid.left ? [`L${n(left + 6)} ${n(middle)}`] : []),
    ];
    return (
        <>
            {wall && <path class="reached" d={`M${n(xs[0] ?? 0)} ${n(laid.bottom)} V${n(high)}`} />}
            <path class="taken" fill={`url(#${id}-taken)`} d={`${d.join(' ')} Z`} />
        </>
    );
}

function Drawn({ id, shape, laid }: { id: string; shape: ElevationShape; laid: LaidElevation }) {
    const spots = shape.outline.map(([across, up]) => [acrossOn(laid, across), upOn(laid, up)]);
    const first = spots[0];
    if (spots.length === 1 && first) {
        return <circle class="anchor" cx={first[0]} cy={first[1]} r={4} />;
    }
    const d = `M${spots.map(([sx = 0, sy = 0]) => `${n(sx)} ${n(sy)}`).join(' L')}${shape.closed ? ' Z' : ''}`;
    const hatch = shape.closed ? hatchOf(shape.shape) : undefined;
    return (
        <path
            class={styleOf(shape)}
            d={d}
            {...(hatch !== undefined && { fill: `url(#${id}-${hatch})` })}
        />
    );
}

function hatchOf(kind: ElevationShape['shape']): string | undefined {
    return kind === 'rig' ? 'pack' : kind === 'mat' ? 'added' : undefined;
}

function styleOf({ shape, closed }: ElevationShape): string {
    switch (shape) {
        case 'person':
            return 'person';
        case 'reach':
            return 'reached';
        case 'down line':
            return 'rope';
        case 'rig':
        case 'mat':
            return closed ? 'hatched-area' : 'edge';
        case 'ground':
        case 'stand':
        case 'anchor':
        case 'beam':
        case 'line':
        case 'platform':
        case 'gantry':
        case 'keep out':
            return closed ? 'made' : 'edge';
    }
}

function Pull({ arrow: { from, to, along } }: { arrow: Arrow }) {
    if (!along) {
        return <circle class="dot" cx={from[0]} cy={from[1]} r={3} />;
    }
    const [ux, uy] = along;
    const [bx, by] = [to[0] - HEAD * ux, to[1] - HEAD * uy];
    const side = 0.42 * HEAD;
    return (
        <>
            <line class="thrust" x1={from[0]} y1={from[1]} x2={bx} y2={by} />
            <path
                class="tip"
                d={`M${n(to[0])} ${n(to[1])} L${n(bx - side * uy)} ${n(by + side * ux)} L${n(bx + side * uy)} ${n(by - side * ux)} Z`}
            />
        </>
    );
}

/** The numbers of the loads at their tips, then the names of what is drawn; none over another. */
function labelsOf(
    { shapes, loads }: Elevation,
    laid: LaidElevation,
    arrows: readonly Arrow[],
): Label[] {
    const labels = new Labels(laid.width, laid.bottom);
    labels.reserve({ left: 0, top: 0, right: laid.left, bottom: laid.bottom });
    arrows.forEach(({ from, to }) => {
        labels.avoid({
            left: Math.min(from[0], to[0]) - 3,
            right: Math.max(from[0], to[0]) + 3,
            top: Math.min(from[1], to[1]) - 3,
            bottom: Math.max(from[1], to[1]) + 3,
        });
    });
    const about = ([cx, cy]: readonly [number, number], half: number) => ({
        left: cx - half,
        right: cx + half,
        top: cy - half,
        bottom: cy + half,
    });
    shapes.filter(isDrawn).forEach(({ outline, closed }) => {
        const spots = outline.map(spot => [acrossOn(laid, spot[0]), upOn(laid, spot[1])] as const);
        const ends = closed ? [...spots, ...spots.slice(0, 1)] : spots;
        ends.slice(1).forEach((to, k) => {
            const from = ends[k] ?? to;
            const steps = Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / 8) || 1;
            for (let i = 0; i <= steps; i++) {
                const at = (axis: 0 | 1): number =>
                    from[axis] + ((to[axis] - from[axis]) * i) / steps;
                labels.avoid(about([at(0), at(1)], 2));
            }
        });
    });
    const found = loads.map((_, k) => {
        const tip = arrows[k]?.to;
        return tip && labels.beside(about(tip, 2), String(k + 1));
    });
    const names = shapes
        .filter(shape => isDrawn(shape) && shape.label !== '')
        .map(shape => {
            const [across, up] = namedAt(shape);
            return labels.beside(about([acrossOn(laid, across), upOn(laid, up)], 4), shape.label);
        });
    return [...found, ...names].filter(label => label !== undefined);
}

/** The highest corner of an area, the middle of a line. */
function namedAt({ outline, closed }: ElevationShape): readonly [number, number] {
    const first = outline[0] ?? [0, 0];
    if (closed) {
        return outline.reduce((best, spot) => (spot[1] > best[1] ? spot : best), first);
    }
    const from = outline[Math.floor((outline.length - 1) / 2)] ?? first;
    const to = outline[Math.floor(outline.length / 2)] ?? first;
    return [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
}

function n(value: number): string {
    return value.toFixed(1);
}
