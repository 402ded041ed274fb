import type { Scene } from './scene';
import { bareName } from './mounts';
import { labelOf } from './numbers';
import { wordsOf } from './rows';
import type { AnswerDocument, Part, Section, Table } from './wire';

/** A part on the drawing that can be chosen. */
export interface Named {
    readonly id: string;
    /** "fan, left-hand", "pack", "mount". */
    readonly what: string;
}

export function namedParts(scene: Scene): Named[] {
    return [
        ...scene.fans.map(fan => ({
            id: fan.id,
            what: `fan, ${fan.rightHand ? 'right-hand' : 'left-hand'}`,
        })),
        ...scene.parts.map(part => ({ id: part.id, what: part.kind })),
    ];
}

/** "left.3, fan, left-hand, 55.6 N". */
export function nameOf(scene: Scene, named: Named): string {
    const thrust = scene.fans.find(fan => fan.id === named.id)?.thrust;
    return [bareName(named.id), named.what, ...(thrust ? [thrust.shown] : [])].join(', ');
}

function tables(sections: readonly Section[]): Table[] {
    return sections.flatMap(section => {
        switch (section.kind) {
            case 'table':
                return [section];
            case 'drawing':
                return [...section.layers];
            case 'waterfall':
            case 'plot':
            case 'timeline':
            case 'shares':
            case 'playback':
            case 'matrix':
            case 'cases':
            case 'elevation':
            case 'card':
            case 'strips':
                return [];
        }
    });
}

export interface Fact {
    readonly label: string;
    readonly words: string;
}

/** What tables say of a part; of the same field the first. */
export function factsOf(
    part: string,
    sections: readonly Section[],
    fields: AnswerDocument['fields'],
): Fact[] {
    const facts = new Map<string, Fact>();
    for (const table of tables(sections)) {
        const at = table.columns.indexOf('part');
        for (const row of at < 0 ? [] : table.rows) {
            if (row[at]?.text !== part) {
                continue;
            }
            row.forEach((value, k) => {
                const field = table.columns[k] ?? '';
                if (k !== at && !/^push-/.test(field) && !facts.has(field)) {
                    facts.set(field, { label: labelOf(fields, field), words: wordsOf(value) });
                }
            });
        }
    }
    return [...facts.values()];
}

/** Why a part cannot be dragged; undefined when it can. */
export function whyNot(parts: readonly Part[], id: string): string | undefined {
    const part = parts.find(other => other.id === id);
    if (!part) {
        return 'The file does not place it by itself.';
    }
    return part.movable ? undefined : (part.why ?? 'It cannot be moved here.');
}
