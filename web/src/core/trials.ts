import { wordsOf } from './rows';
import type { Section, Table, Value } from './wire';

/** Where a card stands. */
export type CardState = 'passed' | 'open' | 'closed' | 'voided' | 'expired';

/** A card on the way from measured parts to free flight. */
export interface CardStep {
    readonly id: string;
    readonly title: string;
    readonly rung: string;
    readonly state: CardState;
    /** The same as it was told, which may say more than this page knows a shape for. */
    readonly word: string;
    /** Why it is closed, voided or expired; may be empty. */
    readonly why: string;
    /** Dates in words; empty where there are none. */
    readonly passedOn: string;
    readonly until: string;
    readonly minutes: Value | undefined;
}

/** The cards of one rung, in the order in which they are done. */
export interface CardRung {
    readonly rung: string;
    readonly cards: readonly CardStep[];
}

/** An input that is another than when a card was passed. */
export interface Voiding {
    readonly input: string;
    readonly was: string;
    readonly is: string;
}

/** Rows of a table by the names of its columns. */
export type Cells = (column: string) => Value | undefined;

export function tableNamed(sections: readonly Section[], id: string): Table | undefined {
    return sections.find((section): section is Table => isTable(section) && section.id === id);
}

function isTable(section: Section): section is Table {
    return section.kind === 'table';
}

export function rowsOf(table: Table | undefined): Cells[] {
    return (table?.rows ?? []).map(
        row => column => row[table?.columns.indexOf(column) ?? -1], // no column, no cell
    );
}

function words(cell: Value | undefined): string {
    return cell === undefined ? '' : wordsOf(cell);
}

/** A state that this page does not know opens nothing. */
function stateOf(word: string): CardState {
    switch (word) {
        case 'passed':
        case 'open':
        case 'voided':
        case 'expired':
            return word;
        default:
            return 'closed';
    }
}

/** What is done, and to what: several cards may do the same to one part each. */
export function titleOf(cell: Cells): string {
    const id = words(cell('card'));
    const title = words(cell('card-title'));
    const dot = id.indexOf('.');
    const subject = dot < 0 ? '' : id.slice(dot + 1);
    if (title === '') return id;
    return subject === '' || title.endsWith(subject) ? title : `${title}, ${subject}`;
}

/** The way, rung by rung, in the order of the answer. */
export function wayOf(sections: readonly Section[]): CardRung[] {
    const rungs: { rung: string; cards: CardStep[] }[] = [];
    for (const cell of rowsOf(tableNamed(sections, 'programme'))) {
        const rung = words(cell('rung'));
        const card: CardStep = {
            id: words(cell('card')),
            title: titleOf(cell),
            rung,
            state: stateOf(words(cell('card-state'))),
            word: words(cell('card-state')),
            why: words(cell('card-why')),
            passedOn: words(cell('passed-on')),
            until: words(cell('passed-until')),
            minutes: cell('card-minutes'),
        };
        const last = rungs.at(-1);
        if (last?.rung === rung) last.cards.push(card);
        else rungs.push({ rung, cards: [card] });
    }
    return rungs;
}

/** What has voided the passes, by card. */
export function voidingsOf(sections: readonly Section[]): Map<string, Voiding[]> {
    const all = new Map<string, Voiding[]>();
    for (const cell of rowsOf(tableNamed(sections, 'voided'))) {
        const card = words(cell('card'));
        const one = {
            input: words(cell('input')),
            was: words(cell('input-was')),
            is: words(cell('input-is')),
        };
        all.set(card, [...(all.get(card) ?? []), one]);
    }
    return all;
}
