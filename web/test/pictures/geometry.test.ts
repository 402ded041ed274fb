import { describe, expect, test } from 'vitest';
import { fanMatrix, RIGHT_HAND, LEFT_HAND, halves } from '../../src/core/fanShape';
import { arrowM, corners, share } from '../../src/core/scene';
import { snapped, stepped, twinPlace } from '../../src/core/snap';
import { fanStrokes, spinStrokes, xyz } from '../../src/core/solid';
import { across, dot, length, minus, plus, point, unit, type Point } from '../../src/core/space';
import { arranged, lay, moved, VIEWS, x, y, type Laid, type ViewName } from '../../src/core/view';
import { forSeeds, must, randomScene, type Random } from './random';

const SHEET = { width: 360, margin: 26, foot: 24, leastHeight: 190, mostHeight: 620 };

/** Said once more in plain words: to the right on the picture, and down on it. */
const SEEN: Record<ViewName, (p: Point) => [number, number]> = {
    above: p => [p.right, -p.forward],
    behind: p => [p.right, -p.up],
    front: p => [-p.right, -p.up],
    left: p => [-p.forward, -p.up],
    side: p => [p.forward, -p.up],
};
const HIDDEN: Record<ViewName, keyof Point> = {
    above: 'up',
    behind: 'forward',
    front: 'forward',
    left: 'right',
    side: 'right',
};
const NAMES = Object.keys(SEEN) as ViewName[];

function laidOut(random: Random): Laid[] {
    const scene = randomScene(random);
    return lay(
        NAMES.map(name => VIEWS[name]),
        corners(scene),
        SHEET,
    );
}

/** Right-handed axes: forward, right, down. The plain vector product there. */
function turn(a: Point, b: Point): Point {
    const [ax, ay, az] = [a.forward, a.right, -a.up];
    const [bx, by, bz] = [b.forward, b.right, -b.up];
    return point(ay * bz - az * by, az * bx - ax * bz, -(ax * by - ay * bx));
}

describe('views', () => {
    test('show a step as its words say, to one scale', () => {
        forSeeds(100, random => {
            for (const laid of laidOut(random)) {
                const [a, b] = [random.point(2), random.point(2)];
                const [right, down] = SEEN[laid.view.name](minus(b, a));
                expect(x(laid, b) - x(laid, a)).toBeCloseTo(right * laid.scale, 6);
                expect(y(laid, b) - y(laid, a)).toBeCloseTo(down * laid.scale, 6);
            }
        });
    });

    test('hold every corner of the rig within their margins', () => {
        forSeeds(100, random => {
            const scene = randomScene(random);
            const all = lay([VIEWS.behind, VIEWS.side, VIEWS.above], corners(scene), SHEET);
            expect(new Set(all.map(laid => laid.scale)).size).toBe(1);
            for (const laid of all) {
                expect(laid.height).toBeLessThanOrEqual(SHEET.mostHeight + 1);
                const foot = laid.height - SHEET.foot - SHEET.margin + 1;
                for (const p of corners(scene)) {
                    const [px, py] = [x(laid, p), y(laid, p)];
                    must(px > SHEET.margin - 1e-6, `${px} too far left`);
                    must(px < SHEET.width - SHEET.margin + 1e-6, `${px} too far right`);
                    must(py > SHEET.margin - 1e-6 && py < foot, `${py} too high or too low`);
                }
            }
        });
    });

    test('a way on the picture moves what is seen, and leaves what is not', () => {
        forSeeds(100, random => {
            for (const laid of laidOut(random)) {
                const from = random.point(1);
                const [dx, dy] = [random.between(-90, 90), random.between(-90, 90)];
                const to = moved(laid, from, dx, dy);
                expect(x(laid, to) - x(laid, from)).toBeCloseTo(dx, 9);
                expect(y(laid, to) - y(laid, from)).toBeCloseTo(dy, 9);
                const hidden = HIDDEN[laid.view.name];
                expect(to[hidden]).toBe(from[hidden]);
            }
        });
    });

    test('views stand beside each other as far as there is room, and never overflow it', () => {
        for (let room = 200; room < 2000; room += 7) {
            const { columns, width } = arranged(room, 3);
            must(columns * (width + 18) + (columns - 1) * 12 <= room, `${room} overflows`);
            must(columns === 3 || room < 720, `${room} has room for three`);
            must(width >= 150, `${room} is too narrow`);
        }
    });

    test('who looks stands where the words say', () => {
        expect(VIEWS.front.near).toEqual(point(1, 0, 0));
        expect(VIEWS.behind.near).toEqual(point(-1, 0, 0));
        expect(VIEWS.side.near).toEqual(point(0, 1, 0));
        expect(VIEWS.above.near).toEqual(point(0, 0, 1));
        for (const view of Object.values(VIEWS)) {
            // No picture is mirrored: right turned to up points at whoever looks.
            expect(length(minus(turn(view.across, view.upward), view.near))).toBeCloseTo(0, 12);
        }
    });
});

