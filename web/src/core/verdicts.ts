import type { AnswerDocument, Question, Stage, Told } from './wire';

/** Where the answer to one question stands. */
export interface Rung {
    question: Question;
    /** The last answer, also when the rig has changed since. */
    document?: AnswerDocument;
    stage?: Stage;
    /** The state of the rig it was computed for. */
    of?: string;
    /** 'fresh': this is the rig it speaks of. 'stale': the rig has changed since. */
    state: 'unasked' | 'asking' | 'fresh' | 'stale' | 'stopped' | 'refused';
    progress?: { stage: string; done: number; total: number };
    refused?: string;
}

export type Rungs = Record<Question, Rung>;

/** As they stand under each other. */
export const QUESTIONS: readonly Question[] = [
    'lift',
    'endurance',
    'heat',
    'balance',
    'failures',
    'restraint',
    'flight',
    'trials',
    'learning',
];

/** As they are asked: what takes longest comes last. */
export const ASKED: readonly Question[] = [
    'lift',
    'endurance',
    'balance',
    'restraint',
    'trials',
    'learning',
    'heat',
    'failures',
    'flight',
];

/** Questions as they are asked; before all others comes what lies open: a reader waits for it. */
export function openFirst(open: Question | undefined, questions: readonly Question[]): Question[] {
    return [...questions].sort((one, other) => Number(other === open) - Number(one === open));
}

/** What takes too long for a hand to wait for it, or tells a hand nothing. */
export const DEAR: readonly Question[] = [
    'heat',
    'failures',
    'restraint',
    'flight',
    'trials',
    'learning',
];

export function unasked(): Rungs {
    return {
        lift: { question: 'lift', state: 'unasked' },
        endurance: { question: 'endurance', state: 'unasked' },
        heat: { question: 'heat', state: 'unasked' },
        balance: { question: 'balance', state: 'unasked' },
        failures: { question: 'failures', state: 'unasked' },
        restraint: { question: 'restraint', state: 'unasked' },
        flight: { question: 'flight', state: 'unasked' },
        trials: { question: 'trials', state: 'unasked' },
        learning: { question: 'learning', state: 'unasked' },
    };
}

/** The rig is another now: what was answered stays to be read, greyed. */
export function changed(rungs: Rungs): Rungs {
    return each(rungs, rung =>
        settled(rung, rung.document === undefined ? 'unasked' : 'stale', true),
    );
}

export function asked(rungs: Rungs, questions: readonly Question[] = QUESTIONS): Rungs {
    return each(rungs, rung =>
        questions.includes(rung.question) ? settled(rung, 'asking', true) : rung,
    );
}

export function told(rungs: Rungs, revision: string, line: Told): Rungs {
    if ('document' in line) {
        const { question, stage, document } = line;
        const state = stage === 'whole' ? 'fresh' : 'asking';
        return { ...rungs, [question]: { question, document, stage, of: revision, state } };
    }
    if ('progress' in line) {
        const { question, ...progress } = line.progress;
        return { ...rungs, [question]: { ...rungs[question], progress } };
    }
    if ('refused' in line) {
        const refused = line.refused;
        const refuse = (rung: Rung): Rung => ({ ...settled(rung, 'refused', true), refused });
        return line.question === undefined
            ? each(rungs, refuse)
            : { ...rungs, [line.question]: refuse(rungs[line.question]) };
    }
    return ended(rungs, revision, line.end === 'stopped');
}

/** The stream has ended; what it did not come to say stays unsaid. */
export function ended(rungs: Rungs, revision: string, stopped: boolean): Rungs {
    return each(rungs, rung => {
        if (rung.state !== 'asking') return rung;
        if (rung.of !== revision) {
            return settled(rung, rung.document === undefined ? 'unasked' : 'stale', false);
        }
        return settled(rung, stopped && rung.stage !== 'whole' ? 'stopped' : 'fresh', false);
    });
}

function settled(rung: Rung, state: Rung['state'], forget: boolean): Rung {
    const { refused, ...rest } = rung;
    delete rest.progress;
    return refused === undefined || forget ? { ...rest, state } : { ...rest, refused, state };
}

function each(rungs: Rungs, by: (rung: Rung) => Rung): Rungs {
    return {
        lift: by(rungs.lift),
        endurance: by(rungs.endurance),
        heat: by(rungs.heat),
        balance: by(rungs.balance),
        failures: by(rungs.failures),
        restraint: by(rungs.restraint),
        flight: by(rungs.flight),
        trials: by(rungs.trials),
        learning: by(rungs.learning),
    };
}
