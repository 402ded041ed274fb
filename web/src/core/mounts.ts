import type { Part } from './wire';

// A mount may be named like a part, so drawings and moves call it `mounts/NAME`; the document calls it NAME.

const BEFORE = 'mounts/';

/** The parts of a document by the names of the drawing. */
export function drawnParts(parts: readonly Part[]): Part[] {
    return parts.map(part =>
        part.kind === 'mount'
            ? {
                  ...part,
                  id: BEFORE + part.id,
                  ...(part.twin !== undefined && { twin: BEFORE + part.twin }),
              }
            : part,
    );
}

/** The name in the drawing of what the document calls so. */
export function drawnName(parts: readonly Part[], id: string): string {
    const named = parts.filter(part => part.id === id);
    const mount = named.length > 0 && named.every(part => part.kind === 'mount');
    return mount ? BEFORE + id : id;
}

/** The name in the document of what the drawing calls so. */
export function bareName(id: string): string {
    return id.startsWith(BEFORE) ? id.slice(BEFORE.length) : id;
}
