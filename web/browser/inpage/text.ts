/** A corner of the page in CSS pixels of the window. */
export interface Box {
    left: number;
    top: number;
    right: number;
    bottom: number;
}

/** A piece of text as it stands on the screen. */
export interface Piece {
    text: string;
    element: Element;
    /** Where its glyphs lie, uncut. */
    whole: Box[];
    /** What of that is inside every ancestor that cuts. */
    seen: Box[];
    /** Corners of a text in a picture, which may be turned. */
    quad?: DOMPoint[];
}

export function area(box: Box): number {
    return Math.max(0, box.right - box.left) * Math.max(0, box.bottom - box.top);
}

export function meet(a: Box, b: Box): Box {
    return {
        left: Math.max(a.left, b.left),
        top: Math.max(a.top, b.top),
        right: Math.min(a.right, b.right),
        bottom: Math.min(a.bottom, b.bottom),
    };
}

function boxOf(rect: DOMRect): Box {
    return { left: rect.left, top: rect.top, right: rect.right, bottom: rect.bottom };
}

/** The element around, through the door of a shadow. */
export function parentOf(element: Element): Element | null {
    const root = element.getRootNode();
    return element.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
}

/** Whether `inner` is `outer` or in it, shadows included. */
export function holds(outer: Element, inner: Element): boolean {
    for (let at: Element | null = inner; at !== null; at = parentOf(at)) {
        if (at === outer) {
            return true;
        }
    }
    return false;
}

/** For readers of the page by ear only: clipped to a pixel on purpose. */
export function byEarOnly(element: Element): boolean {
    for (let at: Element | null = element; at !== null; at = parentOf(at)) {
        const style = getComputedStyle(at);
        const small = at.clientWidth <= 1 && at.clientHeight <= 1;
        if (style.position === 'absolute' && small && style.overflow !== 'visible') {
            return true;
        }
        if (
            style.clipPath === 'inset(50%)' ||
            style.getPropertyValue('clip') === 'rect(0px, 0px, 0px, 0px)'
        ) {
            return true;
        }
    }
    return false;
}

function shown(element: Element): boolean {
    return element.checkVisibility({
        checkOpacity: true,
        checkVisibilityCSS: true,
        contentVisibilityAuto: true,
    });
}

/** The boxes that cut what is in `element`, each with its element; the window is the last. */
export function cutters(element: Element): { by: Element; box: Box; x: boolean; y: boolean }[] {
    const found: { by: Element; box: Box; x: boolean; y: boolean }[] = [];
    let position = 'static'; // of what was last met on the way out; glyphs lie in their element's flow
    for (let at: Element | null = element; at !== null; at = parentOf(at)) {
        const style = getComputedStyle(at);
        if (position === 'fixed') {
            break;
        }
        if (at instanceof SVGElement && !(at instanceof SVGSVGElement)) {
            continue;
        }
        const x = style.overflowX !== 'visible';
        const y = style.overflowY !== 'visible';
        const holds = position !== 'absolute' || style.position !== 'static';
        if (holds && (x || y) && at !== document.documentElement && at !== document.body) {
            const rect = at.getBoundingClientRect();
            found.push({ by: at, box: boxOf(rect), x, y });
        }
        if (holds) {
            position = style.position;
        }
    }
    return found;
}

function seenOf(whole: Box[], element: Element): Box[] {
    const far = 1e7;
    const cuts = cutters(element);
    return whole
        .map(box =>
            cuts.reduce(
                (left, cut) =>
                    meet(left, {
                        left: cut.x ? cut.box.left : -far,
                        right: cut.x ? cut.box.right : far,
                        top: cut.y ? cut.box.top : -far,
                        bottom: cut.y ? cut.box.bottom : far,
                    }),
                meet(box, { left: 0, top: 0, right: innerWidth, bottom: innerHeight }),
            ),
        )
        .filter(box => box.right - box.left > 1 && box.bottom - box.top > 1);
}

function inPicture(element: Element): SVGTextElement | null {
    const text = element.closest('text');
    return text instanceof SVGTextElement ? text : null;
}

function pieceOfPicture(text: SVGTextElement): Piece | null {
    const matrix = text.getScreenCTM();
    if (matrix === null) {
        return null;
    }
    const box = text.getBBox();
    const quad = [
        [box.x, box.y],
        [box.x + box.width, box.y],
        [box.x + box.width, box.y + box.height],
        [box.x, box.y + box.height],
    ].map(([x, y]) => new DOMPoint(x, y).matrixTransform(matrix));
    const xs = quad.map(corner => corner.x);
    const ys = quad.map(corner => corner.y);
    const whole = [
        {
            left: Math.min(...xs),
            top: Math.min(...ys),
            right: Math.max(...xs),
            bottom: Math.max(...ys),
        },
    ];
    return { text: text.textContent, element: text, whole, seen: seenOf(whole, text), quad };
}

/** Every text node, also in the shadows. */
function* textNodes(root: Node): Generator<Node> {
    const walk = document.createTreeWalker(root, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
    for (let node = walk.nextNode(); node !== null; node = walk.nextNode()) {
        if (!(node instanceof Element)) {
            yield node;
        } else if (node.shadowRoot !== null) {
            yield* textNodes(node.shadowRoot);
        }
    }
}

/** Every text that is on the page for the eye, in a picture or not, also where it is scrolled away. */
export function pieces(): Piece[] {
    const found: Piece[] = [];
    const pictures = new Set<SVGTextElement>();
    for (const node of textNodes(document.body)) {
        const element = node.parentElement;
        if (element === null || (node.textContent ?? '').trim() === '' || !shown(element)) {
            continue;
        }
        if (element.closest('script, style, noscript, option, title, desc, [hidden]') !== null) {
            continue;
        }
        const picture = inPicture(element);
        if (picture !== null) {
            pictures.add(picture);
            continue;
        }
        if (byEarOnly(element)) {
            continue;
        }
        const range = document.createRange();
        range.selectNodeContents(node);
        const whole = [...range.getClientRects()].map(boxOf).filter(box => area(box) > 0);
        if (whole.length > 0) {
            const text = (node.textContent ?? '').trim();
            found.push({ text, element, whole, seen: seenOf(whole, element) });
        }
    }
    for (const text of pictures) {
        const piece = pieceOfPicture(text);
        if (
            piece !== null &&
            area(piece.whole[0] ?? { left: 0, top: 0, right: 0, bottom: 0 }) > 0
        ) {
            found.push(piece);
        }
    }
    return found;
}

function opaque(element: Element): boolean {
    if (element instanceof SVGElement) {
        return false;
    }
    const colour = getComputedStyle(element).backgroundColor;
    return !/rgba\(.*, 0(\.\d+)?\)$|transparent|\/ 0(\.\d+)?\)$/.test(colour);
}

/** Whether something that is not see-through lies over the middle of `box`. */
export function covered(element: Element, box: Box): boolean {
    const x = (box.left + box.right) / 2;
    const y = (box.top + box.bottom) / 2;
    const root = element.getRootNode();
    const stack = root instanceof ShadowRoot ? root : document;
    for (const over of stack.elementsFromPoint(x, y)) {
        if (holds(over, element) || holds(element, over)) {
            return false;
        }
        if (opaque(over)) {
            return true;
        }
    }
    return false;
}
