import type { DeskView } from '../core/desk';
import { LADDER, type Asked } from '../core/questions';
import type { Rung } from '../core/verdicts';
import { useBay } from './context';
import { OutcomeMark, outcomeClass, outcomeWords } from './outcome';

/** The questions under each other, each with its verdict always in sight. */
export function Ladder() {
    return (
        <nav id="ladder" class="ladder" aria-label="Questions" tabIndex={-1}>
            <ol>
                {LADDER.map((asked, index) => (
                    <li key={asked.words}>
                        <Step asked={asked} index={index} />
                    </li>
                ))}
            </ol>
        </nav>
    );
}

interface StepProps {
    asked: Asked;
    index: number;
}

function Step({ asked, index }: StepProps) {
    const { question } = asked;
    const bay = useBay();
    const tried = bay.trial.tried.value?.rungs[question];
    const rung = bay.asks.rungs.value[question];
    const open = bay.open.value === question && !bay.guiding.value && !bay.comparing.open.value;
    const outcome = rung.document?.answer.verdict.outcome;
    const old = rung.state === 'stale' || (rung.state === 'asking' && rung.stage !== 'whole');
    return (
        <button
            type="button"
            class={`rung ${outcomeClass(outcome)}${open ? ' open' : ''}${isOld(rung, bay.desk.value) ? ' old' : ''}`}
            aria-current={open}
            onClick={() => {
                bay.guiding.value = false;
                bay.comparing.open.value = false;
                bay.open.value = question;
            }}
        >
            <span class="number">{index + 1}</span>
            <span class="question">{asked.words}</span>
            <span class="verdict">
                <OutcomeMark outcome={outcome} />
                <span>
                    <VerdictText rung={rung} />
                    {old && rung.state === 'asking' && <Progress rung={rung} />}
                </span>
            </span>
            {tried?.document !== undefined && (
                <span class="with-it">with it: {firstOf(tried.document.answer.verdict.shown)}</span>
            )}
        </button>
    );
}

/** Whether what stands there speaks of another rig than the one in the editor. */
export function isOld(rung: Rung, view: DeskView | undefined): boolean {
    return (
        rung.document !== undefined &&
        (view === undefined || view.changing || rung.of !== view.document.revision)
    );
}

/** What is judged; what follows after a semicolon stands on the sheet, so that all rungs are in sight at once. */
function firstOf(shown: string): string {
    const end = shown.indexOf(';');
    return end < 0 ? shown : shown.slice(0, end);
}

function VerdictText({ rung }: { rung: Rung }) {
    if (rung.state === 'refused') return <>cannot be asked: {rung.refused}</>;
    const verdict = rung.document?.answer.verdict;
    if (verdict === undefined) {
        return <>{rung.state === 'asking' ? 'being answered' : 'not asked yet'}</>;
    }
    if (verdict.outcome === 'not judged') {
        return (
            <>
                <strong>{rung.state === 'asking' ? 'being judged' : 'not judged'}</strong>:{' '}
                {firstOf(verdict.shown)}
            </>
        );
    }
    return (
        <>
            <strong>{outcomeWords(verdict.outcome)}</strong>: {firstOf(verdict.shown)}
        </>
    );
}

function Progress({ rung }: { rung: Rung }) {
    const at = rung.progress;
    if (at === undefined || at.total <= 0) return null;
    return <progress max={at.total} value={at.done} aria-label={`${rung.question}: ${at.stage}`} />;
}
