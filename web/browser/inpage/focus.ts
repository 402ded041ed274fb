import { named } from './cut';
import { covered, parentOf } from './text';

/** What holds the focus, as seen from outside. */
export interface Held {
    /** The same number for the same element. */
    key: number;
    what: string;
    box: { x: number; y: number; width: number; height: number };
    inWindow: boolean;
    covered: boolean;
}

function holder(): Element | null {
    let element = document.activeElement;
    while (element?.shadowRoot?.activeElement) {
        element = element.shadowRoot.activeElement;
    }
    return element === document.body || element === document.documentElement ? null : element;
}

const keys = new Map<Element, number>();

export function held(): Held | null {
    const element = holder();
    if (element === null) {
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

/** Takes the focus away; the next Tab goes to the first stop of the page. */
export function letGo(): void {
    const top = document.createElement('span');
    top.tabIndex = -1;
    document.body.prepend(top);
    top.focus();
    top.remove();
}

/** The styles that show focus: of the one that holds it, of what is in it and what is around. */
function ring(element: Element): string[] {
    const near = [...element.querySelectorAll('*')].slice(0, 40);
    for (let at: Element | null = element, i = 0; at !== null && i < 4; at = parentOf(at), i++) {
        near.push(at);
    }
    return near.map(one => {
        const style = getComputedStyle(one);
        const outlined = style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 1;
        return [
            outlined ? `${style.outlineStyle} ${style.outlineWidth} ${style.outlineColor}` : '',
            style.boxShadow,
            style.borderTopColor,
            style.borderTopWidth,
            style.stroke,
            style.strokeWidth,
        ].join('|');
    });
}

function moment(): Promise<void> {
    return new Promise(resolve => {
        setTimeout(resolve, 40);
    });
}

/** What was seen to show the focus, with the tag it had: its state is in there. */
const shows = new WeakMap<Element, string>();

/** Whether what holds the focus looks the same with and without. Seen once to show it, it is not asked again. */
export async function looksTheSame(): Promise<boolean> {
    const element = holder();
    if (!(element instanceof HTMLElement) && !(element instanceof SVGElement)) {
        return false;
    }
    const tag = (element.cloneNode(false) as Element).outerHTML;
    const same = shows.get(element) !== tag && (await sameWithout(element));
    if (!same) {
        shows.set(element, tag);
    }
    return same;
}

async function sameWithout(element: HTMLElement | SVGElement): Promise<boolean> {
    const byKey = element.matches(':focus-visible');
    const back = () => {
        element.focus({ preventScroll: true, focusVisible: byKey });
    };
    const same = (one: string[], other: string[]) => one.every((look, i) => look === other[i]);
    const now = ring(element);
    element.blur();
    const without = ring(element);
    back();
    if (!same(now, without)) {
        return false;
    }
    // Some show it by a script, a moment later.
    await moment();
    const later = ring(element);
    element.blur();
    await moment();
    const left = ring(element);
    back();
    return same(later, left);
}
