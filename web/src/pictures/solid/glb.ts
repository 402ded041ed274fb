import {
    CapsuleGeometry,
    ConeGeometry,
    CylinderGeometry,
    BoxGeometry,
    DoubleSide,
    FrontSide,
    Group,
    Mesh,
    MeshStandardMaterial,
    OctahedronGeometry,
    Quaternion,
    SphereGeometry,
    TorusGeometry,
    Vector3,
    type BufferGeometry,
    type Object3D,
} from 'three';
import { GLTFExporter } from 'three/examples/jsm/exporters/GLTFExporter.js';
import { jetCorners, jetShapes } from '../../core/jets';
import { bareName } from '../../core/mounts';
import { arrowM, share, thickM, type DrawnFan, type Scene } from '../../core/scene';
import { length, minus, type Point } from '../../core/space';
import { CENTRE_M, HALF_M } from '../../core/things';
import { geometry, vector } from './shapes';

/** Colours of the file: it has no theme. */
const PAINT = {
    limb: '#d9d2c3',
    fan: '#3a3833',
    thrust: '#1f4e6b',
    pack: '#8c8473',
    part: '#c9c2b2',
    mount: '#6b6455',
    centre: '#23211d',
    jet: '#1f4e6b',
    strike: '#a3261b',
} as const;

const UP = new Vector3(0, 1, 0);
const AHEAD = new Vector3(0, 0, 1);

class Model {
    private readonly paints = new Map<keyof typeof PAINT, MeshStandardMaterial>();
    private readonly bodies = new Map<string, BufferGeometry>();

    constructor(private readonly scene: Scene) {}

    /** One node a part, by its name; metres, up along y and forward along z as the format wants it. */
    tree(name: string): Group {
        const all = new Group();
        all.name = name;
        all.rotation.y = Math.PI; // here forward is against z
        const { scene } = this;
        all.add(
            ...group(
                'fans',
                scene.fans.map(fan => this.fan(fan)),
            ),
            ...group(
                'wearer',
                scene.limbs.map(limb => this.limb(limb.name, limb.from, limb.to)),
            ),
            ...group(
                'parts',
                scene.parts.map(({ id, kind, at }) =>
                    this.at(
                        bareName(id),
                        this.body(kind, () => partBody(kind)),
                        kind,
                        at,
                    ),
                ),
            ),
            ...group('jets', this.jets()),
            ...group(
                'strikes',
                scene.strikes.map(({ fan, struck, at }) =>
                    this.at(
                        `${fan} strikes ${struck}`,
                        this.body('strike', () => new OctahedronGeometry(0.02)),
                        'strike',
                        at,
                    ),
                ),
            ),
        );
        if (scene.centre) {
            const ball = this.body('centre', () => new SphereGeometry(CENTRE_M, 16, 12));
            all.add(this.at('centre of mass', ball, 'centre', scene.centre));
        }
        return all;
    }

    private paint(of: keyof typeof PAINT): MeshStandardMaterial {
        const known = this.paints.get(of);
        if (known) return known;
        const jet = of === 'jet';
        const made = new MeshStandardMaterial({
            name: of,
            color: PAINT[of],
            roughness: 0.8,
            metalness: 0,
            side: jet ? DoubleSide : FrontSide,
            transparent: jet,
            opacity: jet ? 0.2 : 1,
        });
        this.paints.set(of, made);
        return made;
    }

    private body(name: string, make: () => BufferGeometry): BufferGeometry {
        const known = this.bodies.get(name);
        if (known) return known;
        const made = make();
        this.bodies.set(name, made);
        return made;
    }

    private at(name: string, body: BufferGeometry, paint: keyof typeof PAINT, at: Point): Mesh {
        const mesh = new Mesh(body, this.paint(paint));
        mesh.name = name;
        mesh.position.copy(vector(at));
        return mesh;
    }

    /** Its rim at the rotor's size, its hub, and an arrow as long as its share of thrust. */
    private fan(fan: DrawnFan): Group {
        const all = new Group();
        all.name = fan.id;
        all.position.copy(vector(fan.at));
        const push = vector(fan.push).normalize();
        all.quaternion.setFromUnitVectors(UP, push);
        const radius = fan.tipM / 2;
        const rim = new Mesh(
            this.body(`rim ${fan.tipM}`, () => new TorusGeometry(radius, 0.06 * radius, 8, 32)),
            this.paint('fan'),
        );
        rim.name = `${fan.id} rim`;
        rim.quaternion.setFromUnitVectors(AHEAD, UP);
        const hub = new Mesh(
            this.body(
                `hub ${fan.tipM}`,
                () => new CylinderGeometry(0.25 * radius, 0.25 * radius, 0.2 * radius, 16),
            ),
            this.paint('fan'),
        );
        hub.name = `${fan.id} hub, ${fan.rightHand ? 'right-hand' : 'left-hand'}`;
        all.add(rim, hub);
        const long = arrowM(this.scene) * share(this.scene, fan);
        if (long > 0) {
            const arrow = new Mesh(
                this.body('arrow', () => new ConeGeometry(0.012, 1, 12)),
                this.paint('thrust'),
            );
            arrow.name = `${fan.id} thrust${fan.thrust ? ` ${fan.thrust.shown}` : ''}`;
            arrow.position.y = long / 2;
            arrow.scale.y = long;
            all.add(arrow);
        }
        return all;
    }

    private limb(name: string, from: Point, to: Point): Mesh {
        const long = Math.max(1e-3, length(minus(to, from)));
        const [a, b] = [vector(from), vector(to)];
        const mesh = new Mesh(
            new CapsuleGeometry(thickM(name) / 2, long, 4, 12),
            this.paint('limb'),
        );
        mesh.name = name;
        mesh.position.copy(a).add(b).multiplyScalar(0.5);
        const way = b.sub(a);
        if (way.lengthSq() > 0) {
            mesh.quaternion.copy(new Quaternion().setFromUnitVectors(UP, way.normalize()));
        }
        return mesh;
    }

    private jets(): Mesh[] {
        return jetShapes(this.scene).map(shape => {
            const body = geometry(jetCorners(shape));
            body.computeVertexNormals();
            const mesh = new Mesh(body, this.paint('jet'));
            mesh.name = `${shape.fan} jet`;
            return mesh;
        });
    }
}

function partBody(kind: 'pack' | 'part' | 'mount'): BufferGeometry {
    if (kind === 'mount') return new OctahedronGeometry(HALF_M.mount);
    const edge = 2 * HALF_M[kind];
    return new BoxGeometry(edge, edge, edge);
}

function group(name: string, nodes: readonly Object3D[]): Group[] {
    if (nodes.length === 0) return [];
    const all = new Group();
    all.name = name;
    all.add(...nodes);
    return [all];
}

/** A rig as one binary glTF file: a node a part, named as in the rig file, in metres. */
export async function glbOf(scene: Scene, name: string): Promise<Blob> {
    const made = await new GLTFExporter().parseAsync(new Model(scene).tree(name), {
        binary: true,
        trs: true,
    });
    if (!(made instanceof ArrayBuffer)) {
        throw new Error('the exporter made no binary file');
    }
    return new Blob([made], { type: 'model/gltf-binary' });
}
