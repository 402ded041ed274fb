import { dot, point, type Point } from './space';

/** From where a rig is seen. */
export interface View {
    readonly name: ViewName;
    /** "seen …" */
    readonly words: string;
    /** Which way the left edge, the right edge and the top of the picture are. */
    readonly left: string;
    readonly right: string;
    readonly top: string;
    /** Unit vectors to the right on the picture, up on it, and towards whoever looks. */
    readonly across: Point;
    readonly upward: Point;
    readonly near: Point;
}
export type ViewName = 'above' | 'behind' | 'front' | 'left' | 'side';

export const VIEWS: Readonly<Record<ViewName, View>> = {
    above: {
        name: 'above',
        words: 'from above',
        left: 'left',
        right: 'right',
        top: 'forward',
        across: point(0, 1, 0),
        upward: point(1, 0, 0),
        near: point(0, 0, 1),
    },
    behind: {
        name: 'behind',
        words: 'from behind',
        left: 'left',
        right: 'right',
        top: 'up',
        across: point(0, 1, 0),
        upward: point(0, 0, 1),
        near: point(-1, 0, 0),
    },
    front: {
        name: 'front',
        words: 'by someone who faces the wearer',
        left: 'their right',
        right: 'their left',
        top: 'up',
        across: point(0, -1, 0),
        upward: point(0, 0, 1),
        near: point(1, 0, 0),
    },
    left: {
        name: 'left',
        words: 'from its left side',
        left: 'forward',
        right: 'back',
        top: 'up',
        across: point(-1, 0, 0),
        upward: point(0, 0, 1),
        near: point(0, -1, 0),
    },
    side: {
        name: 'side',
        words: 'from its right side',
        left: 'back',
        right: 'forward',
        top: 'up',
        across: point(1, 0, 0),
        upward: point(0, 0, 1),
        near: point(0, 1, 0),
    },
};

/** The view that is nearest to how somebody looks who is in a direction from the rig. */
export function nearestView(from: Point): View {
    return Object.values(VIEWS).reduce((best, view) =>
        dot(view.near, from) > dot(best.near, from) ? view : best,
    );
}

/** A view laid into a picture: `scale` picture units to a metre, y down. */
export interface Laid {
    readonly view: View;
    readonly scale: number;
    readonly left: number;
    readonly top: number;
    readonly width: number;
    readonly height: number;
}

export function x(laid: Laid, p: Point): number {
    return (dot(p, laid.view.across) - laid.left) * laid.scale;
}

export function y(laid: Laid, p: Point): number {
    return (laid.top - dot(p, laid.view.upward)) * laid.scale;
}

/** A place moved by a way on the picture; what the view cannot see of it stays. */
export function moved(laid: Laid, from: Point, dx: number, dy: number): Point {
    const right = dx / laid.scale;
    const up = -dy / laid.scale;
    const { across, upward } = laid.view;
    return point(
        from.forward + right * across.forward + up * upward.forward,
        from.right + right * across.right + up * upward.right,
        from.up + right * across.up + up * upward.up,
    );
}

function span(all: readonly Point[], along: Point): [number, number] {
    let low = Infinity;
    let high = -Infinity;
    for (const p of all) {
        const value = dot(p, along);
        low = Math.min(low, value);
        high = Math.max(high, value);
    }
    return [low, high];
}

export interface Sheet {
    readonly width: number;
    readonly margin: number;
    /** Room at the bottom for the names of the edges. */
    readonly foot: number;
    readonly leastHeight: number;
    readonly mostHeight: number;
}

/** Lays several views so that all points are seen, all to one scale. */
export function lay(views: readonly View[], all: readonly Point[], sheet: Sheet): Laid[] {
    let wide = 1e-6;
    let tall = 1e-6;
    for (const view of views) {
        const [left, right] = span(all, view.across);
        const [low, high] = span(all, view.upward);
        wide = Math.max(wide, right - left);
        tall = Math.max(tall, high - low);
    }
    const scale = Math.min(
        (sheet.width - 2 * sheet.margin) / wide,
        (sheet.mostHeight - 2 * sheet.margin - sheet.foot) / tall,
    );
    return views.map(view => {
        const [left, right] = span(all, view.across);
        const [low, high] = span(all, view.upward);
        const needed = (high - low) * scale + 2 * sheet.margin + sheet.foot;
        const height = Math.ceil(Math.max(sheet.leastHeight, needed));
        return {
            view,
            scale,
            left: (left + right) / 2 - sheet.width / scale / 2,
            top: high + (sheet.margin + (height - needed) / 2) / scale,
            width: sheet.width,
            height,
        };
    });
}

const GAP = 12;
const NARROWEST = 150;
const WIDEST = 680;
const INSET = 18; // padding and frame of a picture

/** How many views stand beside each other where there is so much room, and how wide each is. */
export function arranged(room: number, count: number): { columns: number; width: number } {
    const columns = Math.min(count, room >= 720 ? 3 : room >= 440 ? 2 : 1);
    const width = (room - GAP * (columns - 1)) / columns - INSET;
    return { columns, width: Math.min(WIDEST, Math.max(NARROWEST, Math.floor(width))) };
}
