import type { CardState } from '../../core/trials';

/** Where a card stands, as a shape: a box that is ticked, empty, barred or struck through; beside its word. */
export function CardMark({ state }: { state: CardState }) {
    return (
        <svg class="card-mark" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
            {state === 'passed' ? (
                <>
                    <rect x="1" y="1" width="14" height="14" class="full" />
                    <path d="M4 8.5 7 11.5 12 5" class="cut" />
                </>
            ) : (
                <rect
                    x="1.75"
                    y="1.75"
                    width="12.5"
                    height="12.5"
                    class={state === 'expired' ? 'rim dotted' : 'rim'}
                />
            )}
            {state === 'closed' && <path d="M2 5.5H14M2 10.5H14" class="rim" />}
            {(state === 'voided' || state === 'expired') && (
                <path d="M4 8.5 7 11.5 12 5" class="rim" />
            )}
            {state === 'voided' && <path d="M0.5 15.5 15.5 0.5" class="rim strike" />}
        </svg>
    );
}
