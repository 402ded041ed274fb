import { expect, test } from 'vitest';
import { wayWords, withLengths } from '../../src/core/lengths';
import { length, minus, plus, point, type Point } from '../../src/core/space';
import {
    beside,
    measured,
    pointed,
    thingAt,
    thingsOf,
    type Seen,
    type Thing,
} from '../../src/core/things';
import { forSeeds, must, randomScene, type Random } from './random';

function stretch(random: Random): Thing {
    const from = random.point(1);
    const to = random.next() < 0.3 ? from : random.point(1);
    return { id: 'a', what: 'wire', from, to, radiusM: 0.01, part: undefined };
}

function along(thing: Thing, share: number): Point {
    return plus(thing.from, minus(thing.to, thing.from), share);
}

test('no pair of points of two things is nearer than what is measured', () => {
    forSeeds(400, random => {
        const one = stretch(random);
        const other =
            random.next() < 0.2
                ? { ...one, from: plus(one.from, random.point(0.5)), to: plus(one.to, one.from, 0) }
                : stretch(random);
        const found = measured(one, other);
        const way = length(minus(found.to, found.from));
        for (let i = 0; i <= 24; i++) {
            for (let j = 0; j <= 24; j++) {
                const way2 = length(minus(along(other, j / 24), along(one, i / 24)));
                must(way <= way2 + 1e-9, `${way} over ${way2}`);
            }
        }
        const on = (thing: Thing, p: Point): boolean =>
            length(minus(p, thing.from)) + length(minus(p, thing.to)) <
            length(minus(thing.to, thing.from)) + 1e-9;
        must(on(one, found.from) && on(other, found.to), 'on both');
    });
});

test('parallel stretches are as far apart as they lie', () => {
    const one: Thing = { ...thingAt('a', 'wire', point(0, 0, 0), 0), to: point(1, 0, 0) };
    const other = { ...one, from: point(0.5, 0.3, 0), to: point(2, 0.3, 0) };
    const found = measured(one, other);
    expect(length(minus(found.to, found.from))).toBeCloseTo(0.3, 12);
});

/** Seen from behind, a metre 100 long, without perspective. */
function see(p: Point): Seen {
    return { x: 200 + 100 * p.right, y: 200 - 100 * p.up, depth: p.forward, perM: 100 };
}

test('everything that is drawn can be pointed at, and the nearer of two is meant', () => {
    forSeeds(200, random => {
        const things = thingsOf(randomScene(random));
        must(
            things.some(each => each.what === 'limb'),
            'limbs too',
        );
        for (const thing of things) {
            const middle = see(along(thing, 0.5));
            const found = pointed(things, see, middle.x, middle.y);
            must(found !== undefined, `${thing.id} is met`);
            if (found !== undefined && found !== thing) {
                // Something else covers it: it is no further from the eye and as near to the pointer.
                const other = pointed([found], see, middle.x, middle.y);
                must(other === found, 'what is meant is there');
                const alone = pointed([thing, found], see, middle.x, middle.y);
                must(alone === found, 'and it comes first of the two');
            }
        }
    });
});

test('nothing is meant where nothing is near', () => {
    expect(pointed([thingAt('p', 'pack', point(0, 0, 0), 0.02)], see, 240, 200)).toBeUndefined();
});

test('a way is told in the chosen system, with its shares and their senses', () => {
    const field = (unit: string, per: number) => ({
        'place-forward': { label: 'forward', unit, per, plus: 0 },
    });
    const to = point(-0.1, 0.2, 0.2);
    expect(wayWords(point(0, 0, 0), to, field('mm', 1000))).toBe(
        '300 mm: 100 mm back, 200 mm right, 200 mm up',
    );
    expect(wayWords(to, point(0, 0, 0), field('in', 1 / 0.0254))).toBe(
        '11.81 in: 3.94 in forward, 7.87 in left, 7.87 in down',
    );
});

test('where an answer tells no places, lengths follow the chosen system; else the answer', () => {
    const [from, to] = [point(0, 0, 0), point(0, 0.127, 0)];
    expect(wayWords(from, to, withLengths({}, 'us'))).toMatch(/^5\.00 in: /);
    expect(wayWords(from, to, withLengths({}, 'si'))).toMatch(/^127 mm: /);
    const own = { 'place-forward': { label: 'forward', unit: 'm', per: 1, plus: 0 } };
    expect(withLengths(own, 'us')).toBe(own);
});

test('keys go through every thing once, either way round', () => {
    forSeeds(30, random => {
        const things = thingsOf(randomScene(random));
        for (const by of [1, -1] as const) {
            const seen: string[] = [];
            let current: string | undefined;
            for (let k = 0; k < things.length; k++) {
                current = beside(things, current, by)?.id;
                seen.push(String(current));
            }
            must(new Set(seen).size === things.length, 'each once');
            const ordered = by > 0 ? seen : seen.reverse();
            must(ordered.join() === things.map(each => each.id).join(), 'in their order');
        }
    });
    expect(beside([], undefined, 1)).toBeUndefined();
});