describe('fans', () => {
    test('the plane of a fan is square to its thrust, and its angles grow right-hand about it', () => {
        forSeeds(150, random => {
            const push = unit(random.point(1));
            const [first, second] = across(push);
            expect(dot(first, push)).toBeCloseTo(0, 12);
            expect(length(second)).toBeCloseTo(1, 12);
            expect(length(minus(turn(first, second), push))).toBeCloseTo(0, 9);
        });
    });

    test('its circle is drawn where the circle in space is seen', () => {
        let open = 0;
        forSeeds(150, random => {
            const laid = random.of(laidOut(random));
            const push = unit(random.point(1));
            const at = random.point(1);
            const tipM = random.between(0.05, 0.5);
            const near = Math.abs(dot(push, laid.view.near));
            if (near < 0.1) {
                return; // on edge it is given some depth
            }
            open++;
            const [a, b, c, d, e, f] = fanMatrix(laid, at, push, tipM);
            const [first, second] = across(push);
            for (let angle = 0; angle < 6; angle += 0.7) {
                const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
                const rim = plus(plus(at, first, (tipM / 2) * cos), second, (tipM / 2) * sin);
                expect(a * cos + c * sin + e).toBeCloseTo(x(laid, rim), 6);
                expect(b * cos + d * sin + f).toBeCloseTo(y(laid, rim), 6);
            }
            // The shorter half axis over the longer one is the cosine towards whoever looks.
            expect(Math.abs(a * d - b * c)).toBeCloseTo(near * ((tipM / 2) * laid.scale) ** 2, 4);
        });
        expect(open).toBeGreaterThan(100);
    });

    test('on edge it is still to be seen, and no longer than it is', () => {
        for (const view of Object.values(VIEWS)) {
            const [laid] = lay([view], [point(-1, -1, -1), point(1, 1, 1)], SHEET);
            if (!laid) {
                throw new Error('no view');
            }
            for (const push of [view.across, view.upward]) {
                const matrix = fanMatrix(laid, point(0, 0, 0), push, 0.2);
                const [a, b, c, d] = matrix;
                expect(Math.abs(a * d - b * c)).toBeGreaterThan(1e-3);
                expect(Math.max(...halves(matrix))).toBeLessThan(0.1 * laid.scale * 1.01);
            }
        }
    });

    test('a right-hand fan is hatched with growing angles, a left-hand one against them', () => {
        const slants = (path: string): number[] =>
            path
                .split('M')
                .slice(1)
                .map(stroke => {
                    const [ax = 0, ay = 0, bx = 0, by = 0] = stroke.split(/[ L]/).map(Number);
                    return ax * by - ay * bx;
                });
        expect(slants(RIGHT_HAND)).toHaveLength(20);
        expect(slants(LEFT_HAND)).toHaveLength(20);
        expect(slants(RIGHT_HAND).every(each => each > 0)).toBe(true);
        expect(slants(LEFT_HAND).every(each => each < 0)).toBe(true);
    });

    test('in space strokes lie on the disk, and the arrow goes the way the rotor turns', () => {
        forSeeds(100, random => {
            const push = unit(random.point(1));
            const at = random.point(1);
            const radius = random.between(0.02, 0.3);
            const rightHand = random.next() < 0.5;
            const ring = { at, push, radius };
            const strokes = [...fanStrokes(ring, rightHand), ...spinStrokes(ring, rightHand)];
            expect(strokes.length % 2).toBe(0);
            for (const end of strokes) {
                must(Math.abs(dot(minus(end, at), push)) < 1e-9, 'a stroke off the disk');
                must(length(minus(end, at)) < radius * (1 + 1e-9), 'a stroke beyond the rim');
            }
            const [from, to] = spinStrokes(ring, rightHand);
            if (!from || !to) {
                throw new Error('no arrow');
            }
            const sense = dot(turn(minus(from, at), minus(to, at)), push);
            expect(Math.sign(sense)).toBe(rightHand ? 1 : -1);
        });
    });

    test('space is right-handed', () => {
        const [r, u, f] = [xyz(point(0, 1, 0)), xyz(point(0, 0, 1)), xyz(point(1, 0, 0))];
        const crossed = [
            r[1] * u[2] - r[2] * u[1],
            r[2] * u[0] - r[0] * u[2],
            r[0] * u[1] - r[1] * u[0],
        ];
        // Right turned to up points backward.
        crossed.forEach((each, k) => {
            expect(each).toBeCloseTo(-(f[k] ?? NaN), 12);
        });
    });

    test('arrows are in proportion to thrust', () => {
        forSeeds(50, random => {
            const scene = randomScene(random);
            const most = Math.max(...scene.fans.map(fan => fan.thrustN));
            expect(Math.max(...scene.fans.map(fan => share(scene, fan)))).toBe(1);
            for (const fan of scene.fans) {
                must(Math.abs(share(scene, fan) - fan.thrustN / most) < 1e-12, fan.id);
            }
            expect(arrowM(scene)).toBeGreaterThan(0);
        });
    });
});

