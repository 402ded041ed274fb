const NAMES = /^[a-zA-Z_][a-zA-Z0-9_.:-]*$/;

function escaped(text: string): string {
    return Array.from(text, c => {
        switch (c) {
            case '&':
                return '&amp;';
            case '<':
                return '&lt;';
            case '>':
                return '&gt;';
            case '"':
                return '&quot;';
            case '\t':
            case '\n':
            case '\r':
                return `&#${c.charCodeAt(0)};`; // plain ones become spaces in an attribute
            default:
                return isXml(c) ? c : '\ufffd';
        }
    }).join('');
}

/** Whether XML 1.0 may hold a character at all. */
function isXml(c: string): boolean {
    const code = c.codePointAt(0) ?? 0;
    return (
        code === 9 ||
        code === 10 ||
        code === 13 ||
        (code >= 0x20 && code <= 0xd7ff) ||
        (code >= 0xe000 && code <= 0xfffd) ||
        code >= 0x10000
    );
}

/** A piece of a picture on its way into a file. */
export interface Node {
    readonly name: string;
    readonly attributes: Readonly<Record<string, string>>;
    readonly children: readonly (Node | string)[];
}

/** As XML. Text and attributes are escaped; a name that is no name of XML is an error. */
export function xml(node: Node): string {
    if (!NAMES.test(node.name)) {
        throw new Error(`no element: ${node.name}`);
    }
    const attributes = Object.entries(node.attributes)
        .filter(([name]) => NAMES.test(name))
        .map(([name, value]) => ` ${name}="${escaped(value)}"`)
        .join('');
    const inside = node.children
        .map(child => (typeof child === 'string' ? escaped(child) : xml(child)))
        .join('');
    return `<${node.name}${attributes}>${inside}</${node.name}>`;
}

/** Pictures beside each other as one, in the units of each. */
export function beside(
    pictures: readonly { node: Node; width: number; height: number; title: string }[],
    ground: string,
    letter: Readonly<Record<string, string>>,
): Node {
    const GAP = 16;
    const HEAD = 24;
    let x = GAP;
    const children: (Node | string)[] = [];
    for (const { node, width, height, title } of pictures) {
        children.push(
            {
                name: 'text',
                attributes: { ...letter, x: String(x), y: String(HEAD - 6) },
                children: [title],
            },
            {
                name: 'svg',
                attributes: {
                    ...node.attributes,
                    x: String(x),
                    y: String(HEAD),
                    width: String(width),
                    height: String(height),
                },
                children: node.children,
            },
        );
        x += width + GAP;
    }
    const tall = Math.max(0, ...pictures.map(each => each.height)) + HEAD + GAP;
    return {
        name: 'svg',
        attributes: {
            xmlns: 'http://www.w3.org/2000/svg',
            width: String(x),
            height: String(tall),
            viewBox: `0 0 ${x} ${tall}`,
        },
        children: [
            {
                name: 'rect',
                attributes: { width: String(x), height: String(tall), fill: ground },
                children: [],
            },
            ...children,
        ],
    };
}

const ARC_SIDES = 16;

/**
 * A path under a matrix as a path without one, so that its strokes keep their width in any program.
 * Knows lines and half circles about the origin, which fans are drawn of.
 */
export function flattened(d: string, matrix: readonly number[]): string {
    const [a = 1, b = 0, c = 0, e = 1, left = 0, top = 0] = matrix;
    const on = (x: number, y: number): string =>
        `${(a * x + c * y + left).toFixed(2)} ${(b * x + e * y + top).toFixed(2)}`;
    let [x, y] = [0, 0];
    const parts = d.match(/[MLAZ][^MLAZ]*/g) ?? [];
    return parts
        .map(part => {
            const numbers = part.slice(1).trim().split(/[ ,]+/).map(Number);
            const [toX = 0, toY = 0] = numbers.slice(-2);
            const from = Math.atan2(y, x);
            const r = Math.hypot(x, y);
            switch (part.charAt(0)) {
                case 'M':
                case 'L':
                    [x, y] = [toX, toY];
                    return `${part.charAt(0)}${on(x, y)}`;
                case 'A':
                    [x, y] = [toX, toY];
                    return Array.from({ length: ARC_SIDES }, (_, k) => {
                        const angle = from + (Math.PI * (k + 1)) / ARC_SIDES;
                        return `L${on(r * Math.cos(angle), r * Math.sin(angle))}`;
                    }).join('');
                default:
                    return 'Z';
            }
        })
        .join('');
}
