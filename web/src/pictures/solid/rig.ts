import {
    BoxGeometry,
    CapsuleGeometry,
    ConeGeometry,
    CylinderGeometry,
    DoubleSide,
    Group,
    InstancedMesh,
    Matrix4,
    Mesh,
    MeshBasicMaterial,
    OctahedronGeometry,
    SphereGeometry,
    Vector3,
} from 'three';
import { arrowM, share, thickM, type Scene } from '../../core/scene';
import { diskCorners, fanStrokes, spinStrokes, type Ring } from '../../core/solid';
import { length, minus, plus, point, type Point } from '../../core/space';
import { CENTRE_M, HALF_M } from '../../core/things';
import {
    between,
    dashes,
    geometry,
    solid,
    strokes,
    vector,
    type Colour,
    type Extent,
} from './shapes';

const UP = new Vector3(0, 1, 0);

export function fans(scene: Scene, colour: Colour): Group {
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
        if (long <= 0) {
            continue; // nothing pushes: no arrow, and not a flat one either
        }
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

export function limbs(scene: Scene, colour: Colour): Group {
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

export function parts(scene: Scene, colour: Colour): Group {
    const all = new Group();
    const bodies = {
        pack: box(HALF_M.pack),
        part: box(HALF_M.part),
        mount: new OctahedronGeometry(HALF_M.mount),
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
export function centre(at: Point, colour: Colour): Group {
    const all = new Group();
    const dark = new MeshBasicMaterial({ color: colour('--ink') });
    const light = new MeshBasicMaterial({ color: colour('--sheet') });
    const quarter = Math.PI / 2;
    for (let k = 0; k < 8; k++) {
        const [round, down] = [k % 4, k < 4 ? 0 : 1];
        const eighth = new SphereGeometry(
            CENTRE_M,
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

function box(half: number): BoxGeometry {
    return new BoxGeometry(2 * half, 2 * half, 2 * half);
}

/** The person, the parts and the fans of a rig, and its two lines of action: weight and lift. */
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
