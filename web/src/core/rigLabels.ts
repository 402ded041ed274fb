import { numeral, roundBelow } from './axis';
import { fanMatrix, halves } from './fanShape';
import { Labels, widthOf, type Box, type Label } from './labels';
import { bareName } from './mounts';
import { placeOf, type Scene } from './scene';
import { dot, type Point } from './space';
import { x, y, type Laid } from './view';

export const FOOT = 24;
/** Half the side of a pack's square, and of any other part's. */
export const PACK_HALF = 6;
export const PART_HALF = 3.5;
export const CENTRE_HALF = 8;
/** A group whose parts fill less of its place than one in so many is scattered. */
const SCATTERED = 4;

export interface RigLabels {
    /** Numbers in the circles of fans. */
    readonly numbers: readonly Label[];
    /** Names of groups beside what they name. */
    readonly names: readonly Label[];
    /** Names that found no room: they show when one of the group is chosen. */
    readonly crowded: readonly string[];
    readonly chosen: Label | undefined;
}

/** The name of a group: what stands before the last dot. */
export function groupOf(part: string): string {
    const at = part.lastIndexOf('.');
    return at > 0 ? part.slice(0, at) : part;
}

/** The last word of a fan's name and the letter of its spin. */
export function numberOf(part: string, rightHand: boolean): string {
    const at = part.lastIndexOf('.');
    return (at > 0 ? part.slice(at + 1) : '') + (rightHand ? 'R' : 'L');
}

/** A stretch of a round length, with its words; lengths of the picture but for the words. */
export interface ScaleBar {
    readonly from: number;
    readonly wide: number;
    readonly words: string;
}

const LONGEST_BAR = 90;
const SHORTEST_BAR = 16;

/** The longest round stretch that fits between the words of both edges; undefined where none does. */
export function scaleBar(laid: Laid, unit: string, per: number): ScaleBar | undefined {
    const { view, width, scale } = laid;
    const left = widthOf(`← ${view.left}`) + 8;
    const right = width - widthOf(`${view.right} →`) - 8;
    for (let most = LONGEST_BAR; most >= SHORTEST_BAR; most /= 2) {
        const round = roundBelow((most / scale) * per);
        const wide = (round / per) * scale;
        const words = `${numeral(round, round)} ${unit}`;
        const from = (left + right - wide - 6 - widthOf(words)) / 2;
        if (from >= left && wide >= SHORTEST_BAR / 2.5) {
            return { from, wide, words };
        }
    }
    return undefined;
}

/** Whether an arrow points so straight at the eye, or away from it, that a dot stands for it. */
export function headOn(laid: Laid, push: Point): boolean {
    return Math.hypot(dot(push, laid.view.across), dot(push, laid.view.upward)) < 0.08;
}

/** Words on one view of the rig, none over another; the name of the chosen part before all others. */
export function rigLabels(scene: Scene, laid: Laid, chosen?: string): RigLabels {
    const labels = new Labels(laid.width, laid.height - FOOT);
    labels.reserve({ left: 0, top: 0, right: 20 + widthOf(laid.view.top), bottom: 18 });
    const at = chosen === undefined ? undefined : placeOf(scene, chosen);
    const chosenName = at && labels.beside(boxOf(scene, laid, chosen, at), bareName(chosen ?? ''));
    const numbers: Label[] = [];
    const groups = new Map<string, Box[]>();
    const take = (id: string, box: Box): void => {
        labels.avoid(box);
        const name = groupOf(id);
        groups.set(name, [...(groups.get(name) ?? []), box]);
    };
    const nearest = [...scene.fans].sort(
        (a, b) => dot(b.at, laid.view.near) - dot(a.at, laid.view.near),
    );
    for (const fan of nearest) {
        const words = numberOf(fan.id, fan.rightHand);
        const open = Math.abs(dot(fan.push, laid.view.near)) > 0.5;
        if (open && fan.tipM * laid.scale > widthOf(words) + 2) {
            const up = headOn(laid, fan.push) ? 7 : 0; // off the dot of a thrust that meets the eye
            const found = labels.centred(x(laid, fan.at), y(laid, fan.at) - up, words);
            if (found) {
                numbers.push(found);
            }
        }
    }
    if (scene.centre) {
        labels.reserve(square(x(laid, scene.centre), y(laid, scene.centre), CENTRE_HALF + 1));
    }
    for (const fan of scene.fans) {
        take(fan.id, boxOf(scene, laid, fan.id, fan.at));
    }
    for (const part of scene.parts) {
        const box = boxOf(scene, laid, part.id, part.at);
        if (part.kind === 'pack') {
            take(part.id, box);
        } else {
            labels.avoid(box);
        }
    }
    const names: Label[] = [];
    const crowded: string[] = [];
    for (const [name, boxes] of groups) {
        const found = labels.beside(named(boxes), name);
        if (found) {
            names.push(found);
        } else {
            crowded.push(name);
        }
    }
    return { numbers, names, crowded, chosen: chosenName };
}

/** What a part covers on a view. */
function boxOf(scene: Scene, laid: Laid, id: string | undefined, at: Point): Box {
    const [cx, cy] = [x(laid, at), y(laid, at)];
    const fan = scene.fans.find(other => other.id === id);
    if (!fan) {
        const pack = scene.parts.some(part => part.id === id && part.kind === 'pack');
        return square(cx, cy, pack ? PACK_HALF : PART_HALF);
    }
    const [wide, high] = halves(fanMatrix(laid, at, fan.push, fan.tipM));
    return { left: cx - wide, top: cy - high, right: cx + wide, bottom: cy + high };
}

function square(cx: number, cy: number, half: number): Box {
    return { left: cx - half, top: cy - half, right: cx + half, bottom: cy + half };
}

/** What the name of a group stands beside: all of it, or its first where it is scattered. */
export function named(boxes: readonly Box[]): Box {
    const all = boxes.reduce(union);
    const filled = boxes.reduce((sum, box) => sum + area(box), 0);
    return filled * SCATTERED < area(all) ? (boxes[0] ?? all) : all;
}

function area({ left, right, top, bottom }: Box): number {
    return (right - left) * (bottom - top);
}

function union(a: Box, b: Box): Box {
    return {
        left: Math.min(a.left, b.left),
        top: Math.min(a.top, b.top),
        right: Math.max(a.right, b.right),
        bottom: Math.max(a.bottom, b.bottom),
    };
}
