import { named } from './cut';
import { covered } from './text';

/** What holds the focus, as seen from outside. */
export interface Held {
    /** The same number for the same element. */
    key: number;
    what: string;
    box: { x: number; y: number; width: number; height: number };
    inWindow: boolean;
    covered: boolean;
}

const keys = new Map<Element, number>();

export function held(): Held | null {
    const element = document.activeElement;
    if (element === null || element === document.body || element === document.documentElement) {
        return null;
    }
    const key = keys.get(element) ?? keys.size + 1;
    keys.set(element, key);
    const rect = element.getBoundingClientRect();
    const name = element.getAttribute('aria-label') ?? element.textContent;
    return {
        key,
        what: `${named(element)} “${name.trim().slice(0, 40)}”`,
        box: { x: rect.x, y: rect.y, width: rect.width, height: rect.height },
        inWindow:
            rect.bottom > 0 && rect.top < innerHeight && rect.right > 0 && rect.left < innerWidth,
        covered: covered(element, rect),
    };
}

/** Takes the focus away without moving it elsewhere; the next Tab goes on from there. */
export function letGo(): void {
    const element = document.activeElement;
    if (element instanceof HTMLElement || element instanceof SVGElement) {
        element.blur();
    }
}
