import { Fragment } from 'preact';
import { useEffect } from 'preact/hooks';
import { besides } from '../../core/besides';
import {
    COMPARED,
    drawingOf,
    foldedSections,
    openSections,
    otherName,
    otherNamed,
} from '../../core/compare';
import { testsOf } from '../../core/learning';
import type { AnswerDocument, Question, Section, Table } from '../../core/wire';
import { BeforeAndNow, BesidePicture, Picture } from '../../pictures';
import type { ComparedNow } from '../../state/comparing';
import { useBay } from '../context';
import { Evidence } from '../Evidence';
import { Findings } from '../Findings';
import { Fold } from '../Fold';
import { OutcomeMark, outcomeClass, outcomeWords } from '../outcome';

/** Two revisions beside each other: what changed in the file, in every answer, in the drawn rig. */
export function CompareSheet() {
    const bay = useBay();
    const { comparing } = bay;
    const now = comparing.now.value;
    const view = bay.desk.value;
    if (view === undefined) return null;
    const compared = now?.compared;
    const old = now !== undefined && now.of !== view.document.revision;
    return (
        <article class={`answer compare ${outcomeClass(compared?.answer.verdict.outcome)}`}>
            <h2>What is different from before?</h2>
            <Choice />
            {now !== undefined && <State now={now} old={old} />}
            {compared !== undefined && (
                <div class={old ? 'verdict-line old' : 'verdict-line'}>
                    <p class="verdict">
                        <OutcomeMark outcome={compared.answer.verdict.outcome} />
                        <span>
                            <strong>{outcomeWords(compared.answer.verdict.outcome)}</strong>:{' '}
                            {compared.answer.verdict.shown}
                        </span>
                    </p>
                </div>
            )}
            {compared !== undefined && compared.answer.findings.length > 0 && (
                <Findings document={compared} />
            )}
            {compared !== undefined &&
                openSections(compared).map(section => (
                    <One key={section.id} section={section} document={compared} old={old} />
                ))}
            {now !== undefined && <Drawn now={now} old={old} />}
            {compared !== undefined && (
                <section class="numbers" aria-labelledby="numbers">
                    <h3 id="numbers">Every number that differs</h3>
                    {foldedSections(compared).length === 0 && <p class="quiet">None.</p>}
                    {foldedSections(compared).map(section => (
                        <Fold key={section.id} title={section.title}>
                            {() => <One section={section} document={compared} old={old} />}
                        </Fold>
                    ))}
                </section>
            )}
            {compared !== undefined && (
                <Evidence evidence={compared.answer.evidence} fields={compared.fields} />
            )}
        </article>
    );
}

function Choice() {
    const bay = useBay();
    const { comparing } = bay;
    const own = bay.desk.value?.document.rig;
    useEffect(() => {
        void bay.list();
    }, [bay]);
    const rigs = (bay.folder.value?.rigs ?? []).filter(rig => rig.path !== own);
    const log = bay.asks.rungs.value.learning.document;
    const tests = log === undefined ? [] : testsOf(log.answer.sections, log.fields);
    const question = bay.open.value;
    const one = question !== undefined && COMPARED.includes(question) ? question : 'lift';
    const asking = comparing.now.value?.state === 'asking';
    const start = (questions: readonly Question[]) => () => {
        void comparing.start(questions);
    };
    return (
        <div class="row compare-choice">
            <label class="pick">
                <span>The rig as it stands, against</span>
                <select
                    value={otherName(comparing.other.value)}
                    onChange={event => {
                        comparing.other.value = otherNamed(event.currentTarget.value);
                    }}
                >
                    <option value="saved">its file as saved</option>
                    {tests.map(test => (
                        <option key={test.id} value={`test ${test.id}`}>
                            the rig of test {test.id}
                        </option>
                    ))}
                    {rigs.map(rig => (
                        <option key={rig.path} value={`file ${rig.path}`}>
                            {rig.path}
                        </option>
                    ))}
                </select>
            </label>
            <button type="button" class="strong" onClick={start([one])}>
                Compare {one}
            </button>
            <button type="button" class="plain" onClick={start(COMPARED)}>
                Compare every answer (minutes)
            </button>
            {asking && (
                <button
                    type="button"
                    class="plain"
                    onClick={() => {
                        comparing.stop();
                    }}
                >
                    Stop
                </button>
            )}
            <button
                type="button"
                class="plain"
                onClick={() => {
                    comparing.open.value = false;
                    document.getElementById('sheet')?.focus({ preventScroll: true });
                }}
            >
                Back to the question
            </button>
        </div>
    );
}

