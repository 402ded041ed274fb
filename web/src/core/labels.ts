/** A piece of the picture, y down. */
export interface Box {
    readonly left: number;
    readonly top: number;
    readonly right: number;
    readonly bottom: number;
}

/** Words with their place: the middle of their base line. */
export interface Label {
    readonly words: string;
    readonly x: number;
    readonly y: number;
    readonly box: Box;
    /** A line to what they name, where they stand off it. */
    readonly leader?: readonly [number, number, number, number];
}

/** Height of letters in units of the picture. */
export const LETTER = 12.5;

const GAP = 1.5;
const LONGEST = 36;
const FAR = 16;

/** Width of a letter over its height, rather too much: labels are placed by it. */
function letterWidth(c: string): number {
    const code = c.codePointAt(0) ?? 0;
    if (code >= 0x1100) {
        return 1.05; // most wide scripts, and signs no one can foresee
    }
    if ('MWmw@%'.includes(c)) {
        return 0.95;
    }
    return c >= 'A' && c <= 'Z' ? 0.72 : 0.6;
}

export function widthOf(words: string, letter = LETTER): number {
    let width = 0;
    for (const c of words) {
        width += letterWidth(c) * letter;
    }
    return width;
}

/** What no label could hold keeps its head and its tail; the whole stands in table and list. */
export function short(words: string): string {
    const all = Array.from(words); // whole characters
    return all.length <= LONGEST
        ? words
        : [...all.slice(0, LONGEST - 12), '…', ...all.slice(-11)].join('');
}

/** As much of the head of some words as there is room for. */
export function cut(words: string, room: number): string {
    if (widthOf(words) <= room) {
        return words;
    }
    let head = '';
    for (const c of words) {
        if (widthOf(`${head}${c}…`) > room) {
            break;
        }
        head += c;
    }
    return `${head}…`;
}

export function meet(a: Box, b: Box): boolean {
    return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Places words on a picture so that none lies on another: the first free place is taken. */
export class Labels {
    private readonly taken: Box[] = [];
    private readonly avoided: Box[] = [];

    constructor(
        private readonly width: number,
        private readonly height: number,
    ) {}

    /** Keeps words off a piece of the picture. */
    reserve(box: Box): void {
        this.taken.push(box);
    }

    /** Keeps names off a thing as long as there is room elsewhere. */
    avoid(box: Box): void {
        this.avoided.push(box);
    }

    /** Words about a point, if there is room. */
    centred(x: number, y: number, words: string, letter = LETTER): Label | undefined {
        return this.at(x, y + 0.36 * letter, words, letter, false);
    }

    /** Words beside a thing: right, left, above, below, then further off; undefined without room. */
    beside(thing: Box, name: string): Label | undefined {
        const words = short(name);
        return this.around(thing, words, true) ?? this.around(thing, words, false);
    }

    private around(thing: Box, words: string, avoiding: boolean): Label | undefined {
        const half = widthOf(words) / 2;
        const x = (thing.left + thing.right) / 2;
        const base = (thing.top + thing.bottom) / 2 + 0.36 * LETTER;
        for (let off = 4; off < 90; off += 7) {
            const right = thing.right + off + half;
            const left = thing.left - off - half;
            const above = thing.top - off;
            const below = thing.bottom + off + 0.8 * LETTER;
            for (const [at, on] of [
                [right, base],
                [left, base],
                [x, above],
                [x, below],
                [right, above],
                [left, above],
                [right, below],
                [left, below],
            ] as const) {
                const found = this.at(at, on, words, LETTER, avoiding);
                if (found) {
                    return off > FAR ? { ...found, leader: leader(found.box, thing) } : found;
                }
            }
        }
        return undefined;
    }

    private at(
        x: number,
        y: number,
        words: string,
        letter: number,
        avoiding: boolean,
    ): Label | undefined {
        const half = widthOf(words, letter) / 2;
        const box = {
            left: x - half - GAP,
            top: y - 0.95 * letter,
            right: x + half + GAP,
            bottom: y + 0.3 * letter,
        };
        const inside =
            box.left >= 0 && box.top >= 0 && box.right <= this.width && box.bottom <= this.height;
        const free =
            inside &&
            !this.taken.some(other => meet(box, other)) &&
            !(avoiding && this.avoided.some(other => meet(box, other)));
        if (!free) {
            return undefined;
        }
        this.taken.push(box);
        return { words, x, y, box };
    }
}

/** From the nearest point of a label to the nearest of what it names. */
function leader(label: Box, thing: Box): [number, number, number, number] {
    const clamp = (value: number, low: number, high: number): number =>
        Math.min(high, Math.max(low, value));
    const x = clamp((thing.left + thing.right) / 2, label.left, label.right);
    const y = clamp((thing.top + thing.bottom) / 2, label.top, label.bottom);
    return [x, y, clamp(x, thing.left, thing.right), clamp(y, thing.top, thing.bottom)];
}
