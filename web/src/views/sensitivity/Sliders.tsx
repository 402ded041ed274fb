import { useEffect, useId } from 'preact/hooks';
import { COMPARED, declaredStop, type Sensitivity } from '../../core/compare';
import type { Question } from '../../core/wire';
import { useBay } from '../context';

/** The five declared values that move this verdict most, each on a slider over its own band. */
export function Sliders({ question }: { question: Question }) {
    const bay = useBay();
    const { sensing } = bay;
    const tried = bay.trial.tried.value;
    useEffect(() => {
        if (tried === undefined) sensing.settle();
    }, [tried, sensing]);
    if (!COMPARED.includes(question)) return null;
    const now = sensing.now.value;
    const mine = now?.question === question ? now : undefined;
    const view = bay.desk.value;
    const old = mine !== undefined && mine.of !== view?.document.revision;
    const far = mine?.progress;
    return (
        <section class="sliders" aria-labelledby="sliders">
            <h3 id="sliders">What moves it most</h3>
            {(mine === undefined || old || mine.state === 'stopped') && (
                <button type="button" class="plain" onClick={() => void sensing.ask(question)}>
                    {old
                        ? 'Find again what moves this verdict most'
                        : 'Find what moves this verdict most'}
                </button>
            )}
            <p class="state" aria-live="polite">
                {mine?.state === 'asking' &&
                    (far === undefined || far.total <= 0
                        ? 'Being found.'
                        : `Being found: ${far.stage}, ${Math.floor((100 * far.done) / far.total)} %.`)}
                {mine?.state === 'refused' && `Cannot be told: ${mine.refused ?? ''}`}
                {mine?.state === 'told' &&
                    !old &&
                    mine.inputs.length === 0 &&
                    'Nothing that is declared moves it.'}
            </p>
            {mine?.state === 'told' && !old && mine.inputs.length > 0 && (
                <>
                    <p class="quiet">
                        Each over its own band of 95 %. Moving one answers again at once, in memory:
                        keep it, or let it go.
                    </p>
                    {mine.inputs.map(each => (
                        <One key={each.path} of={each} judged={mine.judged ?? ''} />
                    ))}
                </>
            )}
        </section>
    );
}

function One({ of, judged }: { of: Sensitivity; judged: string }) {
    const bay = useBay();
    const id = useId();
    const stop = bay.sensing.at.value.get(of.path) ?? declaredStop(of);
    const value = of.shown[stop] ?? '';
    return (
        <div class="slider">
            <label for={id}>{of.label}</label>
            <button
                type="button"
                class="link"
                onClick={() => {
                    bay.show(undefined, of.path);
                }}
            >
                {of.path}
            </button>
            {of.stops.length > 0 ? (
                <>
                    <input
                        id={id}
                        type="range"
                        min={0}
                        max={of.stops.length - 1}
                        step={1}
                        value={stop}
                        aria-valuetext={value}
                        onInput={event => {
                            bay.sensing.move(of.path, Number(event.currentTarget.value));
                        }}
                    />
                    <span class="ends">
                        <span>{of.shown[0]}</span>
                        <output for={id}>{value}</output>
                        <span>{of.shown[of.shown.length - 1]}</span>
                    </span>
                </>
            ) : (
                <span class="quiet" id={id}>
                    A table tells it, or it says a doubt alone: there is nothing to slide.
                </span>
            )}
            <span class="quiet">
                To its upper end: {judged} {of.moves > 0 ? '+' : ''}
                {of.shownMoves}
                {of.shownShare !== undefined && `; ${of.shownShare} of the variance`}
            </span>
        </div>
    );
}
