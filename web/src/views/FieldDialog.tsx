import { useEffect, useRef } from 'preact/hooks';
import type { AnswerDocument, FieldWords } from '../core/wire';
import type { Bay } from '../state/bay';
import { useBay } from './context';

/** What a number means, how it is computed, where that comes from and what checks it. */
export function FieldDialog() {
    const bay = useBay();
    const dialog = useRef<HTMLDialogElement>(null);
    const field = bay.field.value;
    const words = field === undefined ? undefined : fieldWords(bay, field);
    const open = field !== undefined;
    useEffect(() => {
        if (open) dialog.current?.showModal();
        else dialog.current?.close();
    }, [open]);
    return (
        <dialog
            ref={dialog}
            class="help field"
            aria-labelledby="field-title"
            onClose={() => {
                bay.field.value = undefined;
            }}
        >
            {open && (
                <>
                    <h2 id="field-title">{words?.label ?? field}</h2>
                    {words === undefined ? (
                        <p>Nothing is known of it.</p>
                    ) : (
                        <FieldList field={field} words={words} />
                    )}
                    <button
                        type="button"
                        class="strong"
                        onClick={() => {
                            bay.field.value = undefined;
                        }}
                    >
                        Close
                    </button>
                </>
            )}
        </dialog>
    );
}

export function FieldList({ field, words }: { field: string; words: FieldWords }) {
    return (
        <dl class="facts">
            {(
                [
                    ['meaning', words.meaning],
                    ['unit', words.unit === '' ? 'a plain number or words' : words.unit],
                    ['formula', words.formula],
                    ['source', words.source],
                    ['test', words.test],
                    ['name in JSON', field],
                ] as const
            ).map(([label, text]) => (
                <div key={label}>
                    <dt>{label}</dt>
                    <dd>{text ?? 'not told'}</dd>
                </div>
            ))}
        </dl>
    );
}

/** As whichever answer that lies on the page tells it. */
function fieldWords(bay: Bay, field: string): FieldWords | undefined {
    const documents: (AnswerDocument | undefined)[] = [
        bay.comparing.now.value?.compared,
        ...Object.values(bay.asks.rungs.value).map(rung => rung.document),
        ...Object.values(bay.tests.rungs.value).map(rung => rung.document),
    ];
    for (const document of documents) {
        const found = document?.fields[field];
        if (found !== undefined) return found;
    }
    return undefined;
}

/** The field of the number that was pointed at, where it is one. */
export function fieldAt(target: EventTarget | null): string | undefined {
    const at = target instanceof Element ? target.closest('[data-field]') : null;
    return at?.getAttribute('data-field') ?? undefined;
}
