import { useEffect, useRef } from 'preact/hooks';
import { firstOf, LADDER } from '../core/questions';
import type { Rung, Rungs } from '../core/verdicts';
import type { AnswerDocument, Drawing, Section } from '../core/wire';
import { Picture, RigViews } from '../pictures';
import { useBay } from './context';
import { Evidence } from './Evidence';
import { Findings } from './Findings';
import { Fold } from './Fold';
import { isOld } from './Ladder';
import { OutcomeMark, outcomeClass, outcomeWords } from './outcome';
import { Sliders } from './sensitivity/Sliders';
import { Solid } from './Solid';
import { TrialBar } from './TrialBar';
import { Way } from './trials/Way';
import { ManyFlights } from './flight/ManyFlights';
import { ProfileChoice } from './flight/ProfileChoice';
import { Losses } from './jobs/Losses';
import { Why } from './learning/Why';

/** The question that is open: its verdict, its pictures, what was found, its numbers, what it rests on. */
export function Sheet() {
    const bay = useBay();
    const question = bay.open.value;
    const view = bay.desk.value;
    const shownBefore = useRef(question);
    useEffect(() => {
        if (shownBefore.current === question) return;
        shownBefore.current = question;
        document.getElementById('sheet')?.scrollIntoView({ block: 'start' });
    }, [question]);
    if (view === undefined || question === undefined) {
        return <p class="quiet">{bay.gate.state.value === 'in' ? 'The rig is being read.' : ''}</p>;
    }
    const asked = LADDER.find(each => each.question === question);
    const rung = bay.asks.rungs.value[question];
    const tried = bay.trial.tried.value?.rungs[question].document;
    const shown = tried ?? rung.document;
    const old = isOld(rung, view) && tried === undefined;
    return (
        <article class={`answer ${outcomeClass(rung.document?.answer.verdict.outcome)}`}>
            <h2>{asked?.words}</h2>
            <VerdictLine rung={rung} old={old} />
            {question === 'flight' && <ProfileChoice />}
            <TrialBar question={question} />
            {shown !== undefined && question === 'learning' && <Why document={shown} />}
            {shown !== undefined && question !== 'learning' && (
                <>
                    {question === 'trials' ? (
                        <Way document={shown} old={old} />
                    ) : (
                        <Pictures document={shown} question={question} old={old} />
                    )}
                    <Sliders question={question} />
                    {rung.document !== undefined && <Findings document={rung.document} />}
                    {question === 'failures' && <Losses />}
                    <Numbers document={shown} question={question} old={old} />
                    <Evidence evidence={shown.answer.evidence} fields={shown.fields} />
                </>
            )}
            {question === 'flight' && <ManyFlights />}
        </article>
    );
}

function VerdictLine({ rung, old }: { rung: Rung; old: boolean }) {
    const bay = useBay();
    const verdict = rung.document?.answer.verdict;
    const asking = rung.state === 'asking';
    const readable = bay.desk.value?.document.readable === true;
    return (
        <div class={old ? 'verdict-line old' : 'verdict-line'}>
            {verdict !== undefined && (
                <p class="verdict">
                    <OutcomeMark outcome={verdict.outcome} />
                    <span>
                        <strong>
                            {verdict.outcome === 'not judged' && asking
                                ? 'being judged'
                                : outcomeWords(verdict.outcome)}
                        </strong>
                        : {verdict.shown}
                    </span>
                </p>
            )}
            {rung.state === 'refused' && <p>Cannot be asked: {rung.refused}</p>}
            {verdict?.wouldTell !== undefined && <WouldTell tell={verdict.wouldTell} />}
            {verdict !== undefined && verdict.downgrades.length > 0 && (
                <ul class="downgrades">
                    {verdict.downgrades.map(reason => (
                        <li key={reason}>{reason}</li>
                    ))}
                </ul>
            )}
            <p class="state" hidden={stateWords(rung, old) === ''}>
                {stateWords(rung, old)}
                {asking && (
                    <button
                        type="button"
                        class="plain small"
                        onClick={() => {
                            bay.stop();
                        }}
                    >
                        Stop
                    </button>
                )}
                {(rung.state === 'stopped' || (rung.state === 'unasked' && readable)) && (
                    <button
                        type="button"
                        class="plain small"
                        onClick={() => {
                            bay.askAgain();
                        }}
                    >
                        Go on
                    </button>
                )}
            </p>
        </div>
    );
}

