import { expect, test } from 'vitest';
import { heldScene, holdOf } from '../../src/core/hold';
import { dot, length, minus, point, type Point } from '../../src/core/space';
import type { Elevation, Table, Value } from '../../src/core/wire';
import { forSeeds, must, randomScene } from './random';

function amount(field: string, si: number): Value {
    return { field, kind: 'amount', si, shown: String(si), shownBand: '' };
}
function words(field: string, text: string): Value {
    return { field, kind: 'words', text, shown: text, shownBand: '' };
}

const COLUMNS = [
    'hold-shape',
    'hold-label',
    'hold-forward',
    'hold-right',
    'hold-up',
    'hold-end-forward',
    'hold-end-right',
    'hold-end-up',
];

function row(shape: string, label: string, from: Point, to: Point): Value[] {
    const numbers = [from.forward, from.right, from.up, to.forward, to.right, to.up];
    return [
        words('hold-shape', shape),
        words('hold-label', label),
        ...numbers.map((si, k) => amount(COLUMNS[k + 2] ?? '', si)),
    ];
}

function elevation(rows: Value[][], person = false): Elevation {
    const space: Table = { kind: 'table', id: 's', title: 'S', columns: COLUMNS, rows };
    return {
        kind: 'elevation',
        id: 'e',
        title: 'E',
        x: { field: 'across', unit: 'm' },
        y: { field: 'up', unit: 'm' },
        shapes: person ? [{ shape: 'person', label: '', outline: [[0, 0]], closed: false }] : [],
        loads: [
            { label: 'pull', at: [0.1, 2], across: 30, up: 40, value: amount('hold-force', 50) },
            { label: 'weight', at: [0, 1], across: 0, up: -25, value: amount('hold-force', 25) },
        ],
        space: [space],
    };
}

const O = point(0, 0, 1.2);

/** Bent over the front: its up is forward, its forward is down. */
const BENT = [
    row('rig', 'its forward', O, point(0, 0, 0.2)),
    row('rig', 'its up', O, point(1, 0, 1.2)),
    row('stand', 'stand', point(-0.5, -0.7, 0), point(0.5, 0.7, 0.08)),
    row('stand', 'post', point(0, 0, 0.08), point(0, 0, 1.2)),
    row('anchor', 'anchor', point(0, 0, 4), point(0, 0, 4)),
    row('keep out', 'nobody within', point(0, 0, 0), point(10, 0, 0)),
];

test('shapes are boxes, lines, marks and circles', () => {
    const hold = holdOf(elevation(BENT));
    expect(hold?.shapes.map(shape => shape.form)).toEqual(['box', 'line', 'point', 'circle']);
    expect(hold?.pulls[0]?.along).toEqual(point(0.6, 0, 0.8));
    expect(hold?.pulls[1]?.share).toBe(0.5);
    expect(holdOf({ ...elevation([]), space: [] })).toBeUndefined();
});

test('a rig bent over the front keeps its right hand, and its shape', () => {
    const hold = holdOf(elevation(BENT));
    if (!hold) throw new Error('held by nothing');
    forSeeds(60, random => {
        const scene = randomScene(random);
        const held = heldScene(scene, hold);
        scene.fans.forEach((fan, k) => {
            const is = held.fans[k]?.at ?? O;
            // Written out: forward goes down, up goes forward, right stays.
            const wanted = point(fan.at.up, fan.at.right, 1.2 - fan.at.forward);
            must(length(minus(is, wanted)) < 1e-12, `${fan.id} stands elsewhere`);
            const push = held.fans[k]?.push ?? O;
            must(Math.abs(length(push) - length(fan.push)) < 1e-12, 'no longer');
            const other = held.fans[0];
            const first = scene.fans[0];
            if (other && first) {
                const is = dot(minus(held.fans[k]?.at ?? O, other.at), other.push);
                must(Math.abs(is - dot(minus(fan.at, first.at), first.push)) < 1e-12, 'as it was');
            }
        });
        must(held.limbs.length === 0, 'nobody is on a stand that carries nobody');
    });
});

test('upright it only goes up, and a wearer who hangs is drawn', () => {
    const upright = [
        row('rig', 'its forward', O, point(1, 0, 1.2)),
        row('rig', 'its up', O, point(0, 0, 2.2)),
    ];
    const hold = holdOf(elevation(upright, true));
    if (!hold) throw new Error('held by nothing');
    forSeeds(20, random => {
        const scene = randomScene(random);
        const held = heldScene(scene, hold);
        scene.fans.forEach((fan, k) => {
            const wanted = { ...fan.at, up: fan.at.up + 1.2 };
            must(length(minus(held.fans[k]?.at ?? O, wanted)) < 1e-12, fan.id);
        });
        must(held.limbs.length === scene.limbs.length, 'with limbs');
    });
});
