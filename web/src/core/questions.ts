import type { Question } from './wire';

/** The nine questions of a workshop, in their order; `question` where this version answers it. */
export interface Asked {
    words: string;
    question?: Question;
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
    { words: 'What if something fails?', short: 'Failures' },
    { words: 'Will the flight computer hold it?', short: 'Holding' },
    { words: 'How do I test it without hurting anyone?', short: 'Tests' },
    { words: 'Why did it not do what was promised?', short: 'Why' },
    { words: 'What should I change?', short: 'Change' },
];

/** Sections that are the picture of a question, in the order in which they are read; the rest is folded. */
export const FIRST: Record<Question, readonly string[]> = {
    lift: ['lift-waterfall'],
    endurance: ['ends', 'voltage-over-time', 'charge-over-time', 'thrust-later'],
    heat: ['first-limits', 'heat-playback', 'losses', 'temperatures'],
    balance: ['rig-drawn', 'turning', 'roll-ledger', 'pitch-ledger', 'yaw-ledger'],
};
