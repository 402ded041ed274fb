import { area, covered, meet, pieces, type Box, type Piece } from './text';

/** What two glyph boxes may share before it counts; above and below, a tenth of them is air. */
const airPx = 1;

function shrunk(box: Box): Box {
    const air = Math.max(airPx, (box.bottom - box.top) / 10);
    return {
        left: box.left + airPx,
        top: box.top + air,
        right: box.right - airPx,
        bottom: box.bottom - air,
    };
}

interface Corner {
    x: number;
    y: number;
}

function corners(box: Box): Corner[] {
    return [
        { x: box.left, y: box.top },
        { x: box.right, y: box.top },
        { x: box.right, y: box.bottom },
        { x: box.left, y: box.bottom },
    ];
}

/** Whether two convex shapes are apart along the normal of one side of either (separating axes). */
function apart(a: Corner[], b: Corner[]): boolean {
    for (const shape of [a, b]) {
        for (const [i, from] of shape.entries()) {
            const to = shape[(i + 1) % shape.length] ?? from;
            const length = Math.hypot(to.x - from.x, to.y - from.y);
            if (length === 0) {
                continue;
            }
            const nx = (to.y - from.y) / length;
            const ny = (from.x - to.x) / length;
            const onA = a.map(p => p.x * nx + p.y * ny);
            const onB = b.map(p => p.x * nx + p.y * ny);
            const shared =
                Math.min(Math.max(...onA), Math.max(...onB)) -
                Math.max(Math.min(...onA), Math.min(...onB));
            if (shared <= 2 * airPx) {
                return true;
            }
        }
    }
    return false;
}

function collide(a: Piece, b: Piece): boolean {
    for (const one of a.seen) {
        for (const other of b.seen) {
            const shared = meet(shrunk(one), shrunk(other));
            if (shared.right <= shared.left || shared.bottom <= shared.top || area(shared) <= 0) {
                continue;
            }
            if (apart(a.quad ?? corners(one), b.quad ?? corners(other))) {
                continue;
            }
            if (!covered(a.element, shared) && !covered(b.element, shared)) {
                return true;
            }
        }
    }
    return false;
}

/** Pairs of texts that lie on one another, as "one × other". */
export function overlaps(): string[] {
    const all = pieces().filter(piece => piece.seen.length > 0);
    const found: string[] = [];
    for (const [i, a] of all.entries()) {
        for (const b of all.slice(i + 1)) {
            if (collide(a, b)) {
                found.push(`“${a.text}” × “${b.text}”`);
            }
        }
    }
    return found;
}
