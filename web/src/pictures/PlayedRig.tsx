import { useMemo } from 'preact/hooks';
import { DISK, fanMatrix, halves } from '../core/fanShape';
import { Labels, type Box, type Label } from '../core/labels';
import {
    levelOf,
    shareAt,
    textOn,
    worstOf,
    type Level,
    type Mark,
    type Played,
} from '../core/playback';
import { FOOT } from '../core/rigLabels';
import { corners, type DrawnFan, type Scene } from '../core/scene';
import { length, minus, type Point } from '../core/space';
import { flattened } from '../core/svg';
import { x, y, type Laid } from '../core/view';
import type { Track } from '../core/wire';
import { PlacedNames } from './Leaders';
import { Limbs } from './Limbs';

const DOT = 4;
const SQUARE = 8;
/** Shorter than this on the picture, a wire is a point, in its units. */
const SHORTEST = 2;

/** Below all that is played a wearer's legs say nothing, and take the room of what does; m. */
const BELOW = 0.1;

/** The rig as far as what is played reaches. */
export function playedScene(scene: Scene, played: Played): Scene {
    const lowest = Math.min(...played.marks.flatMap(mark => [mark.from.up, mark.to.up]));
    return {
        ...scene,
        limbs: scene.limbs.filter(limb => Math.min(limb.from.up, limb.to.up) > lowest - BELOW),
        centre: undefined,
        lift: undefined,
    };
}

/** Points that must be seen: the rig, and what is played. */
export function playedCorners(scene: Scene, played: Played): Point[] {
    const places = played.marks.flatMap(mark => [mark.from, mark.to]);
    const drawn = scene.fans.length + scene.limbs.length > 0;
    return [...(drawn ? corners({ ...scene, parts: [] }) : []), ...places];
}

interface PlayedProps {
    id: string;
    scene: Scene;
    laid: Laid;
    played: Played;
    moment: number;
    /** Whose values stand beside them. */
    named: readonly Track[];
    selected: string | undefined;
    onShow: (part: string) => void;
}

/** Fans, packs, wires and what joins them, each by how far it is on its way at a moment. */
export function PlayedRig(props: PlayedProps) {
    const { id, scene, laid, played, moment, selected, onShow } = props;
    const shapes = useMemo(
        () => played.marks.map(mark => shapeOf(mark, scene, laid)),
        [played, scene, laid],
    );
    const levels = played.marks.map(mark => {
        const worst = worstOf(mark, moment, played.cold);
        return worst ? levelOf(shareAt(worst, moment, played.cold)) : 'cool';
    });
    // The cool ones first: what is hot lies above them.
    const order = played.marks
        .map((_, k) => k)
        .sort(
            (a, b) =>
                RANK[shapes[a]?.kind ?? 'dot'] - RANK[shapes[b]?.kind ?? 'dot'] ||
                HEAT[levels[a] ?? 'cool'] - HEAT[levels[b] ?? 'cool'],
        );
    const labels = labelsOf(props, shapes);
    return (
        <g aria-hidden="true">
            <LevelHatches id={id} />
            <Limbs scene={scene} laid={laid} />
            {order.map(k => {
                const [mark, shape, level] = [played.marks[k], shapes[k], levels[k]];
                return (
                    mark &&
                    shape &&
                    level && (
                        <g
                            key={k}
                            class="played"
                            data-part={mark.part}
                            data-level={level}
                            onClick={() => {
                                onShow(mark.part);
                            }}
                        >
                            <Drawing id={id} shape={shape} level={level} />
                            {mark.part === selected && <Rim shape={shape} />}
                        </g>
                    )
                );
            })}
            <PlacedNames labels={labels} />
        </g>
    );
}

type Shape =
    | { kind: 'wire'; x1: number; y1: number; x2: number; y2: number; box: Box }
    | { kind: 'fan'; d: string; rim: string; box: Box }
    | { kind: 'pack' | 'dot'; cx: number; cy: number; half: number; box: Box };

const RANK: Readonly<Record<Shape['kind'], number>> = { fan: 0, wire: 1, pack: 2, dot: 3 };
const HEAT: Readonly<Record<Level, number>> = { cool: 0, warm: 1, near: 2, over: 3 };

function shapeOf(mark: Mark, scene: Scene, laid: Laid): Shape {
    const [x1, y1] = [x(laid, mark.from), y(laid, mark.from)];
    const [x2, y2] = [x(laid, mark.to), y(laid, mark.to)];
    const wire = length(minus(mark.to, mark.from)) > 0;
    if (wire && Math.hypot(x2 - x1, y2 - y1) >= SHORTEST) {
        // A name stands beside the middle of a wire.
        const box = square((x1 + x2) / 2, (y1 + y2) / 2, 3);
        return { kind: 'wire', x1, y1, x2, y2, box };
    }
    const fan = wire ? undefined : fanOf(mark, scene);
    if (fan) {
        const matrix = fanMatrix(laid, fan.at, fan.push, fan.tipM);
        const [wide, high] = halves(matrix);
        const [cx, cy] = [x(laid, fan.at), y(laid, fan.at)];
        return {
            kind: 'fan',
            // Hatches keep their size: the matrix goes into the path.
            d: flattened(DISK, matrix),
            rim: flattened(DISK, fanMatrix(laid, fan.at, fan.push, fan.tipM * 1.22)),
            box: { left: cx - wide, right: cx + wide, top: cy - high, bottom: cy + high },
        };
    }
    const pack = mark.tracks.some(track => track.kind === 'cells');
    const half = pack ? SQUARE : DOT;
    return { kind: pack ? 'pack' : 'dot', cx: x1, cy: y1, half, box: square(x1, y1, half) };
}

