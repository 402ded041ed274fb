import { between, type Axis } from './axis';
import type { AnswerDocument, Timeline, Value } from './wire';

export interface TimelineRow {
    readonly part: string;
    readonly what: string;
    /** When its limit is reached, or how long was looked. */
    readonly when: string;
    /** What it came to, of what is allowed, where, and why it may come to its limit yet. */
    readonly below: string;
    readonly at: Value;
    /** From the start, SI; absent where the limit is not reached: the bar is open. */
    readonly reached?: number;
}
export interface TimelineRows {
    readonly rows: readonly TimelineRow[];
    /** How many bars without a limit reached are left to the table. */
    readonly left: number;
    readonly axis: Axis;
}

/** Of bars that come to no limit only the first are drawn: a large rig has a hundred of them. */
const MOST_OPEN = 10;
const MOST_REACHED = 40;

/** When a limit is reached, in words. */
export function whenOf(timeline: Timeline, at: Value): string {
    switch (at.kind) {
        case 'amount':
        case 'words':
            return at.shown;
        case 'never':
        case 'not computed':
            return `not within ${timeline.horizon.shown}`;
    }
}

/** What falls to its limit: charge and voltages. All else rises to it. */
const FALLING: readonly string[] = ['charge-left', 'least-cell-voltage', 'fan-voltage'];

function against(worst: Value, limit: Value): string {
    if (worst.kind !== 'amount') return worst.shown;
    return FALLING.includes(worst.field)
        ? `down to ${worst.shown}, ${limit.shown} allowed`
        : `${worst.shown} of ${limit.shown}`;
}

export function timelineRows(timeline: Timeline, fields: AnswerDocument['fields']): TimelineRows {
    const rows = timeline.bars.map(({ part, what, at, hottest, limit, where }): TimelineRow => {
        return {
            part,
            what,
            when: whenOf(timeline, at),
            below: [against(hottest, limit), where, at.reason ?? ''].filter(Boolean).join('; '),
            at,
            ...(at.kind === 'amount' && at.si !== undefined ? { reached: at.si } : {}),
        };
    });
    const reached = rows.filter(row => row.reached !== undefined).slice(0, MOST_REACHED);
    const open = rows.filter(row => row.reached === undefined).slice(0, MOST_OPEN);
    const field = fields['time'];
    const end = Math.max(timeline.horizon.si ?? 0, ...reached.map(row => row.reached ?? 0));
    const { per, plus } = field ?? { per: 1, plus: 0 };
    return {
        rows: [...reached, ...open],
        left: rows.length - reached.length - open.length,
        axis: between(field, 'time', plus, end * per + plus),
    };
}
