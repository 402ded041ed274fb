import { useState } from 'preact/hooks';
import type { Outcome } from '../../core/wire';
import { useBay } from '../context';

const OUTCOMES: readonly { value: Outcome['outcome']; words: string }[] = [
    { value: 'passed', words: 'passed: every step within its band' },
    { value: 'aborted', words: 'aborted: stopped at an abort value' },
    { value: 'failed', words: 'failed: outside of a band' },
    { value: 'unexplained', words: 'unexplained: something that nobody can tell why' },
];

/** What came of a card, to be written beside the rig file. Nothing is filled in that nobody said. */
export function PassForm({ card, title }: { card: string; title: string }) {
    const bay = useBay();
    const [outcome, setOutcome] = useState<Outcome['outcome'] | ''>('');
    const [who, setWho] = useState('');
    const [repeats, setRepeats] = useState('');
    const [notes, setNotes] = useState('');
    const [said, setSaid] = useState({ done: false, sentence: '' });
    const [sending, setSending] = useState(false);
    const view = bay.desk.value;
    const saved = view?.document.saved === true && !view.unsent;
    const open = [
        ...(outcome === '' ? ['what came of it'] : []),
        ...(who.trim() === '' ? ['who did it'] : []),
        ...(/^\d{1,4}$/.test(repeats.trim()) ? [] : ['clean runs in a row, a whole number']),
    ];
    const record = async () => {
        if (outcome === '' || open.length > 0 || !saved || sending) return;
        setSending(true);
        setSaid(
            await bay.cards.record(card, {
                outcome,
                who: who.trim(),
                repeats: Number(repeats),
                notes: notes.trim(),
            }),
        );
        setSending(false);
    };
    return (
        <form
            class="pass-form"
            aria-label={`What came of ${title}`}
            onSubmit={event => {
                event.preventDefault();
                void record();
            }}
        >
            <p class="quiet">
                Written with today’s date and what the card rests on, as a file of its own beside
                the rig file. It is never changed afterwards: record what happened, also what went
                wrong.
            </p>
            <div class="field">
                <label>
                    <span>What came of it</span>
                    <select
                        value={outcome}
                        onChange={event => {
                            const { value } = event.currentTarget;
                            setOutcome(OUTCOMES.find(each => each.value === value)?.value ?? '');
                        }}
                    >
                        <option value="">choose</option>
                        {OUTCOMES.map(({ value, words }) => (
                            <option key={value} value={value}>
                                {words}
                            </option>
                        ))}
                    </select>
                </label>
            </div>
            <Line label="Who did it" value={who} put={setWho} />
            <Line label="Clean runs in a row" value={repeats} put={setRepeats} numeric />
            <div class="field">
                <label>
                    <span>Notes</span>
                    <textarea
                        rows={3}
                        value={notes}
                        onInput={event => {
                            setNotes(event.currentTarget.value);
                        }}
                    />
                </label>
            </div>
            <div class="row finish">
                <span class="quiet">
                    {!saved
                        ? 'Save the rig file first: a pass speaks of what is written in it.'
                        : open.length > 0
                          ? `Still open: ${open.join(', ')}.`
                          : ''}
                </span>
                <button
                    type="submit"
                    class="strong"
                    aria-disabled={open.length > 0 || !saved || sending}
                >
                    Record it
                </button>
            </div>
            <p role="status" class={said.done ? '' : 'is-unmet'}>
                {said.sentence}
            </p>
        </form>
    );
}

interface LineProps {
    label: string;
    value: string;
    put: (value: string) => void;
    numeric?: boolean;
}

function Line({ label, value, put, numeric }: LineProps) {
    return (
        <div class="field">
            <label>
                <span>{label}</span>
                <input
                    type="text"
                    inputMode={numeric ? 'numeric' : 'text'}
                    value={value}
                    onInput={event => {
                        put(event.currentTarget.value);
                    }}
                />
            </label>
        </div>
    );
}
