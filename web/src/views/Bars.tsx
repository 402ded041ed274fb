import { compare } from '../core/merge';
import { QUESTIONS } from '../core/verdicts';
import { useEffect, useState } from 'preact/hooks';
import { LADDER } from '../core/questions';
import { outcomeWords } from './outcome';
import { useBay } from './context';

/** What needs the reader: a link, or a choice between two versions. */
export function Bars() {
    return (
        <>
            <Reconnect />
            <Clash />
            <Announcer />
        </>
    );
}

/** What was merged, recovered, kept or refused. It stands in the head, so that nothing jumps when it comes. */
export function Told() {
    const bay = useBay();
    const { sentence, count } = bay.told.value;
    return (
        <div class="told" role="status">
            {sentence !== '' && (
                <p key={count}>
                    <span>{sentence}</span>
                    <button
                        type="button"
                        class="plain small"
                        onClick={() => {
                            bay.told.value = { sentence: '', count };
                            document.getElementById('sheet')?.focus({ preventScroll: true });
                        }}
                    >
                        Read
                    </button>
                </p>
            )}
        </div>
    );
}

function Reconnect() {
    const bay = useBay();
    if (bay.gate.state.value !== 'out' || bay.desk.value === undefined) return null;
    return (
        <section class="bar warn" aria-label="The server was started again">
            <p>{bay.gate.sentence.value}</p>
            <LinkField />
        </section>
    );
}

/** Where the link of a new run is pasted. */
export function LinkField() {
    const bay = useBay();
    const [link, setLink] = useState('');
    const enter = () => {
        if (link.trim() === '') return;
        if (elsewhere(link)) location.assign(link.trim());
        else void bay.gate.enter(link);
    };
    return (
        <div class="row">
            <label>
                Link{' '}
                <input
                    type="text"
                    value={link}
                    onInput={event => {
                        setLink(event.currentTarget.value);
                    }}
                    onKeyDown={event => {
                        if (event.key === 'Enter') enter();
                    }}
                />
            </label>
            <button type="button" class="strong" onClick={enter}>
                Enter
            </button>
        </div>
    );
}

/** A link to another door of this machine: a page cannot speak to that from here. */
function elsewhere(link: string): boolean {
    try {
        const url = new URL(link.trim());
        return url.origin !== location.origin && ['127.0.0.1', 'localhost'].includes(url.hostname);
    } catch {
        return false;
    }
}

function Clash() {
    const bay = useBay();
    const view = bay.desk.value;
    const disk = view?.document.conflict;
    if (view === undefined) return null;
    if (view.clash !== undefined) {
        return (
            <Choice
                title="The same lines were changed here and elsewhere"
                sentence="Both versions are kept until you choose. The other one stays one undo away."
                mine={view.clash.mine}
                theirs={view.clash.theirs}
                theirsName="The one from elsewhere"
                take={which => {
                    bay.settle(which);
                }}
            />
        );
    }
    if (disk === undefined) return null;
    return (
        <Choice
            title="Another program wrote the file"
            sentence={disk.sentence}
            mine={view.text}
            theirs={disk.diskText}
            theirsName="The file on disk"
            take={which => {
                bay.resolve(which === 'mine' ? 'mine' : 'disk');
            }}
        />
    );
}

interface ChoiceProps {
    title: string;
    sentence: string;
    mine: string;
    theirs: string;
    theirsName: string;
    take: (which: 'mine' | 'theirs') => void;
}

function Choice({ title, sentence, mine, theirs, theirsName, take }: ChoiceProps) {
    const lines = compare(mine, theirs);
    return (
        <section class="bar warn" aria-label={title}>
            <h2>{title}</h2>
            <p>{sentence}</p>
            <div class="versions">
                <figure>
                    <figcaption>Yours</figcaption>
                    <pre tabIndex={0}>{lines.mine}</pre>
                    <button
                        type="button"
                        class="strong"
                        onClick={() => {
                            take('mine');
                        }}
                    >
                        Take yours
                    </button>
                </figure>
                <figure>
                    <figcaption>{theirsName}</figcaption>
                    <pre tabIndex={0}>{lines.theirs}</pre>
                    <button
                        type="button"
                        class="strong"
                        onClick={() => {
                            take('theirs');
                        }}
                    >
                        Take this one
                    </button>
                </figure>
            </div>
        </section>
    );
}

const QUIET_MS = 800;

/** Says a verdict to who cannot see it: once it is settled, and only when it is another than before. */
function Announcer() {
    const bay = useBay();
    const [said, say] = useState('');
    const settled = QUESTIONS.map(question => {
        const rung = bay.asks.rungs.value[question];
        if (rung.document === undefined || rung.stage === 'nominal') return '';
        const words = outcomeWords(rung.document.answer.verdict.outcome);
        const short = LADDER.find(asked => asked.question === question)?.short ?? question;
        return `${short}: ${words}.`;
    }).join(' ');
    useEffect(() => {
        if (settled.trim() === '') return undefined;
        const wait = setTimeout(() => {
            say(settled);
        }, QUIET_MS);
        return () => {
            clearTimeout(wait);
        };
    }, [settled]);
    return (
        <p class="unseen" role="status">
            {said}
        </p>
    );
}
