import type { CardRung, CardState, CardStep } from '../../core/trials';
import { useBay } from '../context';
import { CardMark } from './CardMark';
import { goToCard } from './places';

const SAID: readonly { state: CardState; words: string; none: string }[] = [
    { state: 'passed', words: 'Still proved today', none: 'no card' },
    { state: 'voided', words: 'Voided by what has changed since', none: '' },
    { state: 'expired', words: 'Passed too long ago', none: '' },
    { state: 'open', words: 'Open: may be done next', none: 'no card' },
];

/** What is proved, what is proved no more, and what may be done next; what is closed stands on the way below. */
export function Standing({ way }: { way: readonly CardRung[] }) {
    const cards = way.flatMap(({ cards }) => cards);
    return (
        <section class="standing" aria-labelledby="standing">
            <h3 id="standing">What stands today</h3>
            <dl>
                {SAID.map(({ state, words, none }) => (
                    <Those
                        key={state}
                        state={state}
                        words={words}
                        none={none}
                        cards={cards.filter(card => card.state === state)}
                    />
                ))}
            </dl>
        </section>
    );
}

interface ThoseProps {
    state: CardState;
    words: string;
    /** Told where there is none; nothing is, where it is empty. */
    none: string;
    cards: readonly CardStep[];
}

function Those({ state, words, none, cards }: ThoseProps) {
    const bay = useBay();
    if (cards.length === 0 && none === '') return null;
    return (
        <div class={state}>
            <dt>
                <CardMark state={state} />
                {words}
            </dt>
            <dd>
                {cards.length === 0 && <span class="quiet">{none}</span>}
                <ul>
                    {cards.map(({ id, title }) => (
                        <li key={id}>
                            <button
                                type="button"
                                class="link"
                                onClick={() => {
                                    bay.cards.show(id);
                                    goToCard(id);
                                }}
                            >
                                {title}
                            </button>
                        </li>
                    ))}
                </ul>
            </dd>
        </div>
    );
}
