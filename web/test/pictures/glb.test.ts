import { validateBytes } from 'gltf-validator';
import { expect, test } from 'vitest';
import { sceneOf, type Scene } from '../../src/core/scene';
import { point, type Point } from '../../src/core/space';
import type { Drawing } from '../../src/core/wire';
import { glbOf } from '../../src/pictures/solid/glb';
import bare from './data/sandpiper.json';
import { Random, randomScene } from './random';
import { withTexts } from './texts';

interface Node {
    name?: string;
    translation?: [number, number, number];
    rotation?: [number, number, number, number];
    children?: number[];
}
interface File {
    nodes: Node[];
    scenes: { nodes: number[] }[];
    asset: { version: string };
}

/** The JSON of a binary file, read by its layout: 12 bytes of head, then length, kind and bytes of each piece. */
function jsonOf(bytes: Uint8Array): File {
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    expect(view.getUint32(0, true)).toBe(0x46546c67);
    expect(view.getUint32(16, true)).toBe(0x4e4f534a);
    const long = view.getUint32(12, true);
    return JSON.parse(new TextDecoder().decode(bytes.subarray(20, 20 + long))) as File;
}

/** Turned by a quaternion x, y, z, w, written out. */
function turned(
    [x, y, z, w]: readonly [number, number, number, number],
    [a, b, c]: readonly [number, number, number],
): [number, number, number] {
    return [
        (1 - 2 * (y * y + z * z)) * a + 2 * (x * y - w * z) * b + 2 * (x * z + w * y) * c,
        2 * (x * y + w * z) * a + (1 - 2 * (x * x + z * z)) * b + 2 * (y * z - w * x) * c,
        2 * (x * z - w * y) * a + 2 * (y * z + w * x) * b + (1 - 2 * (x * x + y * y)) * c,
    ];
}

/** Where a node stands in the axes of the format: +Y up, +Z forward, −X right; m. */
function placeOf(file: File, name: string): Point | undefined {
    type Spot = [number, number, number];
    const walk = (
        at: number,
        turn: readonly [number, number, number, number],
    ): Spot | undefined => {
        const node = file.nodes[at];
        if (node?.name === name) {
            return turned(turn, node.translation ?? [0, 0, 0]);
        }
        for (const child of node?.children ?? []) {
            const found = walk(child, turn);
            if (found) return found;
        }
        return undefined;
    };
    const root = file.scenes[0]?.nodes[0] ?? 0;
    const found = walk(root, file.nodes[root]?.rotation ?? [0, 0, 0, 1]);
    return found && point(found[2], -found[0], found[1]);
}

function example(): Scene {
    const drawing = withTexts(bare.balance).sections.find(
        (each): each is Drawing => each.kind === 'drawing',
    );
    if (!drawing) throw new Error('no drawing');
    return sceneOf(drawing);
}

function withJets(scene: Scene, random: Random): Scene {
    return {
        ...scene,
        jets: scene.fans.map(fan => ({
            fan: fan.id,
            exitM: 0.9 * fan.tipM,
            coreM: 0.5,
            coreWideM: 0.1,
            longM: random.between(0.2, 1.2),
            wideM: 0.2,
        })),
        strikes: [
            {
                fan: scene.fans[0]?.id ?? '',
                struck: 'trunk',
                at: random.point(1),
                distance: undefined,
                share: undefined,
            },
        ],
    };
}

const SCENES: readonly (readonly [string, Scene])[] = [
    ['sandpiper', example()],
    ...[1, 2, 3, 4, 5, 6].map(seed => {
        const random = new Random(seed);
        return [`random ${seed}`, withJets(randomScene(random), random)] as const;
    }),
];

test.each(SCENES)('%s: the public validator finds nothing wrong', async (_, scene) => {
    const bytes = new Uint8Array(await (await glbOf(scene, 'a rig')).arrayBuffer());
    const report = await validateBytes(bytes, { format: 'glb', maxIssues: 0 });
    const { numErrors, numWarnings, messages } = report.issues;
    expect({ numErrors, numWarnings, messages: numErrors + numWarnings > 0 && messages }).toEqual({
        numErrors: 0,
        numWarnings: 0,
        messages: false,
    });
    expect(report.info.version).toBe('2.0');
});

test.each(SCENES)('%s: every fan and part is there by its name, in metres', async (_, scene) => {
    const bytes = new Uint8Array(await (await glbOf(scene, 'a rig')).arrayBuffer());
    const file = jsonOf(bytes);
    const first = new Set<string>();
    for (const { id, at } of scene.fans) {
        if (first.has(id)) continue; // of two of a name the first is met
        first.add(id);
        const found = placeOf(file, id);
        expect(found, id).toBeDefined();
        expect(found?.forward).toBeCloseTo(at.forward, 6);
        expect(found?.right).toBeCloseTo(at.right, 6);
        expect(found?.up).toBeCloseTo(at.up, 6);
    }
    expect(first.size).toBeGreaterThan(0);
    for (const limb of scene.limbs) {
        expect(placeOf(file, limb.name)).toBeDefined();
    }
});

test('a file with a byte amiss is found out', async () => {
    const bytes = new Uint8Array(await (await glbOf(example(), 'a rig')).arrayBuffer());
    bytes[8] = (bytes[8] ?? 0) ^ 1; // its length
    const report = await validateBytes(bytes, { format: 'glb' });
    expect(report.issues.numErrors).toBeGreaterThan(0);
});
