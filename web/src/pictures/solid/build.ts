import {
    BufferGeometry,
    CapsuleGeometry,
    BoxGeometry,
    ConeGeometry,
    CylinderGeometry,
    DoubleSide,
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
    MeshBasicMaterial,
    MeshLambertMaterial,
    OctahedronGeometry,
    Quaternion,
    SphereGeometry,
    Vector3,
    type Material,
} from 'three';
import { arrowM, corners, share, thickM, type Scene } from '../../core/scene';
import { diskCorners, fanStrokes, spinStrokes, xyz, type Ring } from '../../core/solid';
import { length, minus, plus, point, type Point } from '../../core/space';

export type Colour = (token: string) => string;

const UP = new Vector3(0, 1, 0);

function vector(p: Point): Vector3 {
    return new Vector3(...xyz(p));
}

function geometry(points: readonly Point[]): BufferGeometry {
    const made = new BufferGeometry();
    made.setAttribute('position', new Float32BufferAttribute(points.flatMap(xyz), 3));
    return made;
}

function strokes(points: readonly Point[], colour: string): LineSegments {
    return new LineSegments(geometry(points), new LineBasicMaterial({ color: colour }));
}

function solid(colour: string): MeshLambertMaterial {
    return new MeshLambertMaterial({ color: colour });
}

/** The same body many times, each from one point to another: unit length along y, middle at 0. */
function between(
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

function fans(scene: Scene, colour: Colour): Group {
    const all = new Group();
    const rings = scene.fans.map(fan => ({
        ring: { at: fan.at, push: fan.push, radius: fan.tipM / 2 } satisfies Ring,
        rightHand: fan.rightHand,
    }));
    const disks = geometry(rings.flatMap(({ ring }) => diskCorners(ring)));
    all.add(
        new Mesh(
            disks,
            new MeshBasicMaterial({
                color: colour('--sheet'),
                side: DoubleSide,
                transparent: true,
                opacity: 0.75,
                depthWrite: false,
            }),
        ),
        strokes(
            rings.flatMap(({ ring, rightHand }) => fanStrokes(ring, rightHand)),
            colour('--ink'),
        ),
        strokes(
            rings.flatMap(({ ring, rightHand }) => spinStrokes(ring, rightHand)),
            colour('--quiet'),
        ),
    );
    const arrow = arrowM(scene);
    const head = 0.18 * arrow;
    const shafts: [Point, Point][] = [];
    const heads: [Point, Point][] = [];
    for (const fan of scene.fans) {
        const long = arrow * share(scene, fan);
        const neck = plus(fan.at, fan.push, Math.max(0, long - head));
        shafts.push([fan.at, neck]);
        heads.push([neck, plus(fan.at, fan.push, Math.max(long, 1e-4))]);
    }
    all.add(
        between(new CylinderGeometry(0.004, 0.004, 1, 8), solid(colour('--accent')), shafts),
        between(new ConeGeometry(0.014, 1, 12), solid(colour('--accent')), heads),
    );
    return all;
}

function limbs(scene: Scene, colour: Colour): Group {
    const all = new Group();
    const skin = solid(colour('--limb'));
    for (const limb of scene.limbs) {
        const long = length(minus(limb.to, limb.from));
        const body = new CapsuleGeometry(thickM(limb.name) / 2, Math.max(long, 1e-3), 6, 16);
        const mesh = new Mesh(body, skin);
        const [a, b] = [vector(limb.from), vector(limb.to)];
        mesh.position.copy(a).add(b).multiplyScalar(0.5);
        mesh.quaternion.setFromUnitVectors(UP, b.sub(a).normalize());
        all.add(mesh);
    }
    return all;
}

function parts(scene: Scene, colour: Colour): Group {
    const all = new Group();
    const bodies = {
        pack: new BoxGeometry(0.05, 0.05, 0.05),
        part: new BoxGeometry(0.025, 0.025, 0.025),
        mount: new OctahedronGeometry(0.03),
    };
    const paint = { pack: '--take', part: '--sheet', mount: '--sheet' } as const;
    for (const kind of ['pack', 'part', 'mount'] as const) {
        const of = scene.parts.filter(part => part.kind === kind);
        const many = new InstancedMesh(bodies[kind], solid(colour(paint[kind])), of.length);
        of.forEach((part, k) => {
            many.setMatrixAt(k, new Matrix4().makeTranslation(vector(part.at)));
        });
        all.add(many);
    }
    return all;
}

/** A ball in eighths, dark and light in turn: the trade's sign in space. */
function centre(at: Point, colour: Colour): Group {
    const all = new Group();
    const dark = new MeshBasicMaterial({ color: colour('--ink') });
    const light = new MeshBasicMaterial({ color: colour('--sheet') });
    const quarter = Math.PI / 2;
    for (let k = 0; k < 8; k++) {
        const [round, down] = [k % 4, k < 4 ? 0 : 1];
        const eighth = new SphereGeometry(
            0.035,
            8,
            8,
            round * quarter,
            quarter,
            down * quarter,
            quarter,
        );
        all.add(new Mesh(eighth, (round + down) % 2 === 0 ? dark : light));
    }
    all.position.copy(vector(at));
    all.renderOrder = 2;
    return all;
}

function dashes(from: Point, to: Point, colour: string, dash: number): Line {
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

export function extentOf(scene: Scene): Extent {
    const all = corners(scene);
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

/** All that is seen of a rig. */
export function build(scene: Scene, extent: Extent, colour: Colour): Group {
    const all = new Group();
    all.add(limbs(scene, colour), parts(scene, colour), fans(scene, colour));
    const { reach, floor } = extent;
    if (scene.centre) {
        all.add(centre(scene.centre, colour));
        const down = point(scene.centre.forward, scene.centre.right, floor);
        all.add(dashes(scene.centre, down, colour('--ink'), 0.02));
    }
    if (scene.lift) {
        const { at, along } = scene.lift;
        all.add(dashes(plus(at, along, -reach), plus(at, along, reach), colour('--unmet'), 0.05));
    }
    return all;
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

/** A ring about a part that faces whoever looks: marked ones broken, the selected one whole. */
export function about(at: Point, radius: number, colour: string, broken: boolean): LineSegments {
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
    ring.position.copy(vector(at));
    ring.renderOrder = 3;
    return ring;
}

/** Frees what a group holds on the graphics card. */
export function free(group: Group): void {
    group.traverse(each => {
        if (each instanceof Mesh || each instanceof Line) {
            (each.geometry as BufferGeometry).dispose();
            for (const material of [each.material as Material | Material[]].flat()) {
                material.dispose();
            }
        }
        if (each instanceof InstancedMesh) {
            each.dispose();
        }
    });
    group.removeFromParent();
}
