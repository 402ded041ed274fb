import {
    BoxGeometry,
    CircleGeometry,
    CylinderGeometry,
    Group,
    InstancedMesh,
    Matrix4,
    Quaternion,
    SphereGeometry,
    Vector3,
    type BufferGeometry,
} from 'three';
import { dotM, wireM, type Warm } from '../../core/heatThings';
import type { Level } from '../../core/playback';
import { fanStrokes, type Ring } from '../../core/solid';
import { HALF_M } from '../../core/things';
import { inkOf, patterned } from './patterns';
import { addAll, between, strokes, vector, type Colour } from './shapes';

const AHEAD = new Vector3(0, 0, 1);
const ORDER: readonly Level[] = ['cool', 'warm', 'near', 'over'];
/** Rims of a fan at or over its limit: thick, as lines are thin everywhere. */
const THICK = [1, 1.03, 1.06, 1.09];

/** Fans, packs, runs and joints, each as warm as it is: four patterns, and thicker where hot. */
export function heat(warm: readonly Warm[], levels: readonly Level[], colour: Colour): Group {
    const all = new Group();
    for (const level of ORDER) {
        const of = warm.filter((_, k) => levels[k] === level);
        addAll(all, [...disks(of, level, colour), ...packs(of, level, colour)]);
        const wires = of.filter(each => each.kind === 'wire');
        if (wires.length > 0) {
            all.add(
                between(
                    new CylinderGeometry(1, 1, 1, 8),
                    patterned(level, colour, 1, 12),
                    wires.map(({ mark }) => [mark.from, mark.to] as const),
                    wireM(level),
                ),
            );
        }
        const dots = of.filter(each => each.kind === 'dot');
        addAll(
            all,
            many(
                new SphereGeometry(dotM(level), 12, 8),
                level,
                colour,
                3,
                dots.map(({ mark }) => new Matrix4().makeTranslation(vector(mark.from))),
            ),
        );
    }
    return all;
}

function packs(of: readonly Warm[], level: Level, colour: Colour): InstancedMesh[] {
    const edge = 2 * HALF_M.pack;
    return many(
        new BoxGeometry(edge, edge, edge),
        level,
        colour,
        3,
        of
            .filter(each => each.kind === 'pack')
            .map(({ mark }) => new Matrix4().makeTranslation(vector(mark.from))),
    );
}

function disks(of: readonly Warm[], level: Level, colour: Colour) {
    const fans = of.flatMap(each => (each.kind === 'fan' ? [each.fan] : []));
    if (fans.length === 0) return [];
    const turned = fans.map(fan => {
        const turn = new Quaternion().setFromUnitVectors(AHEAD, vector(fan.push).normalize());
        const size = fan.tipM / 2;
        return new Matrix4().compose(vector(fan.at), turn, new Vector3(size, size, size));
    });
    const rims = fans.flatMap(fan =>
        (level === 'over' ? THICK : [1]).flatMap(times => {
            const ring: Ring = { at: fan.at, push: fan.push, radius: (times * fan.tipM) / 2 };
            return fanStrokes(ring, fan.rightHand);
        }),
    );
    return [
        ...many(new CircleGeometry(0.95, 32), level, colour, 7, turned),
        strokes(rims, inkOf(level, colour)),
    ];
}

function many(
    body: BufferGeometry,
    level: Level,
    colour: Colour,
    tiles: number,
    places: readonly Matrix4[],
): InstancedMesh[] {
    if (places.length === 0) return [];
    const mesh = new InstancedMesh(body, patterned(level, colour, tiles), places.length);
    places.forEach((place, k) => {
        mesh.setMatrixAt(k, place);
    });
    return [mesh];
}
