import {
    CircleGeometry,
    DoubleSide,
    Group,
    InstancedMesh,
    Matrix4,
    MeshBasicMaterial,
    Quaternion,
    Vector3,
} from 'three';
import { useMemo } from 'preact/hooks';
import { survivors, type CaseMark } from '../../core/faults';
import type { DrawnFan, Scene } from '../../core/scene';
import { across, plus, type Point } from '../../core/space';
import { HALF_M, thingAt, thingsOf } from '../../core/things';
import type { AnswerDocument } from '../../core/wire';
import { caseCorners } from '../CaseRig';
import { groupNames, type Exhibit, type Overlay } from './exhibit';
import { PointedView } from './PointedView';
import { fans, limbs } from './rig';
import { extentOf, ground, strokes, vector, type Colour } from './shapes';

const NAMED = 4;
const AHEAD = new Vector3(0, 0, 1);
/** Lost parts are crossed a little beyond their rim. */
const CROSSED = 1.25;

interface CaseSpaceProps {
    words: string;
    marks: readonly CaseMark[];
    scene: Scene;
    tell: (si: number) => string;
    title: string;
    fields: AnswerDocument['fields'];
    selected: string | undefined;
    onShow: (part: string) => void;
}

/** A failure in space: what is lost is crossed, what is left filled by its share. */
export default function CaseSpace(props: CaseSpaceProps) {
    const { words, title, marks, scene, tell, fields, selected, onShow } = props;
    const exhibit = useMemo<Exhibit>(() => {
        const extent = extentOf(caseCorners(scene, marks));
        const still = { ...scene, fans: scene.fans.map(fan => ({ ...fan, thrustN: 0 })) };
        return {
            rig: colour => {
                const all = new Group();
                all.add(limbs(scene, colour), fans(still, colour));
                return all;
            },
            world: colour => ground(extent, colour),
            extent,
            things: [
                ...marks.map(mark => {
                    const fan = fanOf(mark, scene);
                    return thingAt(mark.part, mark.kind, mark.at, fan ? fan.tipM / 2 : HALF_M.pack);
                }),
                ...thingsOf(scene).filter(thing => thing.what === 'limb'),
            ],
            names: [],
        };
    }, [marks, scene]);
    const overlay = useMemo<Overlay>(() => {
        const lost = marks.filter(mark => mark.lost);
        return {
            build: colour => {
                const all = new Group();
                all.add(
                    shares(marks, scene, colour),
                    strokes(
                        lost.flatMap(mark => cross(mark, fanOf(mark, scene))),
                        colour('--unmet'),
                    ),
                );
                return all;
            },
            names: [
                ...lost
                    .slice(0, NAMED)
                    .map(mark => ({ words: `${mark.part} lost`, at: [mark.at] })),
                ...survivors(marks)
                    .slice(0, NAMED)
                    .map(mark => ({ words: tell(mark.value), at: [mark.at] })),
                ...groupNames(scene),
            ],
        };
    }, [marks, scene, tell]);
    return (
        <PointedView
            words={words}
            title={`${title}, in 3D`}
            exhibit={exhibit}
            overlay={overlay}
            fields={fields}
            selected={selected}
            onShow={onShow}
        />
    );
}

function fanOf(mark: CaseMark, scene: Scene): DrawnFan | undefined {
    return mark.kind === 'fan' ? scene.fans.find(fan => fan.id === mark.part) : undefined;
}

/** A disk in each fan that is left, its area its share of the greatest. */
function shares(marks: readonly CaseMark[], scene: Scene, colour: Colour): InstancedMesh {
    const most = Math.max(1, ...marks.map(mark => mark.value));
    const left = marks.flatMap(mark => {
        const fan = fanOf(mark, scene);
        return fan && !mark.lost && mark.value > 0
            ? [{ fan, size: (fan.tipM / 2) * Math.sqrt(Math.min(1, mark.value / most)) }]
            : [];
    });
    const mesh = new InstancedMesh(
        new CircleGeometry(1, 32),
        new MeshBasicMaterial({
            color: colour('--accent'),
            side: DoubleSide,
            transparent: true,
            opacity: 0.75,
        }),
        left.length,
    );
    left.forEach(({ fan, size }, k) => {
        const turn = new Quaternion().setFromUnitVectors(AHEAD, vector(fan.push).normalize());
        mesh.setMatrixAt(
            k,
            new Matrix4().compose(vector(fan.at), turn, new Vector3(size, size, size)),
        );
    });
    return mesh;
}

/** A cross and a broken ring, in the plane of a fan; about a pack a cross in space. */
function cross(mark: CaseMark, fan: DrawnFan | undefined): Point[] {
    const push = fan?.push ?? { forward: 0, right: 0, up: 1 };
    const radius = CROSSED * (fan ? fan.tipM / 2 : 2 * HALF_M.pack);
    const [first, second] = across(push);
    const on = (angle: number, r = radius): Point =>
        plus(plus(mark.at, first, r * Math.cos(angle)), second, r * Math.sin(angle));
    const ends: Point[] = [];
    for (const times of [1, 1.05, 1.1]) {
        for (let k = 0; k < 32; k++) {
            if (k % 4 !== 3) {
                ends.push(
                    on((2 * Math.PI * k) / 32, times * radius),
                    on((2 * Math.PI * (k + 1)) / 32, times * radius),
                );
            }
        }
    }
    for (const off of [-0.05, 0, 0.05]) {
        for (const angle of [Math.PI / 4, (3 * Math.PI) / 4]) {
            ends.push(on(angle + off), on(angle + off + Math.PI));
        }
    }
    return ends;
}
