import type { AnswerDocument, Change, Drawing, Question, Section } from './wire';

/** Questions that a rig file alone answers: they can be put to two revisions. */
export const COMPARED: readonly Question[] = [
    'lift',
    'endurance',
    'balance',
    'heat',
    'failures',
    'restraint',
];

/** What the rig as it stands is compared with, which came before. */
export type Other =
    { kind: 'saved' } | { kind: 'file'; file: string } | { kind: 'test'; test: string };

/** Down the stream of /api/compare. */
export type CompareTold =
    | { before: AnswerDocument }
    | { after: AnswerDocument }
    | { compared: AnswerDocument }
    | { progress: { stage: string; done: number; total: number } }
    | { refused: string }
    | { end: 'done' | 'stopped' };

/** As the choice calls it, and back. */
export function otherName(other: Other): string {
    switch (other.kind) {
        case 'saved':
            return 'saved';
        case 'file':
            return `file ${other.file}`;
        case 'test':
            return `test ${other.test}`;
    }
}

export function otherNamed(name: string): Other {
    if (name.startsWith('file ')) return { kind: 'file', file: name.slice(5) };
    if (name.startsWith('test ')) return { kind: 'test', test: name.slice(5) };
    return { kind: 'saved' };
}

export function otherBody(other: Other): { file?: string; test?: string } {
    if (other.kind === 'file') return { file: other.file };
    return other.kind === 'test' ? { test: other.test } : {};
}

export function drawingOf(document: AnswerDocument | undefined): Drawing | undefined {
    return document?.answer.sections.find(
        (section): section is Drawing => section.kind === 'drawing',
    );
}

/** What stands open: verdicts and the file; the tables of single answers are folded. */
export function openSections(document: AnswerDocument): Section[] {
    return document.answer.sections.filter(({ id }) => OPEN.includes(id));
}

export function foldedSections(document: AnswerDocument): Section[] {
    return document.answer.sections.filter(({ id }) => !OPEN.includes(id));
}

const OPEN: readonly string[] = ['verdicts-compared', 'file-changes'];

/** One declared value that moves a verdict, as /api/sensitivities tells it. */
export interface Sensitivity {
    path: string;
    label: string;
    /** Change of the judged number from what is declared to the upper end, SI. */
    moves: number;
    shownMoves: string;
    share?: number;
    shownShare?: string;
    /** Values over its band as the file would say them; none where it cannot be set by itself. */
    stops: string[];
    shown: string[];
}

export type SensitivityTold =
    | { judged: string; sensitivities: Sensitivity[] }
    | { progress: { stage: string; done: number; total: number } }
    | { refused: string }
    | { end: 'done' | 'stopped' };

/** The stop at which a slider stands before it is moved: what is declared. */
export function declaredStop(of: Sensitivity): number {
    return (of.stops.length - 1) / 2;
}

/** What all sliders that were moved change together. */
export function changesOf(
    all: readonly Sensitivity[],
    at: ReadonlyMap<string, number>,
): { changes: Change[]; label: string } {
    const moved = all.flatMap(each => {
        const stop = at.get(each.path);
        const value = stop === undefined ? undefined : each.stops[stop];
        return value === undefined || stop === declaredStop(each) ? [] : [{ each, value }];
    });
    return {
        changes: moved.map(({ each, value }) => ({ kind: 'set', at: each.path, value })),
        label: moved.map(({ each, value }) => `${each.label} ${value}`).join(', '),
    };
}
