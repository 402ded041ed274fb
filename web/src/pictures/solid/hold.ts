import {
    BoxGeometry,
    ConeGeometry,
    CylinderGeometry,
    DoubleSide,
    EdgesGeometry,
    GridHelper,
    Group,
    LineBasicMaterial,
    LineDashedMaterial,
    LineSegments,
    Mesh,
    MeshBasicMaterial,
    RingGeometry,
    SphereGeometry,
} from 'three';
import type { Hold, HoldShape } from '../../core/hold';
import { length, minus, plus, point, type Point } from '../../core/space';
import { addAll, between, geometry, solid, strokes, vector, type Colour } from './shapes';

const SIDES = 72;
/** How long the arrow of the greatest load is, and the least, m. */
const ARROW_M = 0.8;
const LEAST_M = 0.2;
const HEAD_M = 0.1;
/** How wide the hatched strip of the zone is, over its radius. */
const STRIP = 0.06;

/** What holds a rig, what pulls at it, and where nobody may stand. */
export function hold({ shapes, pulls }: Hold, colour: Colour): Group {
    const all = new Group();
    const lines = shapes.filter(({ form }) => form === 'line');
    const spans = (dashed: boolean) => lines.filter(shape => isRope(shape) === dashed);
    all.add(
        between(
            new CylinderGeometry(0.015, 0.015, 1, 8),
            solid(colour('--quiet')),
            spans(false).map(({ from, to }) => [from, to] as const),
        ),
        dashedLines(
            spans(true).flatMap(({ from, to }) => [from, to]),
            colour('--ink'),
            0.08,
        ),
    );
    for (const shape of shapes) {
        if (shape.form === 'box') addAll(all, box(shape, colour));
        if (shape.form === 'circle') addAll(all, circle(shape, colour));
        if (shape.form === 'point') {
            const ball = new Mesh(new SphereGeometry(0.05, 16, 12), solid(colour('--ink')));
            ball.position.copy(vector(shape.from));
            all.add(ball);
        }
    }
    const shafts: [Point, Point][] = [];
    const heads: [Point, Point][] = [];
    for (const { at, along, share } of pulls) {
        if (length(along) > 0) {
            const long = LEAST_M + (ARROW_M - LEAST_M) * share;
            const neck = plus(at, along, long - HEAD_M);
            shafts.push([at, neck]);
            heads.push([neck, plus(at, along, long)]);
        }
    }
    all.add(
        between(new CylinderGeometry(0.012, 0.012, 1, 8), solid(colour('--unmet')), shafts),
        between(new ConeGeometry(0.04, 1, 12), solid(colour('--unmet')), heads),
        floor(shapes, colour),
    );
    return all;
}

function isRope({ kind }: HoldShape): boolean {
    return kind === 'line' || kind === 'down line';
}

function dashedLines(ends: readonly Point[], colour: string, dash: number): LineSegments {
    const lines = new LineSegments(
        geometry(ends),
        new LineDashedMaterial({ color: colour, dashSize: dash, gapSize: dash / 2 }),
    );
    lines.computeLineDistances();
    return lines;
}

function box({ from, to, kind }: HoldShape, colour: Colour): (Mesh | LineSegments)[] {
    const size = minus(to, from);
    const body = new BoxGeometry(
        Math.abs(size.right),
        Math.max(0.005, Math.abs(size.up)),
        Math.abs(size.forward),
    );
    const middle = vector(plus(from, size, 0.5));
    const filled = new Mesh(body, solid(colour(kind === 'mat' ? '--band' : '--take')));
    const edges = new LineSegments(
        new EdgesGeometry(body),
        new LineBasicMaterial({ color: colour('--ink') }),
    );
    filled.position.copy(middle);
    edges.position.copy(middle);
    return [filled, edges];
}

/** A reach dashed; the zone in which nobody may stand as a hatched strip within its edge. */
function circle({ from, to, kind }: HoldShape, colour: Colour): (Mesh | LineSegments)[] {
    const radius = length(minus(to, from));
    const on = (k: number, r = radius): Point => {
        const angle = (2 * Math.PI * k) / SIDES;
        return plus(from, point(r * Math.cos(angle), r * Math.sin(angle), 0.005));
    };
    const round = Array.from({ length: SIDES }, (_, k) => [on(k), on(k + 1)]).flat();
    if (kind !== 'keep out') {
        return [dashedLines(round, colour('--quiet'), 0.06)];
    }
    const inner = radius * (1 - STRIP);
    const hatch = Array.from({ length: SIDES }, (_, k) => [on(k, inner), on(k + 1)]).flat();
    const strip = new Mesh(
        new RingGeometry(inner, radius, SIDES),
        new MeshBasicMaterial({
            color: colour('--unmet'),
            transparent: true,
            opacity: 0.15,
            side: DoubleSide,
            depthWrite: false,
        }),
    );
    strip.rotation.x = -Math.PI / 2;
    strip.position.copy(vector(plus(from, point(0, 0, 0.004))));
    return [strip, strokes([...round, ...hatch], colour('--unmet'))];
}

/** The ground as far as anything is told, in squares of a metre. */
function floor(shapes: readonly HoldShape[], colour: Colour): GridHelper {
    const far = Math.max(1, ...shapes.map(({ to }) => Math.hypot(to.forward, to.right)));
    const half = Math.ceil(far) + 1;
    return new GridHelper(2 * half, 2 * half, colour('--edge'), colour('--line'));
}
