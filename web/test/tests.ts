import type { AnswerDocument, Section, Strip, Strips, Value } from '../src/core/wire';
import { FIELDS, amount } from './pictures/faults';
import { table, words } from './cards';

// Answers about tests of the logbook of our own making, for tests: the numbers mean nothing.

export interface TestMade {
    id: string;
    on: string;
    card: string;
    outcome: string;
    missing: number | undefined;
}

export function logbook(tests: readonly TestMade[]): Section {
    return table(
        'tests',
        ['test', 'test-date', 'card', 'test-outcome', 'lift'],
        tests.map(({ id, on, card, outcome, missing }): Value[] => [
            words('test', id),
            words('test-date', on),
            words('card', card),
            words('test-outcome', outcome),
            missing === undefined ? words('lift', 'not told') : amount('lift', missing, 3),
        ]),
    );
}

export function strip(label: string, points = 5): Strip {
    const times = Array.from({ length: points }, (_, k) => k);
    return {
        label,
        field: 'lift',
        part: 'left.1',
        channel: label,
        times,
        measured: times.map(t => 20 + t),
        expected: times.map(t => 22 + t),
        low: times.map(t => 20.5 + t),
        high: times.map(t => 23.5 + t),
    };
}

export function strips(labels: readonly string[], events: Strips['events'] = []): Strips {
    return {
        kind: 'strips',
        id: 'strips',
        title: 'Measured and expected',
        strips: labels.map(label => strip(label)),
        events,
    };
}

export function learningAnswer(
    sections: Section[],
    shown: string,
    outcome: 'met' | 'not met' | 'cannot be told' | 'not judged' = 'not met',
): AnswerDocument {
    return {
        schema: '',
        tool: { name: 'liftwright', version: '0' },
        rig: { name: 'made up', digest: 'd' },
        corrections: 'none',
        seed: 1,
        fields: FIELDS,
        answer: {
            question: 'learning',
            verdict: { outcome, shown, downgrades: [] },
            findings: [],
            sections,
            evidence: {},
        },
    };
}
