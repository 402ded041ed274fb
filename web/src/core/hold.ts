import { wordsOf } from './rows';
import type { Scene } from './scene';
import { cross, dot, minus, plus, point, type Point } from './space';
import type { Thing } from './things';
import type { Elevation, ElevationShape, Table } from './wire';

/** A thing about a held rig: a line by its ends, a box by two corners, a circle by one radius. */
export interface HoldShape {
    readonly kind: ElevationShape['shape'];
    readonly label: string;
    readonly from: Point;
    readonly to: Point;
    readonly form: 'line' | 'box' | 'circle' | 'point';
}
export interface HoldPull {
    readonly label: string;
    readonly words: string;
    readonly at: Point;
    /** Unit vector; nothing of a load of nothing. */
    readonly along: Point;
    /** Over the greatest. */
    readonly share: number;
}
/** How a rig stands in the axes of what holds it. */
export interface Frame3 {
    readonly origin: Point;
    readonly forward: Point;
    readonly up: Point;
}
export interface Hold {
    readonly shapes: readonly HoldShape[];
    readonly pulls: readonly HoldPull[];
    readonly frame: Frame3;
    readonly wearer: boolean;
}

const UPRIGHT: Frame3 = { origin: point(0, 0, 0), forward: point(1, 0, 0), up: point(0, 0, 1) };
/** Nobody within: all the room about it. */
const AROUND = new Set(['keep out', 'reach']);
const BOXES = new Set(['mat', 'platform']);

export function holdOf(elevation: Elevation): Hold | undefined {
    const table = elevation.space?.[0];
    if (!table) return undefined;
    const rows = rowsOf(table);
    let frame = UPRIGHT;
    for (const { kind, label, from, to } of rows) {
        if (kind === 'rig') {
            const way = minus(to, from);
            frame = { ...frame, origin: from, [label === 'its up' ? 'up' : 'forward']: way };
        }
    }
    const most = Math.max(...elevation.loads.map(load => Math.hypot(load.across, load.up)), 1e-9);
    return {
        frame,
        wearer: elevation.shapes.some(({ shape }) => shape === 'person'),
        shapes: rows.filter(({ kind }) => kind !== 'rig'),
        pulls: elevation.loads.map(load => {
            const size = Math.hypot(load.across, load.up);
            return {
                label: load.label,
                words: wordsOf(load.value),
                at: point(load.at[0], 0, load.at[1]),
                along: size > 0 ? point(load.across / size, 0, load.up / size) : point(0, 0, 0),
                share: size / most,
            };
        }),
    };
}

function rowsOf(table: Table): HoldShape[] {
    const of = (row: Table['rows'][number], field: string) => row[table.columns.indexOf(field)];
    return table.rows.map(row => {
        const si = (field: string): number => of(row, field)?.si ?? 0;
        const kind = (of(row, 'hold-shape')?.text ?? '') as HoldShape['kind'];
        const from = point(si('hold-forward'), si('hold-right'), si('hold-up'));
        const to = point(si('hold-end-forward'), si('hold-end-right'), si('hold-end-up'));
        return {
            kind,
            label: of(row, 'hold-label')?.text ?? '',
            from,
            to,
            form: formOf(kind, from, to),
        };
    });
}

function formOf(kind: string, from: Point, to: Point): HoldShape['form'] {
    const way = minus(to, from);
    if (AROUND.has(kind)) return 'circle';
    if (dot(way, way) === 0) return 'point';
    const apart = [way.forward, way.right, way.up].filter(value => value !== 0).length;
    return BOXES.has(kind) || (kind === 'stand' && apart === 3) ? 'box' : 'line';
}

/** To the right of a rig that stands so; these axes are left-handed, hence the order. */
function rightOf({ forward, up }: Frame3): Point {
    return cross(up, forward);
}

/** A rig as it stands in what holds it. */
export function heldScene(scene: Scene, { frame, wearer }: Hold): Scene {
    const right = rightOf(frame);
    const way = (p: Point): Point =>
        plus(plus(plus(point(0, 0, 0), frame.forward, p.forward), right, p.right), frame.up, p.up);
    const place = (p: Point): Point => plus(frame.origin, way(p));
    return {
        fans: scene.fans.map(fan => ({ ...fan, at: place(fan.at), push: way(fan.push) })),
        limbs: wearer
            ? scene.limbs.map(limb => ({ ...limb, from: place(limb.from), to: place(limb.to) }))
            : [],
        parts: scene.parts
            .filter(part => part.kind !== 'mount')
            .map(part => ({ ...part, at: place(part.at) })),
        centre: undefined,
        lift: undefined,
        jets: [],
        strikes: [],
    };
}

/** Lines and marks of what holds, as things that can be pointed at. */
export function holdThings(hold: Hold): Thing[] {
    return hold.shapes
        .filter(({ form }) => form !== 'circle')
        .map(({ kind, label, from, to }, k) => ({
            id: `${label} ${k + 1}`,
            what: kind,
            from,
            to,
            radiusM: 0.02,
            part: undefined,
        }));
}

/** Points that must be seen: not where nobody may stand, which is mostly far wider. */
export function holdCorners(hold: Hold): Point[] {
    return [
        ...hold.shapes
            .filter(({ kind }) => kind !== 'keep out')
            .flatMap(({ from, to, form }) =>
                form === 'circle' ? [to, plus(plus(from, from), to, -1)] : [from, to],
            ),
        ...hold.pulls.map(pull => pull.at),
    ];
}
