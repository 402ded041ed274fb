import { fallRows, wordsOf, type FallRow } from './rows';
import type { AnswerDocument, Plot, Question, Section, Waterfall } from './wire';

/** A step of a waterfall with what it was before; either may be missing. */
export interface BesideRow {
    readonly label: string;
    readonly now: FallRow | undefined;
    readonly was: FallRow | undefined;
}

/** Steps by their names, in the order of now; a step that is no more stands where it stood. */
export function besideRows(before: Waterfall, now: Waterfall): BesideRow[] {
    const old = fallRows(before);
    const rows: BesideRow[] = fallRows(now).map(row => ({
        label: row.label,
        now: row,
        was: old.find(each => each.label === row.label),
    }));
    old.forEach((was, k) => {
        if (rows.some(row => row.label === was.label)) return;
        const after = rows.findIndex(row => row.label === old[k - 1]?.label);
        rows.splice(after + 1, 0, { label: was.label, now: undefined, was });
    });
    return rows;
}

/** "1560 N, was 1512 N"; once, where both are told alike. */
export function besideWords({ now, was }: BesideRow): string {
    if (now === undefined) return `none, was ${was?.words ?? ''}`;
    if (was === undefined) return `${now.words}, was none`;
    return now.words === was.words ? now.words : `${now.words}, was ${wordsOf(was.value)}`;
}

/** So many lines can be told apart. */
const MOST_LINES = 5;

/**
 * One plot of two: what is now, then what differs as it was before. Undefined where they have not the same axes,
 * or more lines than can be told apart.
 */
export function besidePlot(before: Plot, now: Plot): Plot | undefined {
    if (before.x.field !== now.x.field || before.y.field !== now.y.field) return undefined;
    const same = (one: Plot['series'][number], other: Plot['series'][number]): boolean =>
        one.label === other.label &&
        one.mark === other.mark &&
        JSON.stringify(one.points) === JSON.stringify(other.points);
    const shared = now.series.filter(series => before.series.some(old => same(old, series)));
    const differing = (of: Plot, word: string) =>
        of.series
            .filter(series => !shared.some(each => same(each, series)))
            .map(series => ({ ...series, label: `${series.label || of.title}, ${word}` }));
    const series = [...differing(now, 'now'), ...differing(before, 'before'), ...shared];
    const lines = series.filter(each => each.mark === 'line').length;
    return lines > MOST_LINES ? undefined : { ...now, series };
}

/** A picture of an answer with the same of before. */
export type Beside =
    { kind: 'waterfall'; before: Waterfall; now: Waterfall } | { kind: 'plot'; plot: Plot };

export type Told = Partial<Record<Question, AnswerDocument>>;

/** Pictures that two revisions both have, question by question. */
export function besides(before: Told, now: Told): { of: AnswerDocument; beside: Beside }[] {
    return Object.values(now).flatMap(document => {
        const old = before[document.answer.question];
        return document.answer.sections.flatMap(section => {
            const beside = pair(
                old?.answer.sections.find(each => each.id === section.id),
                section,
            );
            return beside === undefined ? [] : [{ of: document, beside }];
        });
    });
}

function pair(before: Section | undefined, now: Section): Beside | undefined {
    if (before?.kind === 'waterfall' && now.kind === 'waterfall') {
        return { kind: 'waterfall', before, now };
    }
    if (before?.kind === 'plot' && now.kind === 'plot') {
        const plot = besidePlot(before, now);
        return plot && { kind: 'plot', plot };
    }
    return undefined;
}
