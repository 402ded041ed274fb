import type { Question } from '../core/wire';
import { useBay } from './context';

/** What is tried and not kept. */
export function TrialBar({ question }: { question: Question }) {
    const bay = useBay();
    const tried = bay.trial.tried.value;
    if (tried === undefined || bay.moving.moved.value !== undefined) return null;
    const after = tried.rungs[question].document?.answer.verdict.shown;
    return (
        <section class="bar trial" aria-label="Tried, not kept">
            <p>
                <strong>Tried, not kept: {tried.label}.</strong>{' '}
                {tried.state === 'refused'
                    ? tried.refused
                    : after === undefined
                      ? 'Being answered.'
                      : `With it: ${after}. The pictures show it so; doubt is computed when you keep it.`}
            </p>
            <div class="row">
                {tried.state !== 'refused' && (
                    <button
                        type="button"
                        class="strong"
                        onClick={() => {
                            bay.keepTrial();
                            document.getElementById('sheet')?.focus({ preventScroll: true });
                        }}
                    >
                        Keep
                    </button>
                )}
                <button
                    type="button"
                    class="plain"
                    onClick={() => {
                        bay.trial.let();
                        document.getElementById('sheet')?.focus({ preventScroll: true });
                    }}
                >
                    Let it go
                </button>
            </div>
        </section>
    );
}
