import { numeral, shownOn } from '../../core/axis';
import type { Fields } from '../../core/cells';
import { lengthOf } from '../../core/span';
import { timeAxis } from '../../core/stripDrawn';
import type { StripEvent } from '../../core/wire';
import type { Show } from '../api';
import type { Looking } from './looking';

/** Shown about an event, as a share of the whole. */
const ABOUT = 0.1;

interface EventListProps {
    events: readonly StripEvent[];
    looking: Looking;
    fields: Fields;
    onShow: Show;
}

/** What happened, in words at its time; numbered as it is on the strips. Each leads there. */
export function EventList({ events, looking, fields, onShow }: EventListProps) {
    const t = timeAxis(looking.whole, fields);
    return (
        <ol class="strip-events" aria-label="What happened">
            {events.map((event, k) => (
                <li key={k}>
                    <button
                        type="button"
                        class="link"
                        onClick={() => {
                            const half = (ABOUT * lengthOf(looking.whole)) / 2;
                            looking.look({ from: event.time - half, to: event.time + half });
                            looking.point(event.time);
                            if (event.part !== '') onShow(event.part);
                        }}
                    >
                        {numeral(shownOn(t, event.time), t.step / 100)} {t.unit || 's'}
                    </button>{' '}
                    {event.label}
                </li>
            ))}
        </ol>
    );
}
