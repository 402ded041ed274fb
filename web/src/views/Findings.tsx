import type { AnswerDocument, Finding, Remedy } from '../core/wire';
import { useBay } from './context';
import { Fold } from './Fold';

/** What was found, worst first. */
interface FindingsProps {
    document: AnswerDocument;
    /** What they are of, where those of the question stand on the page too. */
    of?: string;
}

export function Findings({ document, of }: FindingsProps) {
    const id = of === undefined ? 'findings' : `findings-${of.replaceAll(' ', '-')}`;
    const found = document.answer.findings;
    const loud = found.filter(finding => finding.severity !== 'notes');
    const notes = found.filter(finding => finding.severity === 'notes');
    return (
        <section class="findings" aria-labelledby={id}>
            <h3 id={id}>What was found{of === undefined ? '' : `: ${of}`}</h3>
            {found.length === 0 && <p class="quiet">Nothing.</p>}
            {loud.length > 0 && (
                <ul>
                    {loud.map((finding, index) => (
                        <One key={`${finding.code} ${index}`} finding={finding} />
                    ))}
                </ul>
            )}
            {notes.length > 0 && (
                <Fold title={notes.length === 1 ? '1 note' : `${notes.length} notes`}>
                    {() => (
                        <ul>
                            {notes.map((finding, index) => (
                                <One key={`${finding.code} ${index}`} finding={finding} />
                            ))}
                        </ul>
                    )}
                </Fold>
            )}
        </section>
    );
}

function One({ finding }: { finding: Finding }) {
    const bay = useBay();
    const { severity, part, path, limit } = finding;
    return (
        <li class={`finding ${severity}`}>
            <p>
                <span class="severity">{severity}</span> {finding.shown}
            </p>
            {limit !== undefined && (
                <p class="quiet">
                    Limit {limit.value.shown}: {limit.origin}
                </p>
            )}
            {finding.cause !== '' && <p class="quiet">Why: {finding.cause}</p>}
            {(part !== undefined || path !== undefined) && (
                <button
                    type="button"
                    class="plain small"
                    onClick={() => {
                        bay.show(part, path);
                    }}
                >
                    Show me<span class="unseen">: {part ?? path}</span>
                </button>
            )}
            {finding.remedies.length > 0 && (
                <ol class="remedies" aria-label="What would mend it">
                    {finding.remedies.map(remedy => (
                        <Mend key={remedy.number} remedy={remedy} />
                    ))}
                </ol>
            )}
        </li>
    );
}

function Mend({ remedy }: { remedy: Remedy }) {
    const bay = useBay();
    const tried = bay.trial.tried.value;
    const on = tried !== undefined && tried.label === remedy.shownName;
    const may = remedy.effect.kind !== 'refused' && remedy.changes.length > 0;
    return (
        <li class={`remedy ${remedy.effect.kind}`} value={remedy.number}>
            <p>
                {remedy.shownName}: <span class="effect">{remedy.shownEffect}</span>
            </p>
            {may && (
                <div class="row">
                    {/* One button, so that the focus stays on it while what it does changes. */}
                    <button
                        type="button"
                        class={on ? 'strong small' : 'plain small'}
                        onClick={() => {
                            if (on) {
                                bay.keepTrial();
                                document.getElementById('sheet')?.focus({ preventScroll: true });
                            } else {
                                bay.tryOut(remedy.shownName, remedy.changes);
                            }
                        }}
                    >
                        {on ? 'Keep' : 'Try this'}
                        <span class="unseen">: {remedy.shownName}</span>
                    </button>
                    {on && (
                        <button
                            type="button"
                            class="plain small"
                            onClick={event => {
                                focusBefore(event.currentTarget);
                                bay.trial.let();
                            }}
                        >
                            Let it go
                        </button>
                    )}
                </div>
            )}
        </li>
    );
}

/** So that the focus is not lost with a button that goes. */
function focusBefore(button: HTMLElement): void {
    const before = button.previousElementSibling;
    if (before instanceof HTMLElement) before.focus();
}
