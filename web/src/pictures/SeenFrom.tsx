import { VIEWS, type ViewName } from '../core/view';

export interface SeenFromProps {
    sides: readonly ViewName[];
    side: ViewName;
    onSide: (side: ViewName) => void;
}

/** From which side a drawn rig is seen. */
export function SeenFrom({ sides, side, onSide }: SeenFromProps) {
    return (
        <p class="view-words" role="group" aria-label="seen from">
            seen{' '}
            {sides.map(each => (
                <button
                    key={each}
                    type="button"
                    aria-pressed={each === side}
                    onClick={() => {
                        onSide(each);
                    }}
                >
                    {VIEWS[each].words}
                </button>
            ))}
        </p>
    );
}
