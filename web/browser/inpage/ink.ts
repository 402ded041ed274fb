import { covered, parentOf, pieces, type Box } from './text';

/** A text in sight, with the colour that it says it is drawn in. */
export interface Ink {
    text: string;
    boxes: Box[];
    /** Red, green, blue and how opaque, 0 to 255 and 0 to 1, opacity of all ancestors included. */
    colour: [number, number, number, number];
}

let brush: CanvasRenderingContext2D | null = null;

/** Any colour that a style may name, as the browser itself paints it. */
function read(colour: string): [number, number, number, number] {
    if (brush === null) {
        const canvas = document.createElement('canvas');
        canvas.width = 1;
        canvas.height = 1;
        brush = canvas.getContext('2d', { willReadFrequently: true });
    }
    if (brush === null) {
        throw new Error('no canvas to read a colour with');
    }
    brush.clearRect(0, 0, 1, 1);
    brush.fillStyle = colour;
    brush.fillRect(0, 0, 1, 1);
    const [r = 0, g = 0, b = 0, a = 0] = brush.getImageData(0, 0, 1, 1).data;
    return [r, g, b, a / 255];
}

function opacity(element: Element): number {
    let product = 1;
    for (let at: Element | null = element; at !== null; at = parentOf(at)) {
        product *= Number(getComputedStyle(at).opacity);
    }
    return product;
}

/** What may be faint: it cannot be used now, and says so (WCAG 2.2, 1.4.3, "incidental"). */
function atRest(element: Element): boolean {
    return element.closest(':disabled, [aria-disabled="true"]') !== null;
}

export function inks(): Ink[] {
    const found: Ink[] = [];
    for (const piece of pieces()) {
        // Of a line that the edge of the window cuts there may be nothing but the room above its letters.
        const line = Math.min(...piece.whole.map(box => box.bottom - box.top));
        const boxes = piece.seen.filter(
            box => box.bottom - box.top > 0.8 * line && !covered(piece.element, box),
        );
        if (boxes.length === 0 || atRest(piece.element)) {
            continue;
        }
        const style = getComputedStyle(piece.element);
        const inPicture = piece.quad !== undefined;
        const [r, g, b, a] = read(inPicture ? fillOf(piece.element) : style.color);
        const fillOpacity = inPicture ? Number(style.fillOpacity) : 1;
        found.push({
            text: piece.text,
            boxes,
            colour: [r, g, b, a * fillOpacity * opacity(piece.element)],
        });
    }
    return found;
}

function fillOf(text: Element): string {
    const holder = text.querySelector('tspan') ?? text;
    return getComputedStyle(holder).fill;
}

let hidden: CSSStyleSheet | null = null;

/** Takes every glyph away and leaves what lies under it, a halo included; or puts them back. */
export function hideGlyphs(hide: boolean): void {
    if (hidden === null) {
        hidden = new CSSStyleSheet();
        hidden.replaceSync(
            '*, *::before, *::after { -webkit-text-fill-color: transparent !important;' +
                ' text-decoration-color: transparent !important; transition: none !important }' +
                ' svg text, svg tspan { fill: transparent !important; transition: none !important }',
        );
    }
    for (const root of roots(document)) {
        const others = root.adoptedStyleSheets.filter(sheet => sheet !== hidden);
        root.adoptedStyleSheets = hide ? [...others, hidden] : others;
    }
}

function roots(root: Document | ShadowRoot): (Document | ShadowRoot)[] {
    const within = [...root.querySelectorAll('*')].flatMap(element =>
        element.shadowRoot === null ? [] : roots(element.shadowRoot),
    );
    return [root, ...within];
}
