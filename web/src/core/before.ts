import type { Scene } from './scene';
import { length, minus, type Point } from './space';

/** Near enough to stand in the same place, m. */
const SAME_M = 1e-6;

/** Which things stand elsewhere now, came or went, in a sentence. */
export function movedWords(was: Scene, is: Scene): string {
    const before = placesOf(was);
    const after = placesOf(is);
    const moved = [...after].filter(([id, at]) => {
        const old = before.get(id);
        return old !== undefined && length(minus(at, old)) > SAME_M;
    });
    const told = [
        ['moved', moved.map(([id]) => id)],
        ['new', [...after.keys()].filter(id => !before.has(id))],
        ['gone', [...before.keys()].filter(id => !after.has(id))],
    ] as const;
    const words = told
        .filter(([, ids]) => ids.length > 0)
        .map(([word, ids]) => `${word}: ${ids.join(', ')}`);
    return words.length === 0 ? 'Nothing stands elsewhere' : words.join('; ');
}

function placesOf(scene: Scene): Map<string, Point> {
    return new Map([...scene.fans, ...scene.parts].map(({ id, at }) => [id, at]));
}
