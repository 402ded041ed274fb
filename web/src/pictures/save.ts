import { beside, flattened, xml, type Node } from '../core/svg';

/** What of the page's look a picture takes along. */
const LOOK = [
    'fill',
    'fill-opacity',
    'stroke',
    'stroke-width',
    'stroke-dasharray',
    'stroke-linecap',
    'stroke-linejoin',
    'stroke-opacity',
    'opacity',
    'paint-order',
    'font-family',
    'font-size',
    'font-weight',
    'text-anchor',
] as const;
/** Elements that are drawn. Whatever else there may be is no picture. */
const ELEMENTS = /^(svg|g|defs|pattern|path|rect|circle|line|text)$/;
/** Attributes of the drawing itself; names, handlers and classes stay behind. */
const DRAWN =
    /^(id|d|x|y|[xyr][12]?|c[xy]|r[xy]|width|height|viewBox|points|transform|patternUnits)$/;
const FINE = 2;

function offered(name: string, blob: Blob): void {
    const url = URL.createObjectURL(blob);
    const link = document.createElement('a');
    link.href = url;
    link.download = name;
    link.click();
    setTimeout(() => {
        URL.revokeObjectURL(url);
    }, 10_000);
}

/** Colours that every reader of SVG knows: `color(srgb 1 0 0)` is a matter of newer ones. */
function plainColour(value: string): string {
    const found = /^color\(srgb ([\d.e-]+) ([\d.e-]+) ([\d.e-]+)(?: \/ ([\d.e-]+))?\)$/.exec(value);
    if (!found) {
        return value.replace(/^url\("(#[^"]+)"\)$/, 'url($1)');
    }
    const [red, green, blue] = found.slice(1, 4).map(part => Math.round(Number(part) * 255));
    return `rgb(${red ?? 0}, ${green ?? 0}, ${blue ?? 0})`;
}

/** A copy of what is drawn that needs no style sheet; what is hidden, or for the hand only, is left. */
export function standalone(
    element: Element,
    styleOf = getComputedStyle,
    under?: readonly number[],
): Node | undefined {
    const style = styleOf(element);
    const drawn = ELEMENTS.test(element.localName) && style.display !== 'none';
    if (!drawn || element.classList.contains('hand-only')) {
        return undefined;
    }
    const attributes: Record<string, string> = {};
    for (const attribute of Array.from(element.attributes)) {
        if (DRAWN.test(attribute.name)) {
            attributes[attribute.name] = attribute.value;
        }
    }
    for (const name of LOOK) {
        const value = style.getPropertyValue(name) || (element.getAttribute(name) ?? '');
        if (value) {
            attributes[name] = plainColour(value);
        }
    }
    // Fans are drawn by matrix: it goes into their paths, since not every program keeps strokes out of it.
    const matrix = under ?? matrixOf(element);
    if (matrix) {
        delete attributes['transform'];
        attributes['d'] &&= flattened(attributes['d'], matrix);
    }
    const children: (Node | string)[] = [];
    for (const child of Array.from(element.childNodes)) {
        if (child instanceof Element) {
            const copy = standalone(child, styleOf, matrix);
            if (copy) {
                children.push(copy);
            }
        } else if (child.nodeType === TEXT) {
            children.push(child.textContent ?? '');
        }
    }
    return { name: element.localName, attributes, children };
}

/** The six numbers of a transform that is a matrix. */
function matrixOf(element: Element): number[] | undefined {
    const found = /^matrix\(([^)]*)\)$/.exec(element.getAttribute('transform') ?? '');
    return found?.[1]?.trim().split(/[ ,]+/).map(Number);
}

const TEXT = 3;

function sizeOf(svg: SVGSVGElement): [number, number] {
    const [, , width = 0, height = 0] = (svg.getAttribute('viewBox') ?? '')
        .split(/\s+/)
        .map(Number);
    return [width, height];
}

/** Drawn pictures as one self-contained SVG text. */
export function svgText(pictures: readonly SVGSVGElement[], styleOf = getComputedStyle): string {
    const first = pictures[0];
    if (!first) {
        throw new Error('nothing is drawn');
    }
    const style = styleOf(first);
    const copies = pictures.flatMap(svg => {
        const node = standalone(svg, styleOf);
        const [width, height] = sizeOf(svg);
        return node ? [{ node, width, height, title: svg.dataset['title'] ?? '' }] : [];
    });
    return xml(
        beside(copies, plainColour(style.getPropertyValue('--sheet') || '#fff'), {
            fill: plainColour(style.getPropertyValue('color') || '#000'),
            'font-family': style.getPropertyValue('font-family') || 'sans-serif',
            'font-size': '13px',
            'font-weight': '700',
        }),
    );
}

/** Offers pictures as SVG, self-contained. */
export function saveSvg(name: string, pictures: readonly SVGSVGElement[]): void {
    offered(`${name}.svg`, new Blob([svgText(pictures)], { type: 'image/svg+xml' }));
}

/** A picture as bitmap, twice as fine as it is shown. */
async function painted(text: string): Promise<Blob> {
    const url = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
    try {
        const image = new Image();
        image.src = url;
        await image.decode();
        const canvas = document.createElement('canvas');
        canvas.width = Math.ceil(image.naturalWidth * FINE);
        canvas.height = Math.ceil(image.naturalHeight * FINE);
        const paint = canvas.getContext('2d');
        if (!paint) {
            throw new Error('this browser paints no bitmap');
        }
        paint.drawImage(image, 0, 0, canvas.width, canvas.height);
        return await bitmapOf(canvas);
    } finally {
        URL.revokeObjectURL(url);
    }
}

export function bitmapOf(canvas: HTMLCanvasElement): Promise<Blob> {
    return new Promise((resolve, reject) => {
        canvas.toBlob(blob => {
            if (blob) {
                resolve(blob);
            } else {
                reject(new Error('the browser made no bitmap'));
            }
        }, 'image/png');
    });
}

/** Offers pictures, or what is a bitmap already, as PNG. */
export async function savePng(
    name: string,
    picture: readonly SVGSVGElement[] | (() => Promise<Blob>),
): Promise<void> {
    const blob = typeof picture === 'function' ? await picture() : await painted(svgText(picture));
    offered(`${name}.png`, blob);
}

/** Offers tables as CSV, marked as UTF-8 for spreadsheets. */
export function saveCsv(name: string, csv: string): void {
    offered(`${name}.csv`, new Blob(['\ufeff', csv], { type: 'text/csv;charset=utf-8' }));
}

/** A model in space, as one binary file. */
export async function saveGlb(name: string, model: () => Promise<Blob>): Promise<void> {
    offered(`${name}.glb`, await model());
}