function fanOf(mark: Mark, scene: Scene): DrawnFan | undefined {
    return scene.fans.find(fan => mark.part === fan.id || mark.part.startsWith(`${fan.id}.`));
}

function square(cx: number, cy: number, half: number): Box {
    return { left: cx - half, right: cx + half, top: cy - half, bottom: cy + half };
}

/** Values beside the parts that are named, none over another. */
function labelsOf(
    { laid, played, moment, named, selected }: PlayedProps,
    shapes: Shape[],
): Label[] {
    const labels = new Labels(laid.width, laid.height - FOOT);
    labels.reserve({ left: 0, top: 0, right: 90, bottom: 18 });
    shapes.forEach(shape => {
        labels.avoid(shape.box);
    });
    const chosen = played.marks.find(mark => mark.part === selected);
    const tracks = [...(chosen ? [worstOf(chosen, moment, played.cold)] : []), ...named];
    const found: Label[] = [];
    const seen = new Set<Mark>();
    for (const track of tracks) {
        const at = played.marks.findIndex(mark => track && mark.tracks.includes(track));
        const [mark, shape] = [played.marks[at], shapes[at]];
        if (track && mark && shape && !seen.has(mark)) {
            seen.add(mark);
            const words = `${track.kind} ${textOn(played.y, track.values[moment] ?? 0)}`;
            const label = labels.beside(shape.box, words);
            if (label) {
                found.push(label);
            }
        }
    }
    return found;
}

function Drawing({ id, shape, level }: { id: string; shape: Shape; level: Level }) {
    const hatch = level === 'cool' ? undefined : `url(#${id}-${level})`;
    switch (shape.kind) {
        case 'wire': {
            const { x1, y1, x2, y2 } = shape;
            return (
                <>
                    <line class="reach" x1={x1} y1={y1} x2={x2} y2={y2} />
                    <line class={`wire ${level}`} x1={x1} y1={y1} x2={x2} y2={y2} />
                </>
            );
        }
        case 'fan':
            return (
                <>
                    <path class={`level ${level}`} d={shape.d} />
                    {hatch && <path class="hatched" fill={hatch} d={shape.d} />}
                </>
            );
        case 'pack': {
            const { cx, cy, half } = shape;
            const place = { x: cx - half, y: cy - half, width: 2 * half, height: 2 * half };
            return (
                <>
                    <rect class={`level ${level}`} {...place} />
                    {hatch && <rect class="hatched" fill={hatch} {...place} />}
                </>
            );
        }
        case 'dot':
            return (
                <>
                    <circle
                        class={`level ${level}`}
                        cx={shape.cx}
                        cy={shape.cy}
                        r={shape.half + HEAT[level] / 2}
                    />
                    {level === 'over' && (
                        <path
                            class="crossed"
                            d={`M${shape.cx - 4} ${shape.cy - 4} l8 8 m0 -8 l-8 8`}
                        />
                    )}
                </>
            );
    }
}

function Rim({ shape }: { shape: Shape }) {
    switch (shape.kind) {
        case 'wire':
            return (
                <line class="selected" x1={shape.x1} y1={shape.y1} x2={shape.x2} y2={shape.y2} />
            );
        case 'fan':
            return <path class="selected" d={shape.rim} />;
        case 'pack':
        case 'dot':
            return <circle class="selected" cx={shape.cx} cy={shape.cy} r={shape.half + 5} />;
    }
}

/** Hatches of the levels: denser, the nearer to the limit. */
function LevelHatches({ id }: { id: string }) {
    return (
        <defs>
            <pattern id={`${id}-warm`} width="7" height="7" patternUnits="userSpaceOnUse">
                <circle cx="3.5" cy="3.5" r="1" class="hatchdot" />
            </pattern>
            <pattern id={`${id}-near`} width="5" height="5" patternUnits="userSpaceOnUse">
                <path d="M-1 6 L6 -1 M-1 1 L1 -1 M4 6 L6 4" class="hatchline" />
            </pattern>
            <pattern id={`${id}-over`} width="5" height="5" patternUnits="userSpaceOnUse">
                <path d="M-1 6 L6 -1 M-1 -1 L6 6" class="hatchline" />
            </pattern>
        </defs>
    );
}

/** A level as it is drawn, beside its words. */
export function Swatch({ id, level }: { id: string; level: Level }) {
    const place = { x: 1.5, y: 1.5, width: 13, height: 13 };
    return (
        <svg class="swatch" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
            <LevelHatches id={id} />
            <rect class={`level ${level}`} {...place} />
            {level !== 'cool' && <rect class="hatched" fill={`url(#${id}-${level})`} {...place} />}
        </svg>
    );
}