describe('snapping', () => {
    test('what is seen comes to stand on whole steps, half a step off at most', () => {
        forSeeds(150, random => {
            const view = VIEWS[random.of(NAMES)];
            const step = random.of([0.001, 0.01, 0.0127, 0.05]);
            const [from, to] = [random.point(1), random.point(1)];
            const at = snapped(to, from, view, step);
            for (const axis of ['forward', 'right', 'up'] as const) {
                if (axis === HIDDEN[view.name]) {
                    expect(at[axis]).toBe(from[axis]);
                } else {
                    const steps = at[axis] / step;
                    expect(steps).toBeCloseTo(Math.round(steps), 6);
                    expect(Math.abs(at[axis] - to[axis])).toBeLessThan(step / 2 + 1e-12);
                }
            }
            expect(length(minus(snapped(at, from, view, step), at))).toBeLessThan(1e-12);
        });
    });

    test('an arrow key moves one step the way it points on the picture', () => {
        const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
        for (const view of Object.values(VIEWS)) {
            for (const [key, [right, down]] of Object.entries(way)) {
                const from = point(0.1, 0.2, 0.3);
                const to = stepped(from, key, view, 0.01);
                if (!to) {
                    throw new Error(`${key} does nothing`);
                }
                const seen = SEEN[view.name](minus(to, from));
                expect(seen[0]).toBeCloseTo(0.01 * (right ?? NaN), 12);
                expect(seen[1]).toBeCloseTo(0.01 * (down ?? NaN), 12);
            }
            expect(stepped(point(0, 0, 0), 'Enter', view, 0.01)).toBeUndefined();
        }
    });

    test('a twin mirrors the way of its part', () => {
        expect(twinPlace(point(1, 2, 3), point(0, -2, 0), point(0.5, -2.5, 1))).toEqual(
            point(1.5, 2.5, 4),
        );
    });
});
