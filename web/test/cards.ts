import type { CardState } from '../src/core/trials';
import type { AnswerDocument, Card, Section, Table, Value } from '../src/core/wire';
import { amount, FIELDS } from './pictures/faults';

// Answers about trials of our own making, for tests: the numbers mean nothing.

export interface CardMade {
    id: string;
    title: string;
    rung: string;
    state: CardState | 'something new';
    why?: string;
    on?: string;
    until?: string;
    minutes: number;
}

export function words(field: string, text: string): Value {
    return { field, kind: 'words', text, shown: text, shownBand: '' };
}

export function table(id: string, columns: string[], rows: Value[][]): Table {
    return { kind: 'table', id, title: `table ${id}`, columns, rows };
}

export function programme(cards: readonly CardMade[]): Table {
    const columns = [
        'card',
        'card-title',
        'rung',
        'card-state',
        'card-why',
        'passed-on',
        'passed-until',
        'card-minutes',
    ];
    return table(
        'programme',
        columns,
        cards.map(card => [
            words('card', card.id),
            words('card-title', card.title),
            words('rung', card.rung),
            words('card-state', card.state),
            words('card-why', card.why ?? ''),
            words('passed-on', card.on ?? ''),
            words('passed-until', card.until ?? ''),
            amount('card-minutes', card.minutes),
        ]),
    );
}

export function voided(rows: readonly [string, string, string, string][]): Table {
    const columns = ['card', 'input', 'input-was', 'input-is'];
    return table(
        'voided',
        columns,
        rows.map(row => row.map((text, k) => words(columns[k] ?? '', text))),
    );
}

export function reproof(cards: readonly CardMade[]): Table {
    return table(
        'reproof',
        ['card', 'card-title', 'card-minutes'],
        cards.map(card => [
            words('card', card.id),
            words('card-title', card.title),
            amount('card-minutes', card.minutes),
        ]),
    );
}

export function cardOf(id: string, title: string): Card {
    return {
        kind: 'card',
        id,
        title,
        state: 'open',
        shown: `purpose of ${title}`,
        blocks: [
            { kind: 'lines', title: 'People', style: 'plain', lines: [{ shown: 'two at least' }] },
            {
                kind: 'lines',
                title: 'Start list',
                style: 'tick',
                lines: [{ shown: 'kill in hand' }, { shown: 'nobody in the plane' }],
            },
            {
                kind: 'lines',
                title: 'Emergency',
                style: 'number',
                lines: [{ shown: 'kill' }, { shown: 'wait' }],
            },
            { kind: 'lines', title: 'Signed', style: 'write', lines: [{ shown: 'pilot' }] },
            table(
                `${id}-steps`,
                ['share', 'lift'],
                [[amount('share', 0.5), amount('lift', 99, 7)]],
            ),
            {
                ...table(
                    `${id}-aborts`,
                    ['part', 'lift'],
                    [[words('part', 'left.1'), amount('lift', 123)]],
                ),
                title: 'Stop at',
            },
        ],
    };
}

export function trialsAnswer(
    sections: Section[],
    shown = 'proved as far as one fan',
): AnswerDocument {
    return {
        schema: '',
        tool: { name: 'liftwright', version: '0' },
        rig: { name: 'made up', digest: 'd' },
        corrections: 'none',
        seed: 1,
        fields: FIELDS,
        answer: {
            question: 'trials',
            verdict: { outcome: 'not met', shown, downgrades: [] },
            findings: [],
            sections,
            evidence: {},
        },
    };
}
