import { useState } from 'preact/hooks';
import { wayOf } from '../../core/trials';
import type { Way } from '../../state/reading';
import { useBay } from '../context';

/** What is said of a test besides its logs. Nothing is filled in but the day that a log tells. */
export function KeepForm({ way }: { way: Extract<Way, { at: 'understood' }> }) {
    const bay = useBay();
    const told = way.read.files.find(({ begin }) => begin !== undefined)?.begin;
    const [date, setDate] = useState(told?.slice(0, 10) ?? '');
    const [card, setCard] = useState('');
    const [who, setWho] = useState('');
    const [note, setNote] = useState('');
    const view = bay.desk.value;
    const saved = view?.document.saved === true && !view.unsent;
    const dated = /^\d{4}-\d\d-\d\d$/.test(date.trim());
    const cards = wayOf(bay.asks.rungs.value.trials.document?.answer.sections ?? []).flatMap(
        rung => rung.cards,
    );
    return (
        <form
            class="pass-form"
            aria-label="Keep it as a test"
            onSubmit={event => {
                event.preventDefault();
                if (!dated || !saved) return;
                void bay.reading.keep({ date: date.trim(), card, who: who.trim(), note });
            }}
        >
            <p class="quiet">
                Kept with the rig as it is now, as files of its own beside the rig file. It is never
                changed afterwards.
            </p>
            <Line label="Day of the test, such as 2026-03-14" value={date} put={setDate} />
            <div class="field">
                <label>
                    <span>Card that was run</span>
                    <select
                        value={card}
                        onChange={event => {
                            const { value } = event.currentTarget;
                            setCard(cards.find(each => each.id === value)?.id ?? '');
                        }}
                    >
                        <option value="">none of the cards</option>
                        {cards.map(({ id, title }) => (
                            <option key={id} value={id}>
                                {title}
                            </option>
                        ))}
                    </select>
                </label>
            </div>
            <Line label="Who was there, such as A. Nobody=watcher" value={who} put={setWho} />
            <div class="field">
                <label>
                    <span>What else was seen</span>
                    <textarea
                        rows={3}
                        value={note}
                        onInput={event => {
                            setNote(event.currentTarget.value);
                        }}
                    />
                </label>
            </div>
            <div class="row finish">
                <span class="quiet">
                    {!saved
                        ? 'Save the rig file first: a test keeps the rig that it was made with.'
                        : dated
                          ? ''
                          : 'Still open: the day of the test.'}
                </span>
                <button
                    type="button"
                    class="plain"
                    onClick={() => {
                        void bay.reading.drop();
                    }}
                >
                    Let it go
                </button>
                <button
                    type="submit"
                    class="strong"
                    aria-disabled={!dated || !saved || way.keeping}
                >
                    Keep it as a test
                </button>
            </div>
            <p role="status" class="is-unmet">
                {way.sentence}
            </p>
        </form>
    );
}

function Line({
    label,
    value,
    put,
}: {
    label: string;
    value: string;
    put: (value: string) => void;
}) {
    return (
        <div class="field">
            <label>
                <span>{label}</span>
                <input
                    type="text"
                    value={value}
                    onInput={event => {
                        put(event.currentTarget.value);
                    }}
                />
            </label>
        </div>
    );
}
