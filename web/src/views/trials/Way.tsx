import { counted } from '../../core/cells';
import { voidingsOf, wayOf, type CardStep, type Voiding } from '../../core/trials';
import type { AnswerDocument } from '../../core/wire';
import { exact } from '../../pictures/TableView';
import { useBay } from '../context';
import { CardMark } from './CardMark';
import { OpenCard } from './OpenCard';
import { placeOf, walk } from './places';
import { Standing } from './Standing';
import { Today } from './Today';

interface WayProps {
    document: AnswerDocument;
    old: boolean;
}

/** How to test it: what stands today, the day's sheet, and the cards in the order of the way, one of them open. */
export function Way({ document, old }: WayProps) {
    const { sections } = document.answer;
    const way = wayOf(sections);
    const voidings = voidingsOf(sections);
    return (
        <div class={old ? 'trials old' : 'trials'}>
            <Standing way={way} />
            <Today document={document} old={old} />
            <section
                class="way"
                aria-labelledby="way"
                onKeyDown={event => {
                    if (walk(event.currentTarget, event.key)) event.preventDefault();
                }}
            >
                <h3 id="way">The way, card by card</h3>
                {way.map(({ rung, cards }, k) => (
                    <div key={k} class="way-rung">
                        <h4>{rung}</h4>
                        <ol>
                            {cards.map(card => (
                                <Step
                                    key={card.id}
                                    card={card}
                                    fields={document.fields}
                                    voidings={voidings.get(card.id) ?? []}
                                />
                            ))}
                        </ol>
                    </div>
                ))}
            </section>
        </div>
    );
}

interface StepProps {
    card: CardStep;
    fields: AnswerDocument['fields'];
    voidings: readonly Voiding[];
}

function Step({ card, fields, voidings }: StepProps) {
    const bay = useBay();
    const open = bay.cards.open.value === card.id;
    const place = placeOf(card.id);
    return (
        <li class={`card-step ${card.state}${open ? ' open' : ''}`}>
            <button
                type="button"
                id={place}
                class="card-row"
                aria-expanded={open}
                aria-controls={open ? `${place}-open` : undefined}
                data-card={card.id}
                onClick={() => {
                    bay.cards.turn(card.id);
                }}
            >
                <CardMark state={card.state} />
                <span class="title">{card.title}</span>
                <span class="card-state">
                    <strong>{card.word}</strong>
                    {dates(card)} <span class="card-id">{card.id}</span>
                </span>
                {card.minutes !== undefined && (
                    <span class="minutes" {...exact(card.minutes)}>
                        {counted(fields, card.minutes)}
                    </span>
                )}
            </button>
            {card.why !== '' && <p class="why">{card.why}</p>}
            {voidings.length > 0 && <Voidings card={card} voidings={voidings} />}
            {open && (
                <div id={`${place}-open`}>
                    <OpenCard card={card} />
                </div>
            )}
        </li>
    );
}

function dates({ passedOn, until }: CardStep): string {
    if (passedOn === '') return '';
    return until === '' ? ` ${passedOn}` : ` ${passedOn}, until ${until}`;
}

const FEW = 3;

/** What is another than on the day of the pass; the first few are in sight. */
function Voidings({ card, voidings }: { card: CardStep; voidings: readonly Voiding[] }) {
    const rest = voidings.slice(FEW);
    return (
        <>
            <ul class="voidings" aria-label={`What voids ${card.title}`}>
                {voidings.slice(0, FEW).map(each => (
                    <Changed key={each.input} voiding={each} />
                ))}
            </ul>
            {rest.length > 0 && (
                <details class="fold">
                    <summary>
                        More inputs that have changed
                        <span class="unseen"> for {card.title}</span>
                    </summary>
                    <ul class="voidings">
                        {rest.map(each => (
                            <Changed key={each.input} voiding={each} />
                        ))}
                    </ul>
                </details>
            )}
        </>
    );
}

function Changed({ voiding: { input, was, is } }: { voiding: Voiding }) {
    const bay = useBay();
    return (
        <li>
            <button
                type="button"
                class="link"
                onClick={() => {
                    bay.show(undefined, input);
                }}
            >
                {input}
            </button>
            : from <del>{was === '' ? 'nothing' : was}</del> to{' '}
            <ins>{is === '' ? 'nothing' : is}</ins>
        </li>
    );
}
