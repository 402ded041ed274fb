import type { Verdict } from '../core/wire';

type Outcome = Verdict['outcome'];

export function outcomeWords(outcome: Outcome): string {
    return outcome;
}

/** The class that carries the colour of margin. */
export function outcomeClass(outcome: Outcome | undefined): string {
    switch (outcome) {
        case 'met':
            return 'is-met';
        case 'not met':
            return 'is-unmet';
        case 'cannot be told':
            return 'is-untold';
        case 'not judged':
        case undefined:
            return 'is-open';
    }
}

/** The outcome as a shape: never colour alone, and always beside its word. */
export function OutcomeMark({ outcome }: { outcome: Outcome | undefined }) {
    return (
        <svg class="outcome" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
            {outcome === 'met' && (
                <>
                    <rect x="1" y="1" width="14" height="14" class="full" />
                    <path d="M4 8.5 7 11.5 12 5" class="cut" />
                </>
            )}
            {outcome === 'not met' && (
                <>
                    <path d="M8 0.5 15.5 8 8 15.5 0.5 8Z" class="full" />
                    <path d="M4.5 8H11.5" class="cut" />
                </>
            )}
            {outcome === 'cannot be told' && (
                <>
                    <circle cx="8" cy="8" r="6.75" class="rim" />
                    <path d="M8 1.25a6.75 6.75 0 0 1 0 13.5Z" class="full" />
                </>
            )}
            {(outcome === 'not judged' || outcome === undefined) && (
                <circle cx="8" cy="8" r="5" class="rim dotted" />
            )}
        </svg>
    );
}
