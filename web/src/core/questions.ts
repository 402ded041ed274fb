import type { Question, Section } from './wire';

/** The questions of a workshop, in their order. */
export interface Asked {
    words: string;
    question: Question;
    /** What the questions are called where there is no room for the sentence. */
    short: string;
}

export const LADDER: readonly Asked[] = [
    { words: 'Will it lift me?', short: 'Lift', question: 'lift' },
    {
        words: 'For how long?',
        short: 'Endurance',
        question: 'endurance',
    },
    {
        words: 'What gives out first, and when?',
        short: 'Heat',
        question: 'heat',
    },
    {
        words: 'Is it balanced, and which way will it turn?',
        short: 'Balance',
        question: 'balance',
    },
    { words: 'What if something fails?', short: 'Failures', question: 'failures' },
    { words: 'What must hold it down?', short: 'Restraint', question: 'restraint' },
    { words: 'Will the flight computer hold it?', short: 'Holding', question: 'flight' },
    {
        words: 'How do I test it without hurting anyone?',
        short: 'Tests',
        question: 'trials',
    },
    { words: 'Why did it not do what was promised?', short: 'Why', question: 'learning' },
];

/** Sections that are the picture of a question, in the order in which they are read; the rest is folded. */
export const FIRST: Record<Question, readonly string[]> = {
    lift: ['lift-waterfall'],
    endurance: ['ends', 'voltage-over-time', 'charge-over-time', 'thrust-later'],
    heat: ['first-limits', 'heat-playback', 'losses', 'temperatures'],
    balance: ['rig-drawn', 'turning', 'roll-ledger', 'pitch-ledger', 'yaw-ledger'],
    failures: ['failures', 'failure-cases', 'goes-next'],
    restraint: ['restraint-elevation', 'stand-elevation', 'stand-loads', 'tether-loads', 'heights'],
    flight: ['flight-strips', 'loops', 'losses-flown', 'flight-events'],
    trials: ['today'], // and the way of the cards
    learning: ['missing-lift', 'causes', 'next-tests', 'events'], // of the test that lies open; then its strips
};

/** Kinds of sections that are pictures and nothing else. */
const DRAWN: readonly Section['kind'][] = ['matrix', 'cases', 'elevation', 'card', 'strips'];

/** Sections of an answer that stand open, in the order in which they are read. */
export function firstOf(question: Question, sections: readonly Section[]): Section[] {
    const order = FIRST[question];
    const place = (section: Section): number => {
        const at = order.indexOf(section.id);
        return at < 0 ? order.length : at;
    };
    return sections
        .filter(section => order.includes(section.id) || DRAWN.includes(section.kind))
        .sort((a, b) => place(a) - place(b));
}
