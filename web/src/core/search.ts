import type { Action } from './action';
import type { Rungs } from './verdicts';
import type { OutlineNode, Question, RigDocument } from './wire';

/** Something that can be found: what it is, where it is, and what leads there. */
export interface Found {
    kind: 'part' | 'file' | 'finding' | 'number' | 'table' | 'action';
    words: string;
    /** Where it stands, in words. */
    place: string;
    /** Found by these as well: the formula of a number, its source and its test. */
    by?: string;
    go:
        | { to: 'part'; part: string }
        | { to: 'path'; path: string }
        | { to: 'question'; question: Question; part?: string; path?: string; section?: string }
        | { to: 'field'; field: string }
        | { to: 'action'; id: string };
}

/** More is no help to a reader. */
export const MOST_FOUND = 40;

const ORDER: readonly Found['kind'][] = ['part', 'finding', 'number', 'table', 'file', 'action'];

/** Everything that can be found now. */
export function everything(
    document: RigDocument | undefined,
    rungs: Rungs,
    actions: readonly Action[],
): Found[] {
    return [
        ...(document?.parts ?? []).map((part): Found => ({
            kind: 'part',
            words: part.id,
            place: part.path,
            go: { to: 'part', part: part.id },
        })),
        ...(document?.outline ?? []).flatMap(inFile),
        ...answered(rungs),
        ...actions.map((action): Found => ({
            kind: 'action',
            words: action.label(),
            place: action.keys ?? 'menu',
            go: { to: 'action', id: action.id },
        })),
    ];
}

function inFile(node: OutlineNode): Found[] {
    const words = node.value === undefined ? node.path : `${node.path}: ${node.value}`;
    return [
        { kind: 'file', words, place: `line ${node.line}`, go: { to: 'path', path: node.path } },
        ...node.children.flatMap(inFile),
    ];
}

function answered(rungs: Rungs): Found[] {
    const fields = new Map<string, Found>();
    const found: Found[] = [];
    for (const { question, document } of Object.values(rungs)) {
        if (document === undefined) continue;
        for (const { shown, part, path, severity } of document.answer.findings) {
            found.push({
                kind: 'finding',
                words: shown,
                place: `${question}, ${severity}`,
                go: {
                    to: 'question',
                    question,
                    ...(part === undefined ? {} : { part }),
                    ...(path === undefined ? {} : { path }),
                },
            });
        }
        for (const { id, title } of document.answer.sections) {
            const go = { to: 'question', question, section: id } as const;
            found.push({ kind: 'table', words: title, place: question, go });
        }
        for (const [id, field] of Object.entries(document.fields)) {
            const words = `${field.label}: ${field.meaning ?? ''}`;
            const by = [field.formula, field.source, field.test].filter(Boolean).join(' ');
            const go = { to: 'field', field: id } as const;
            fields.set(id, { kind: 'number', words, place: id, by, go });
        }
    }
    return [...found, ...fields.values()];
}

/** What has every word of what was typed; what begins with it comes first. */
export function search(all: readonly Found[], typed: string): Found[] {
    const words = typed
        .toLowerCase()
        .split(/\s+/)
        .filter(word => word !== '');
    if (words.length === 0) return [];
    const hits = all.flatMap(found => {
        const text = `${found.words} ${found.place} ${found.kind} ${found.by ?? ''}`.toLowerCase();
        if (!words.every(word => text.includes(word))) return [];
        const name = found.words.toLowerCase();
        const first = words[0] ?? '';
        const rank =
            name === typed.toLowerCase()
                ? 0
                : name.startsWith(first)
                  ? 1
                  : name.includes(first)
                    ? 2
                    : 3;
        return [{ found, rank }];
    });
    return hits
        .sort(
            (a, b) => a.rank - b.rank || ORDER.indexOf(a.found.kind) - ORDER.indexOf(b.found.kind),
        )
        .slice(0, MOST_FOUND)
        .map(hit => hit.found);
}
