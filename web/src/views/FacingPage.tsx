import { useEffect, useState } from 'preact/hooks';
import type { ComponentType } from 'preact';
import type { DeskView } from '../core/desk';
import { placedWords } from '../core/problems';
import type { Problem } from '../core/wire';
import { useBay } from './context';
import type { EditorProps } from './editor/Editor';
import { Outline } from './Outline';

/** The rig file, open beside the answer: as text or as outline of the same text. */
export function FacingPage({ view }: { view: DeskView }) {
    const bay = useBay();
    const outlined = bay.outlined.value;
    return (
        <section id="facing" class="facing" aria-label="Rig file" tabIndex={-1}>
            <div class="facing-head">
                <h2>{view.document.rig}</h2>
                <div class="row" role="group" aria-label="Shown as">
                    <button
                        type="button"
                        class="plain small"
                        aria-pressed={!outlined}
                        onClick={() => {
                            bay.outlined.value = false;
                        }}
                    >
                        Text
                    </button>
                    <button
                        type="button"
                        class="plain small"
                        aria-pressed={outlined}
                        onClick={() => {
                            bay.outlined.value = true;
                        }}
                    >
                        Outline
                    </button>
                    <button
                        type="button"
                        class="plain small"
                        aria-label="Close the rig file"
                        onClick={() => {
                            bay.facing.value = false;
                        }}
                    >
                        Close
                    </button>
                </div>
            </div>
            {outlined ? <Outline view={view} /> : <TextOfRig view={view} />}
            <Problems view={view} />
        </section>
    );
}

function TextOfRig({ view }: { view: DeskView }) {
    const bay = useBay();
    const [editor, setEditor] = useState<{ Editor: ComponentType<EditorProps> } | undefined>();
    useEffect(() => {
        let wanted = true;
        // Without the editor the text can still be read and changed, so a failure is not told.
        import('./editor/Editor').then(
            ({ default: Editor }) => {
                if (wanted) setEditor({ Editor });
            },
            () => undefined,
        );
        return () => {
            wanted = false;
        };
    }, []);
    if (editor === undefined) {
        return (
            <textarea
                class="bare-text"
                aria-label="Text of the rig file"
                spellcheck={false}
                value={view.text}
                onInput={event => {
                    bay.type(event.currentTarget.value);
                }}
            />
        );
    }
    return <editor.Editor bay={bay} view={view} />;
}

const WEIGHT: Record<Problem['severity'], number> = { error: 0, warning: 1, note: 2 };

function Problems({ view }: { view: DeskView }) {
    const bay = useBay();
    const problems = [...view.document.problems].sort(
        (a, b) => WEIGHT[a.severity] - WEIGHT[b.severity] || a.from - b.from,
    );
    const errors = problems.filter(({ severity }) => severity === 'error').length;
    const others = problems.length - errors;
    const words =
        problems.length === 0
            ? 'Reads without a problem.'
            : `${count(errors, 'error')}${errors > 0 && others > 0 ? ', ' : ''}${count(others, 'note')}.`;
    return (
        <section class="problems" aria-label="Problems of the rig file">
            <p role="status" class={errors > 0 ? 'is-unmet' : ''}>
                {words}
                {!view.document.readable && ' The questions wait until it can be read.'}
            </p>
            {problems.length > 0 && (
                <ul tabIndex={0} aria-label="List of problems">
                    {problems.map(problem => (
                        <li key={`${problem.code} ${problem.from} ${problem.path}`}>
                            <button
                                type="button"
                                class="link"
                                onClick={() => {
                                    bay.outlined.value = false;
                                    bay.look.value = { from: problem.from, to: problem.to };
                                }}
                            >
                                {problem.severity}, line {problem.line}
                            </button>{' '}
                            {placedWords(problem)}
                        </li>
                    ))}
                </ul>
            )}
        </section>
    );
}

function count(n: number, what: string): string {
    return n === 0 ? '' : `${n} ${what}${n === 1 ? '' : 's'}`;
}
