import { useId } from 'preact/hooks';
import type { LogProblem } from '../../core/wire';
import type { Way } from '../../state/reading';
import { useBay } from '../context';
import { Understood } from './Understood';

/** Reading in a log: choose files, see what was understood, keep it as a test or let it go. */
export function ReadLog() {
    const bay = useBay();
    const id = useId();
    const way = bay.reading.way.value;
    const busy = way.at === 'sending' || way.at === 'reading';
    return (
        <section class="read-log" aria-label="Reading in a log">
            <p class="row">
                <label for={id}>Logs of one test, as CSV</label>
                <input
                    id={id}
                    type="file"
                    multiple
                    accept=".csv,.tsv,.txt,text/csv,text/plain"
                    disabled={busy}
                    onChange={event => {
                        const files = [...(event.currentTarget.files ?? [])];
                        event.currentTarget.value = ''; // the same file again is a change as well
                        void bay.reading.take(files);
                    }}
                />
            </p>
            <Far way={way} />
            {way.at === 'understood' && <Understood way={way} />}
            {way.at === 'refused' && way.problems.length > 0 && (
                <Problems problems={way.problems} />
            )}
        </section>
    );
}

function Far({ way }: { way: Way }) {
    const bay = useBay();
    return (
        <div class="row far">
            <p role="status" class={way.at === 'refused' ? 'is-unmet' : ''}>
                {words(way)}
            </p>
            {way.at === 'sending' && (
                <progress max={way.total} value={way.sent} aria-label={`Sending ${way.name}`} />
            )}
            {way.at === 'reading' && <progress aria-label="Reading in" />}
            {(way.at === 'sending' || way.at === 'reading') && (
                <button
                    type="button"
                    class="plain small"
                    onClick={() => {
                        void bay.reading.drop();
                    }}
                >
                    Stop
                </button>
            )}
        </div>
    );
}

function words(way: Way): string {
    switch (way.at) {
        case 'nothing':
            return '';
        case 'sending':
            return `Sending ${way.name}.`;
        case 'reading':
            return 'Being read in.';
        case 'understood':
            return 'Read in, not kept yet. Look at what was understood.';
        case 'refused':
        case 'kept':
            return way.sentence;
    }
}

/** Why nothing was read in, and what would mend it. */
function Problems({ problems }: { problems: readonly LogProblem[] }) {
    return (
        <ul class="log-problems" aria-label="Why nothing was read in">
            {problems.map(({ source, line, column, found, expected, advice }, k) => (
                <li key={k}>
                    <strong>
                        {source}
                        {line > 0 && `, line ${line}`}
                        {column !== '' && `, ${column}`}
                    </strong>
                    : found {found}; expected {expected}.{advice !== '' && ` ${advice}`}
                </li>
            ))}
        </ul>
    );
}
