import { InstancedMesh, Line, Mesh } from 'three';
import { expect, test } from 'vitest';
import type { Scene } from '../../src/core/scene';
import { rigExhibit } from '../../src/pictures/solid/exhibit';
import { Random, randomScene } from './random';

/** As many things as are drawn one by one: each costs a call to the graphics card. */
function drawn(scene: Scene): number {
    let count = 0;
    rigExhibit(scene, { jets: true, lines: true })
        .rig(() => '#000000')
        .traverse(each => {
            count += each instanceof Mesh || each instanceof Line ? 1 : 0;
            if (each instanceof InstancedMesh) expect(each.count).toBeLessThanOrEqual(200);
        });
    return count;
}

function withFans(count: number): Scene {
    const random = new Random(96);
    const scene = randomScene(random);
    const one = scene.fans[0];
    if (!one) throw new Error('no fan');
    const fans = Array.from({ length: count }, (_, k) => ({
        ...one,
        id: `fan.${k}`,
        at: random.point(1),
    }));
    const jets = fans.map(fan => ({
        fan: fan.id,
        exitM: 0.1,
        coreM: 0.6,
        coreWideM: 0.12,
        longM: 1.2,
        wideM: 0.24,
    }));
    return { ...scene, fans, jets };
}

test('96 fans cost as many calls as four', () => {
    expect(drawn(withFans(96))).toBe(drawn(withFans(4)));
    expect(drawn(withFans(96))).toBeLessThan(40);
});