function State({ now, old }: { now: ComparedNow; old: boolean }) {
    const before = old ? 'This speaks of the rig before your last change. ' : '';
    const far = now.progress;
    return (
        <p class="state" aria-live="polite">
            {before}
            {now.state === 'asking' &&
                (far === undefined || far.total <= 0
                    ? 'Being compared.'
                    : `Being compared: ${far.stage}, ${Math.floor((100 * far.done) / far.total)} %.`)}
            {now.state === 'stopped' && 'Stopped before its end: without a verdict.'}
            {now.state === 'refused' && `Cannot be compared: ${now.refused ?? ''}`}
        </p>
    );
}

/** Both revisions in the same pictures, of their declared values. */
function Drawn({ now, old }: { now: ComparedNow; old: boolean }) {
    const bay = useBay();
    const before = drawingOf(now.before.balance);
    const after = drawingOf(now.after.balance);
    const onShow = (part: string): void => {
        bay.show(part);
    };
    return (
        <>
            {besides(now.before, now.after).map(({ of, beside }) => {
                const { id } = beside.kind === 'plot' ? beside.plot : beside.now;
                return (
                    <BesidePicture
                        key={`${of.answer.question} ${id}`}
                        beside={beside}
                        fields={of.fields}
                        units={bay.taste.units.value}
                        fileName={`${of.rig.name ?? 'rig'}-${id}-beside`}
                        stale={old}
                        onShow={onShow}
                    />
                );
            })}
            {before !== undefined && after !== undefined && (
                <BeforeAndNow
                    before={before}
                    now={after}
                    fields={now.after.balance?.fields ?? {}}
                    onShow={onShow}
                />
            )}
        </>
    );
}

interface OneProps {
    section: Section;
    document: AnswerDocument;
    old: boolean;
}

function One({ section, document, old }: OneProps) {
    const bay = useBay();
    if (section.id === 'file-changes' && section.kind === 'table') {
        return <FileChanges table={section} />;
    }
    return (
        <Picture
            section={section}
            fields={document.fields}
            units={bay.taste.units.value}
            fileName={`${document.rig.name ?? 'rig'}-${section.id}`}
            selected={bay.selected.value}
            stale={old}
            onShow={part => {
                bay.show(part);
            }}
        />
    );
}

/** Each place leads to where it stands in the file. */
function FileChanges({ table }: { table: Table }) {
    const bay = useBay();
    return (
        <div class="picture table">
            <div class="scroll" tabIndex={0} role="region" aria-label={table.title}>
                <table class="numbers">
                    <caption>{table.title}</caption>
                    <thead>
                        <tr>
                            <th scope="col">place</th>
                            <th scope="col">what became of it</th>
                            <th scope="col">before</th>
                            <th scope="col">now</th>
                        </tr>
                    </thead>
                    <tbody>
                        {table.rows.map((row, k) => {
                            const [place, what, from, to] = row.map(cell => cell.shown);
                            return (
                                <tr key={k}>
                                    <th scope="row">
                                        <button
                                            type="button"
                                            class="link"
                                            onClick={() => {
                                                bay.show(undefined, place);
                                            }}
                                        >
                                            {place?.split('/').map((step, n) => (
                                                <Fragment key={n}>
                                                    {n > 0 && (
                                                        <>
                                                            /<wbr />
                                                        </>
                                                    )}
                                                    {step}
                                                </Fragment>
                                            ))}
                                        </button>
                                    </th>
                                    <td>{what}</td>
                                    <td>{from}</td>
                                    <td>{to}</td>
                                </tr>
                            );
                        })}
                    </tbody>
                </table>
            </div>
        </div>
    );
}
