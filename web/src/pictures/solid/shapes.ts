import {
    BufferGeometry,
    Float32BufferAttribute,
    GridHelper,
    Group,
    InstancedMesh,
    Line,
    LineBasicMaterial,
    LineDashedMaterial,
    LineSegments,
    Matrix4,
    Mesh,
    MeshLambertMaterial,
    Quaternion,
    Vector3,
    type Material,
    type Object3D,
} from 'three';
import { xyz } from '../../core/solid';
import { length, minus, plus, point, type Point } from '../../core/space';
import type { Thing } from '../../core/things';

export type Colour = (token: string) => string;

const UP = new Vector3(0, 1, 0);

export function vector(p: Point): Vector3 {
    return new Vector3(...xyz(p));
}

export function geometry(points: readonly Point[]): BufferGeometry {
    const made = new BufferGeometry();
    made.setAttribute('position', new Float32BufferAttribute(points.flatMap(xyz), 3));
    return made;
}

export function strokes(points: readonly Point[], colour: string): LineSegments {
    return new LineSegments(geometry(points), new LineBasicMaterial({ color: colour }));
}

export function solid(colour: string): MeshLambertMaterial {
    return new MeshLambertMaterial({ color: colour });
}

/** The same body many times, each from one point to another: unit length along y, middle at 0. */
export function between(
    body: BufferGeometry,
    material: Material,
    spans: readonly (readonly [Point, Point])[],
    thick = 1,
): InstancedMesh {
    const many = new InstancedMesh(body, material, spans.length);
    spans.forEach(([from, to], k) => {
        const [a, b] = [vector(from), vector(to)];
        const way = b.clone().sub(a);
        const long = Math.max(way.length(), 1e-6);
        const turn = new Quaternion().setFromUnitVectors(UP, way.normalize());
        const matrix = new Matrix4().compose(
            a.add(b).multiplyScalar(0.5),
            turn,
            new Vector3(thick, long, thick),
        );
        many.setMatrixAt(k, matrix);
    });
    return many;
}

export function dashes(from: Point, to: Point, colour: string, dash: number): Line {
    const material = new LineDashedMaterial({ color: colour, dashSize: dash, gapSize: dash / 2 });
    const line = new Line(geometry([from, to]), material);
    line.computeLineDistances();
    return line;
}

/** How far the rig goes: its middle, its reach from there, its lowest point. */
export interface Extent {
    readonly middle: Point;
    readonly reach: number;
    readonly floor: number;
}

export function extentOf(all: readonly Point[]): Extent {
    const middleOf = (axis: keyof Point): number => {
        const values = all.map(p => p[axis]);
        return (Math.min(...values) + Math.max(...values)) / 2;
    };
    const middle = point(middleOf('forward'), middleOf('right'), middleOf('up'));
    return {
        middle,
        reach: Math.max(0.1, ...all.map(p => length(minus(p, middle)))),
        floor: Math.min(...all.map(p => p.up)),
    };
}

/** What the rig stands on, in squares of half a metre. */
export function ground({ reach, middle, floor }: Extent, colour: Colour): Group {
    const all = new Group();
    const half = Math.ceil(reach);
    const grid = new GridHelper(2 * half, 4 * half, colour('--edge'), colour('--line'));
    grid.position.copy(vector(point(middle.forward, middle.right, floor)));
    all.add(grid);
    return all;
}

/** Rings stand so far off what they are about. */
const RING = 1.36;
const LEAST_RING_M = 0.05;

/** A ring about a thing that faces whoever looks: marked ones broken, the selected one whole. */
export function about(thing: Thing, colour: string, broken: boolean): LineSegments {
    const way = minus(thing.to, thing.from);
    const radius = Math.max(LEAST_RING_M, RING * Math.max(thing.radiusM, length(way) / 3));
    const ends: number[] = [];
    for (let k = 0; k < 32; k++) {
        if (broken && k % 4 === 3) {
            continue;
        }
        for (const j of [k, k + 1]) {
            const a = (2 * Math.PI * j) / 32;
            ends.push(radius * Math.cos(a), radius * Math.sin(a), 0);
        }
    }
    const made = new BufferGeometry();
    made.setAttribute('position', new Float32BufferAttribute(ends, 3));
    const ring = new LineSegments(made, new LineBasicMaterial({ color: colour, depthTest: false }));
    ring.position.copy(vector(plus(thing.from, way, 0.5)));
    ring.renderOrder = 3;
    return ring;
}

/** Adds as many as there are, which may be none. */
export function addAll(group: Group, some: readonly Object3D[]): void {
    if (some.length > 0) {
        group.add(...some);
    }
}

/** Frees what a group holds on the graphics card. */
export function free(group: Group): void {
    group.traverse(each => {
        if (each instanceof Mesh || each instanceof Line) {
            (each.geometry as BufferGeometry).dispose();
            for (const material of [each.material as Material | Material[]].flat()) {
                if (material instanceof MeshLambertMaterial) {
                    material.map?.dispose();
                }
                material.dispose();
            }
        }
        if (each instanceof InstancedMesh) {
            each.dispose();
        }
    });
    group.removeFromParent();
}
