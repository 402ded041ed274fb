import { counted } from '../../core/cells';
import { rowsOf, tableNamed, titleOf, type CardStep } from '../../core/trials';
import type { AnswerDocument, Card, Section } from '../../core/wire';
import { Picture } from '../../pictures';
import { exact } from '../../pictures/TableView';
import { useBay } from '../context';
import { Fold } from '../Fold';
import { isOld } from '../Ladder';
import { goToCard } from './places';
import { OnPaper } from './OnPaper';
import { PassForm } from './PassForm';

/** One card to be read, printed and passed, with the cheapest way that proves it again. */
export function OpenCard({ card }: { card: CardStep }) {
    const bay = useBay();
    const rung = bay.cards.rungs.value.trials;
    const { document } = rung;
    const old = isOld(rung, bay.desk.value);
    const shown = document?.answer.sections.find(isCard);
    return (
        <div class={old ? 'open-card old' : 'open-card'}>
            <State old={old} />
            {document !== undefined && <Reproof document={document} card={card} />}
            {shown !== undefined && document !== undefined && (
                <>
                    <OnPaper card={card.id} title={card.title} />
                    <Picture
                        section={shown}
                        fields={document.fields}
                        units={bay.taste.units.value}
                        fileName={`${document.rig.name ?? 'rig'}-${card.id}`}
                        selected={bay.selected.value}
                        stale={old}
                        onShow={part => {
                            bay.show(part);
                        }}
                    />
                </>
            )}
            <Fold title="Record what came of it">
                {() => <PassForm card={card.id} title={card.title} />}
            </Fold>
        </div>
    );
}

function isCard(section: Section): section is Card {
    return section.kind === 'card';
}

function State({ old }: { old: boolean }) {
    const bay = useBay();
    const rung = bay.cards.rungs.value.trials;
    const before = old ? 'This is the card of the rig before your last change. ' : '';
    if (rung.state === 'asking') {
        const { progress } = rung;
        const far =
            progress !== undefined && progress.total > 0
                ? `: ${progress.stage}, ${Math.floor((100 * progress.done) / progress.total)} %`
                : '';
        return (
            <p class="state">
                {before}Being computed{far}.{' '}
                <button
                    type="button"
                    class="plain small"
                    onClick={() => {
                        bay.cards.stop();
                    }}
                >
                    Stop
                </button>
            </p>
        );
    }
    if (rung.state === 'refused') return <p class="state">Cannot be made: {rung.refused}</p>;
    if (rung.state === 'fresh') return null;
    return (
        <p class="state">
            {before}
            {rung.state === 'stopped' ? 'Stopped before its end. ' : ''}
            <button
                type="button"
                class="plain small"
                onClick={() => {
                    void bay.cards.ask();
                }}
            >
                Compute it
            </button>
        </p>
    );
}

/** The cards to be done for this one, cheapest first and last itself; each leads to its place on the way. */
function Reproof({ document, card }: { document: AnswerDocument; card: CardStep }) {
    const bay = useBay();
    const { sections, verdict } = document.answer;
    const rows = rowsOf(tableNamed(sections, 'reproof'));
    return (
        <section class="reproof">
            <h5>The cheapest way to prove it</h5>
            <p>{verdict.shown}</p>
            {rows.length > 0 && (
                <ol>
                    {rows.map(cell => {
                        const id = cell('card')?.shown ?? '';
                        const title = titleOf(cell);
                        const minutes = cell('card-minutes');
                        return (
                            <li key={id}>
                                {id === card.id ? (
                                    title
                                ) : (
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
                                )}
                                {minutes !== undefined && (
                                    <>
                                        ,{' '}
                                        <span {...exact(minutes)}>
                                            {counted(document.fields, minutes)}
                                        </span>
                                    </>
                                )}
                            </li>
                        );
                    })}
                </ol>
            )}
        </section>
    );
}
