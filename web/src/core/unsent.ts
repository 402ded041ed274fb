import type { Change } from './wire';

/** What is to be done to the document, in order. */
export type Order =
    | { kind: 'change'; changes: Change[]; label: string; sentOn?: string }
    | { kind: 'undo' | 'redo'; sentOn?: string }
    | { kind: 'save' }
    | { kind: 'resolve'; take: 'mine' | 'disk' };

/** What the server has not acknowledged yet: enough to send it again from another page. */
export interface Unsent {
    rig: string;
    /** The text that `text` was made from. */
    base: string;
    text: string;
    orders: Order[];
}

/** Outlives the page, as far as the browser allows. */
export interface Keep {
    put(unsent: Unsent): void;
    drop(rig: string): void;
    get(rig: string): Unsent | undefined;
}

/** Of what was kept, only what has the shape: the store is shared with whatever wrote there before. */
export function unsentFrom(json: string): Unsent | undefined {
    let read: unknown;
    try {
        read = JSON.parse(json);
    } catch {
        return undefined;
    }
    if (typeof read !== 'object' || read === null) return undefined;
    const { rig, base, text, orders } = read as Record<string, unknown>;
    if (typeof rig !== 'string' || typeof base !== 'string' || typeof text !== 'string') {
        return undefined;
    }
    return { rig, base, text, orders: Array.isArray(orders) ? (orders as Order[]) : [] };
}
