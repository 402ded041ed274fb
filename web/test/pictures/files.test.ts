import { describe, expect, test } from 'vitest';
import { csvOf, field } from '../../src/core/csv';
import { DISK, RIGHT_HAND } from '../../src/core/fanShape';
import { numbersOf, type Numbers } from '../../src/core/numbers';
import { beside, flattened, xml } from '../../src/core/svg';
import type { Value } from '../../src/core/wire';
import { svgText } from '../../src/pictures/save';
import { forSeeds } from './random';

const HOSTILE = [
    '=1+1',
    '+44',
    '-nose',
    '@here',
    'a,b',
    'say "x"',
    'two\nlines',
    ' blank ',
    '<script>alert(1)</script>',
    ']]>',
    '&amp;',
    'null\u0000bell\u0007',
    '\u202eturned',
    '日本',
];

/** A reader of CSV of its own: RFC 4180, one pass. */
function read(text: string): string[][] {
    const rows: string[][] = [[]];
    let cell = '';
    let quoted = false;
    for (let i = 0; i < text.length; i++) {
        const c = text[i];
        if (quoted) {
            if (c === '"' && text[i + 1] === '"') {
                cell += '"';
                i++;
            } else if (c === '"') {
                quoted = false;
            } else {
                cell += c ?? '';
            }
        } else if (c === '"') {
            quoted = true;
        } else if (c === ',' || c === '\r') {
            rows.at(-1)?.push(cell);
            cell = '';
            if (c === '\r') {
                rows.push([]);
                i++;
            }
        } else {
            cell += c ?? '';
        }
    }
    return rows.slice(0, -1);
}

function amount(si: number, band?: [number, number]): Value {
    return {
        field: 'f',
        kind: 'amount',
        si,
        unit: 'N.m',
        shown: 'about so much',
        shownBand: '',
        ...(band && {
            band: { low: band[0], high: band[1], coverage: 0.95, method: 'm', draws: 1 },
        }),
    };
}

describe('CSV', () => {
    test('gives numbers back with every digit and words as they were, but for the guard', () => {
        forSeeds(200, random => {
            const words = random.of(HOSTILE);
            const si = random.between(-1, 1) * 10 ** random.whole(-12, 12);
            const band: [number, number] = [si - 1, si + random.next()];
            const table: Numbers = {
                id: 't',
                title: 'T',
                heads: [
                    { label: words, siUnit: '' },
                    { label: 'moment [N·m]', siUnit: 'N.m' },
                ],
                rows: [
                    [
                        { words, number: false },
                        { words: 'shown', number: true, si, value: amount(si, band) },
                    ],
                ],
            };
            const [head, row] = read(csvOf([table]));
            const guarded = /^[=+\-@]/.test(words) ? `'${words}` : words;
            expect(head).toEqual([
                guarded,
                'moment [N.m]',
                'moment low [N.m]',
                'moment high [N.m]',
            ]);
            expect(row?.[0]).toBe(guarded);
            expect(row?.slice(1).map(Number)).toEqual([si, ...band]);
        });
    });

    test('no word begins what a spreadsheet would compute', () => {
        for (const words of HOSTILE) {
            const cell = field(words);
            const inside = cell.startsWith('"') ? cell.slice(1) : cell;
            expect(inside).not.toMatch(/^[=+\-@\t\r\n]/);
        }
    });

    test('several tables stand below each other with their titles', () => {
        const table = (title: string): Numbers => ({
            id: title,
            title,
            heads: [{ label: 'time', siUnit: 's' }],
            rows: [[{ words: '1', number: true, si: 1 }]],
        });
        expect(csvOf([table('one'), table('two')])).toBe(
            'one\r\ntime [s]\r\n1\r\n\r\ntwo\r\ntime [s]\r\n1\r\n',
        );
        expect(csvOf([table('one')])).toBe('time [s]\r\n1\r\n');
    });

    test('what was never reached is said in words', () => {
        const never: Value = { field: 'time', kind: 'never', shown: 'never', shownBand: '' };
        const tables = numbersOf(
            { kind: 'table', id: 't', title: 'T', columns: ['time'], rows: [[never]] },
            { time: { label: 'reached after', unit: 's', per: 1, plus: 0 } },
        );
        expect(csvOf(tables)).toBe('reached after\r\nnever\r\n');
    });
});

