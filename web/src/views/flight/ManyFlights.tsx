import { useState } from 'preact/hooks';
import type { AnswerDocument, Job, Section } from '../../core/wire';
import { Picture } from '../../pictures';
import { useBay } from '../context';
import { Evidence } from '../Evidence';
import { Findings } from '../Findings';
import { Fold } from '../Fold';
import { JobPanel } from '../jobs/JobPanel';
import { OutcomeMark, outcomeClass, outcomeWords } from '../outcome';
import { WorstFlights } from './WorstFlights';

/** What is read first of many flights, in this order; the rest is folded. */
const OPEN = ['flights-histogram', 'flights-ends', 'flights-drivers', 'flights-worst'];

/** The chosen profile flown many times, each time with every tolerance drawn. */
export function ManyFlights() {
    return (
        <section class="many-flights" aria-labelledby="many-flights">
            <h3 id="many-flights" tabIndex={-1}>
                Fly it many times
            </h3>
            <Ask />
            <JobPanel kind="flights">
                {(document, job) => <Told document={document} job={job} />}
            </JobPanel>
        </section>
    );
}

function Ask() {
    const bay = useBay();
    const [flights, setFlights] = useState('200');
    const [seed, setSeed] = useState('');
    const profile = bay.flights.chosen.value ?? bay.flights.profiles.value[0];
    const number = /^[1-9][0-9]{0,4}$/.test(flights.trim()) ? Number(flights) : undefined;
    const wrong =
        number === undefined
            ? 'So many flights can be flown: 1 to 99999.'
            : /^-?[0-9]{0,18}$/.test(seed.trim())
              ? undefined
              : 'A seed is a whole number.';
    return (
        <form
            class="ask-flights"
            aria-label="Fly it many times"
            onSubmit={event => {
                event.preventDefault();
                if (wrong !== undefined || number === undefined) return;
                void bay.jobs.begin({
                    kind: 'flights',
                    flights: number,
                    seed: seed.trim(),
                    ...(profile === undefined ? {} : { profile }),
                });
            }}
        >
            <p class="quiet">
                {profile ?? 'The usual profile'} is flown so many times, each time with every
                declared tolerance, the air and the errors of the sensors drawn anew. It goes on
                when this page is closed.
            </p>
            <p class="row">
                <label>
                    Flights{' '}
                    <input
                        inputMode="numeric"
                        size={6}
                        value={flights}
                        aria-invalid={number === undefined}
                        onInput={event => {
                            setFlights(event.currentTarget.value);
                        }}
                    />
                </label>
                <label>
                    Seed{' '}
                    <input
                        inputMode="numeric"
                        size={8}
                        value={seed}
                        placeholder="usual"
                        onInput={event => {
                            setSeed(event.currentTarget.value);
                        }}
                    />
                </label>
                <button type="submit" aria-disabled={wrong !== undefined}>
                    Fly them
                </button>
            </p>
            <p class="problem" role="status" hidden={wrong === undefined}>
                {wrong}
            </p>
        </form>
    );
}

function Told({ document, job }: { document: AnswerDocument; job: Job }) {
    const { verdict, sections, evidence } = document.answer;
    const rest = sections.filter(section => !OPEN.includes(section.id));
    return (
        <div class={`told-flights ${outcomeClass(verdict.outcome)}`}>
            <p class="verdict">
                <OutcomeMark outcome={verdict.outcome} />
                <span>
                    <strong>{outcomeWords(verdict.outcome)}</strong>: {verdict.shown}
                </span>
            </p>
            {verdict.downgrades.length > 0 && (
                <ul class="downgrades">
                    {verdict.downgrades.map(reason => (
                        <li key={reason}>{reason}</li>
                    ))}
                </ul>
            )}
            <div class="pictures flights">
                {OPEN.flatMap(id => sections.filter(section => section.id === id)).map(section => (
                    <One key={section.id} section={section} document={document} job={job} />
                ))}
            </div>
            <Findings document={document} of="many flights" />
            {rest.map(section => (
                <Fold key={section.id} title={section.title}>
                    {() => <One section={section} document={document} job={job} />}
                </Fold>
            ))}
            <Evidence evidence={evidence} fields={document.fields} of="many flights" />
        </div>
    );
}

function One({ section, document, job }: { section: Section; document: AnswerDocument; job: Job }) {
    const bay = useBay();
    const picture = (
        <Picture
            section={section}
            fields={document.fields}
            units={bay.taste.units.value}
            fileName={`${document.rig.name ?? 'rig'}-${section.id}`}
            stale={job.stale !== undefined}
            onShow={part => {
                bay.show(part);
            }}
        />
    );
    return section.id === 'flights-worst' && section.kind === 'table' ? (
        <>
            <WorstFlights table={section} fields={document.fields} job={job} />
            <Fold title="The worst of them, with the commands that fly them again">
                {() => picture}
            </Fold>
        </>
    ) : (
        picture
    );
}
