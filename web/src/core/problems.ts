import type { Problem } from './wire';

/** A problem in one line. A note has nothing to mend: it says only what it has to say. */
export function problemWords({ severity, found, expected, suggestion }: Problem): string {
    if (severity === 'note' && suggestion !== '') return suggestion;
    return [
        found,
        expected === '' ? '' : `; expected ${expected}`,
        suggestion === '' ? '' : `. ${suggestion}`,
    ].join('');
}

/** The same with the path it is about. */
export function placedWords(problem: Problem): string {
    return `${problem.path === '' ? '' : `${problem.path}: `}${problemWords(problem)}`;
}
