import { validateBytes } from 'gltf-validator';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** The bytes of the file that `press` makes the browser keep. */
export async function saved(page: Page, press: () => Promise<void>): Promise<Buffer> {
    const coming = page.waitForEvent('download');
    await press();
    const parts: Buffer[] = [];
    for await (const part of await (await coming).createReadStream()) {
        parts.push(part as Buffer);
    }
    return Buffer.concat(parts);
}

interface Node {
    name?: string;
    translation?: [number, number, number];
}

/** A binary glTF file that the format's public validator finds nothing wrong with; where its nodes stand. */
export async function soundModel(bytes: Buffer): Promise<Map<string, readonly number[]>> {
    const { issues } = await validateBytes(new Uint8Array(bytes), { format: 'glb' });
    expect([issues.numErrors, issues.numWarnings]).toEqual([0, 0]);
    // 12 bytes of head, then length and kind of the first piece, which is the JSON.
    const json = bytes.subarray(20, 20 + bytes.readUInt32LE(12)).toString('utf8');
    const { nodes } = JSON.parse(json) as { nodes: Node[] };
    return new Map(nodes.map(({ name, translation }) => [name ?? '', translation ?? [0, 0, 0]]));
}
