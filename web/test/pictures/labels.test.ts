import { describe, expect, test } from 'vitest';
import { Labels, LETTER, meet, short, widthOf, type Label } from '../../src/core/labels';
import { FOOT, groupOf, rigLabels, scaleBar } from '../../src/core/rigLabels';
import { corners } from '../../src/core/scene';
import { lay, VIEWS } from '../../src/core/view';
import { forSeeds, must, randomScene } from './random';

const SHEET = { width: 360, margin: 26, foot: FOOT, leastHeight: 190, mostHeight: 620 };

/** Where letters are for certain: rather less than the box that was kept free. */
function inked({ words, x, y }: Label) {
    const half = (0.5 * Array.from(words).length * LETTER) / 2;
    return { left: x - half, right: x + half, top: y - 0.72 * LETTER, bottom: y + 0.2 * LETTER };
}

describe('labels of a rig', () => {
    test('no two lie on each other, none leaves the picture', () => {
        let written = 0;
        let crowded = 0;
        forSeeds(120, random => {
            const scene = randomScene(random);
            for (const laid of lay(Object.values(VIEWS), corners(scene), SHEET)) {
                const chosen = random.of(scene.fans).id;
                const all = rigLabels(scene, laid, random.next() < 0.5 ? chosen : undefined);
                const labels = [...all.numbers, ...all.names, ...(all.chosen ? [all.chosen] : [])];
                labels.forEach((one, k) => {
                    const { left, top, right, bottom } = one.box;
                    must(left >= 0 && right <= laid.width, `${one.words} leaves the sides`);
                    must(top >= 0 && bottom <= laid.height - FOOT, `${one.words} leaves`);
                    for (const other of labels.slice(k + 1)) {
                        const both = `${one.words} on ${other.words}`;
                        must(!meet(one.box, other.box), both);
                        must(!meet(inked(one), inked(other)), both);
                    }
                });
                written += all.names.length;
                crowded += all.crowded.length;
            }
        });
        expect(written).toBeGreaterThan(1000);
        expect(crowded).toBeLessThan(0.2 * written);
    });

    test('the scale bar is a round length, and lies between the words of both edges', () => {
        let drawn = 0;
        forSeeds(60, random => {
            const scene = randomScene(random);
            const width = random.whole(180, 500);
            const [unit, per] = random.of([
                ['mm', 1000],
                ['in', 1 / 0.0254],
            ] as const);
            for (const laid of lay(Object.values(VIEWS), corners(scene), { ...SHEET, width })) {
                const bar = scaleBar(laid, unit, per);
                if (!bar) {
                    continue;
                }
                drawn++;
                const { left, right } = laid.view;
                must(bar.from > widthOf(`← ${left}`), 'the bar begins on a word');
                const end = bar.from + bar.wide + 6 + widthOf(bar.words);
                must(end < width - widthOf(`${right} →`), 'the bar ends on a word');
                const length = Number(bar.words.replace(` ${unit}`, ''));
                must(Math.abs((length / per) * laid.scale - bar.wide) < 1e-6, bar.words);
                must(/^0*[.]?0*[125]0*(\.0*)? /.test(bar.words), `${bar.words} is not round`);
            }
        });
        expect(drawn).toBeGreaterThan(150);
    });

    test('every group is named, or said to be crowded out', () => {
        forSeeds(50, random => {
            const scene = randomScene(random);
            for (const laid of lay([VIEWS.above], corners(scene), SHEET)) {
                const groups = new Set(
                    [...scene.fans, ...scene.parts.filter(part => part.kind === 'pack')].map(each =>
                        groupOf(each.id),
                    ),
                );
                const { names, crowded } = rigLabels(scene, laid);
                expect(names.length + crowded.length).toBe(groups.size);
            }
        });
    });
});

describe('labels', () => {
    test('keep off what is reserved, and say so when there is no room', () => {
        const labels = new Labels(100, 40);
        labels.reserve({ left: 0, top: 0, right: 100, bottom: 40 });
        expect(labels.centred(50, 20, 'x')).toBeUndefined();
        expect(labels.beside({ left: 40, top: 10, right: 60, bottom: 30 }, 'x')).toBeUndefined();
    });

    test('far ones have a line to what they name', () => {
        const labels = new Labels(400, 400);
        const thing = { left: 190, top: 190, right: 210, bottom: 210 };
        labels.reserve({ left: 150, top: 150, right: 250, bottom: 250 });
        const found = labels.beside(thing, 'far');
        const [x1 = NaN, y1 = NaN, x2 = NaN, y2 = NaN] = found?.leader ?? [];
        expect(x2).toBeGreaterThanOrEqual(thing.left);
        expect(x2).toBeLessThanOrEqual(thing.right);
        expect(y2).toBeGreaterThanOrEqual(thing.top);
        expect(y2).toBeLessThanOrEqual(thing.bottom);
        expect(Math.hypot(x1 - x2, y1 - y2)).toBeGreaterThan(16);
    });

    test('a long name keeps head and tail, in whole characters', () => {
        const name = `a fan with a name of no end ${'🚀'.repeat(20)}`;
        expect(Array.from(short(name))).toHaveLength(36);
        expect(short(name)).toMatch(/^a fan with a name of no …🚀{11}$/u);
        expect(short('left')).toBe('left');
        expect(widthOf('MMMM')).toBeGreaterThan(widthOf('iiii'));
    });
});