function stateWords(rung: Rung, old: boolean): string {
    const before = old ? 'This speaks of the rig before your last change. ' : '';
    switch (rung.state) {
        case 'unasked':
            return 'Not asked yet. ';
        case 'asking':
            if (rung.progress !== undefined && rung.progress.total > 0) {
                const { stage, done, total } = rung.progress;
                return `${before}Being answered: ${stage}, ${Math.floor((100 * done) / total)} %. `;
            }
            return `${before}Being answered. `;
        case 'stopped':
            return `${before}Stopped before its end. `;
        case 'refused':
        case 'stale':
        case 'fresh':
            return before;
    }
}

function WouldTell({ tell }: { tell: { path: string; shown: string } }) {
    const bay = useBay();
    return (
        <p>
            What would tell: {tell.shown}{' '}
            <button
                type="button"
                class="plain small"
                onClick={() => {
                    bay.show(undefined, tell.path);
                }}
            >
                Show it in the file
            </button>
        </p>
    );
}

interface PartsOfAnswer {
    document: AnswerDocument;
    question: Rung['question'];
    old: boolean;
}

function Pictures({ document, question, old }: PartsOfAnswer) {
    const sections = firstOf(question, document.answer.sections);
    return (
        <div class={`pictures ${question}${old ? ' old' : ''}`}>
            {sections.map(section => (
                <div key={section.id} id={`section-${section.id}`} tabIndex={-1}>
                    <One section={section} document={document} old={old} />
                </div>
            ))}
        </div>
    );
}

function Numbers({ document, question, old }: PartsOfAnswer) {
    const first = firstOf(question, document.answer.sections);
    const rest = document.answer.sections.filter(section => !first.includes(section));
    if (rest.length === 0) return null;
    return (
        <section class="numbers" aria-labelledby="numbers">
            <h3 id="numbers">More numbers</h3>
            {rest.map(section => (
                <div key={section.id} id={`section-${section.id}`} tabIndex={-1}>
                    <Fold title={section.title}>
                        {() => <One section={section} document={document} old={old} />}
                    </Fold>
                </div>
            ))}
        </section>
    );
}

function One({
    section,
    document,
    old,
}: {
    section: Section;
    document: AnswerDocument;
    old: boolean;
}) {
    const bay = useBay();
    const common = {
        fields: document.fields,
        units: bay.taste.units.value,
        fileName: `${document.rig.name ?? 'rig'}-${section.id}`,
        selected: bay.selected.value,
        stale: old,
        onShow: (part: string) => {
            bay.show(part);
        },
        chosen: bay.failure.value,
        onChoose: (failure: string) => {
            bay.failure.value = failure;
        },
    };
    if (section.kind === 'drawing') return <Rig drawing={section} common={common} />;
    const whole = section.kind !== 'timeline' && section.kind !== 'playback';
    const selected = whole ? common.selected : (bay.named.value ?? common.selected);
    const rig = ['playback', 'cases', 'elevation'].includes(section.kind)
        ? drawnIn(bay.asks.rungs.value, document.rig.digest)
        : undefined;
    return <Picture section={section} rig={rig} {...common} selected={selected} />;
}

/** The drawing of this very rig, in whichever answer has one. */
function drawnIn(rungs: Rungs, digest: string): Drawing | undefined {
    return Object.values(rungs)
        .filter(rung => rung.document?.rig.digest === digest)
        .flatMap(rung => rung.document?.answer.sections ?? [])
        .find(section => section.kind === 'drawing');
}

function Rig({
    drawing,
    common,
}: {
    drawing: Drawing;
    common: Omit<Parameters<typeof Picture>[0], 'section'>;
}) {
    const bay = useBay();
    const rungs = bay.asks.rungs.value;
    const about = Object.values(rungs).flatMap(rung => rung.document?.answer.sections ?? []);
    const tried = bay.trial.tried.value;
    const told = Object.values(tried?.rungs ?? {}).flatMap(
        rung => rung.document?.answer.verdict.shown ?? [],
    );
    const props = {
        ...common,
        drawing,
        parts: bay.desk.value?.document.parts ?? [],
        about,
        told,
        moved: bay.moving.moved.value,
        onDrag: (drag: Parameters<typeof bay.moving.drag>[0]) => bay.moving.drag(drag),
    };
    return (
        <>
            <RigViews {...props} />
            <Solid {...props} />
        </>
    );
}