function element(name: string, attributes: Record<string, string>, text = ''): SVGElement {
    const made = document.createElementNS('http://www.w3.org/2000/svg', name);
    Object.entries(attributes).forEach(([key, value]) => {
        made.setAttribute(key, value);
    });
    made.textContent = text;
    return made;
}

function parsed(text: string): Document {
    return new DOMParser().parseFromString(text, 'application/xml');
}

describe('SVG', () => {
    test('text and attributes survive, whatever they are', () => {
        for (const words of HOSTILE) {
            const text = xml({
                name: 'text',
                attributes: { id: words },
                children: [words],
            });
            const broken = words.replace(/[\u0000\u0007]/g, '\ufffd'); // eslint-disable-line no-control-regex -- XML holds none
            expect(text.match(/<[^/]/g)).toHaveLength(1);
            const root = parsed(text).documentElement;
            expect(root.textContent).toBe(broken);
            expect(root.getAttribute('id')).toBe(broken);
        }
    });

    test('no element or attribute is made by a name', () => {
        expect(() => xml({ name: 'a b', attributes: {}, children: [] })).toThrow('no element');
        expect(xml({ name: 'g', attributes: { 'x onload="': '1' }, children: [] })).toBe('<g></g>');
    });

    test('pictures beside each other do not touch', () => {
        const node = { name: 'svg', attributes: { viewBox: '0 0 10 20' }, children: [] };
        const both = beside(
            [
                { node, width: 10, height: 20, title: 'a' },
                { node, width: 30, height: 5, title: 'b' },
            ],
            '#fff',
            {},
        );
        const svgs = Array.from(parsed(xml(both)).documentElement.children).filter(
            each => each.localName === 'svg',
        );
        const [first, second] = svgs.map(each => Number(each.getAttribute('x')));
        expect(svgs).toHaveLength(2);
        expect(second ?? 0).toBeGreaterThan((first ?? NaN) + 10);
    });

    test('a saved picture carries its look, no script, and nothing meant for the hand', () => {
        const svg = element('svg', { class: 'drawn', viewBox: '0 0 10 10', onload: 'x()' });
        svg.setAttribute('data-title', 'A <b>');
        const hand = element('g', { class: 'hand hand-only' });
        hand.append(element('path', { d: 'M0 0' }));
        svg.append(
            element('rect', { class: 'taken', x: '1', fill: 'url(#h)', 'data-part': '=evil' }),
            hand,
            element('script', {}, 'alert(1)'),
            element('a', { href: 'https://example.org' }, 'link'),
            element('text', { x: '1' }, '<b> & more'),
        );
        document.body.append(svg);
        const text = svgText([svg as SVGSVGElement]);
        const root = parsed(text).documentElement;
        expect(root.querySelectorAll('svg')).toHaveLength(1);
        expect(root.querySelector('rect[x]')?.getAttribute('fill')).toBe('url(#h)');
        expect(root.querySelector('path')).toBeNull();
        expect(text).not.toMatch(/onload|<script|data-part|class=|href|example\.org/);
        expect(root.textContent).toContain('<b> & more');
        expect(root.textContent).toContain('A <b>');
        svg.remove();
    });

    test('a fan is drawn where its matrix puts it, without the matrix', () => {
        const matrix = [20, 5, -3, 8, 100, 200];
        const numbers = (d: string): [number, number][] =>
            Array.from(d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g), each => [
                Number(each[1]),
                Number(each[2]),
            ]);
        const put = (x: number, y: number) => [20 * x - 3 * y + 100, 5 * x + 8 * y + 200] as const;
        const corners = numbers(flattened(DISK, matrix));
        expect(corners.length).toBeGreaterThan(30);
        corners.forEach(([x, y], k) => {
            const angle = (2 * Math.PI * k) / 32;
            const [wantedX, wantedY] = put(Math.cos(angle), Math.sin(angle));
            expect(x).toBeCloseTo(wantedX, 1);
            expect(y).toBeCloseTo(wantedY, 1);
        });
        const own = numbers(RIGHT_HAND);
        expect(own.length).toBe(40);
        numbers(flattened(RIGHT_HAND, matrix)).forEach(([x, y], k) => {
            const [wantedX, wantedY] = put(...(own[k] ?? [NaN, NaN]));
            expect(x).toBeCloseTo(wantedX, 1);
            expect(y).toBeCloseTo(wantedY, 1);
        });
    });

    test('nothing drawn is no picture', () => {
        expect(() => svgText([])).toThrow('nothing is drawn');
    });
});
