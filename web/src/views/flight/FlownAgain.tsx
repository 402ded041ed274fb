import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { ComponentType } from 'preact';
import type { Drawing, FlightPath, Strips } from '../../core/wire';
import { Picture } from '../../pictures';
import type { FlownViewProps } from '../../pictures/FlownView';
import { StripsPicture } from '../../pictures/strips/StripsPicture';
import type { Flown } from '../../state/played';
import { useBay } from '../context';
import { Fold } from '../Fold';
import { OutcomeMark, outcomeClass, outcomeWords } from '../outcome';

/** The flight that was pressed, flown again: in words, over time, and in space. */
export function FlownAgain() {
    const flown = useBay().played.flown.value;
    return flown === undefined ? null : <Flight flown={flown} />;
}

function Flight({ flown }: { flown: Flown }) {
    const bay = useBay();
    const heading = useRef<HTMLHeadingElement>(null);
    const name = `flight ${flown.number}, seed ${flown.seed === '' ? 'as usual' : flown.seed}`;
    useEffect(() => {
        heading.current?.focus({ preventScroll: true });
        heading.current?.scrollIntoView({ block: 'nearest' });
    }, [name]);
    const document = flown.document;
    const answer = document?.answer;
    const old = flown.of !== bay.desk.value?.document.revision;
    const sections = answer?.sections ?? [];
    const strips = sections.find((section): section is Strips => section.kind === 'strips');
    const rest = sections.filter(section => section !== strips);
    const shown = useMemo(() => strips && alone(strips, name), [strips, name]);
    const common = {
        fields: document?.fields ?? {},
        units: bay.taste.units.value,
        stale: old,
        onShow: (part: string) => {
            bay.show(part);
        },
    };
    return (
        <section
            class={`flown-again ${outcomeClass(answer?.verdict.outcome)}`}
            aria-labelledby="flown-again"
        >
            <h4 id="flown-again" ref={heading} tabIndex={-1}>
                {name.charAt(0).toUpperCase() + name.slice(1)}
                {flown.profile === undefined ? '' : ` of ${flown.profile}`}
            </h4>
            <p class="row">
                <button
                    type="button"
                    class="plain small"
                    onClick={() => {
                        bay.played.close();
                        window.document.getElementById('many-flights')?.focus();
                    }}
                >
                    Close this flight
                </button>
            </p>
            {flown.state === 'flying' && document === undefined && <p>It is being flown.</p>}
            {flown.state === 'refused' && <p>It cannot be flown: {flown.refused}</p>}
            {answer !== undefined && (
                <p class={old ? 'verdict old' : 'verdict'}>
                    <OutcomeMark outcome={answer.verdict.outcome} />
                    <span>
                        <strong>{outcomeWords(answer.verdict.outcome)}</strong>:{' '}
                        {answer.verdict.shown}
                    </span>
                </p>
            )}
            {flown.path !== undefined && (
                <InSpace
                    path={flown.path}
                    strips={strips}
                    name={name}
                    digest={document?.rig.digest}
                />
            )}
            {shown !== undefined && document !== undefined && (
                <StripsPicture
                    {...common}
                    section={shown}
                    fileName={`${document.rig.name ?? 'rig'}-flight-${flown.number}`}
                    moment={bay.played.at}
                />
            )}
            {rest.map(section => (
                <Fold key={section.id} title={section.title}>
                    {() => (
                        <Picture
                            {...common}
                            section={section}
                            fileName={`flight-${flown.number}-${section.id}`}
                        />
                    )}
                </Fold>
            ))}
        </section>
    );
}

/** No other flight was flown beside it. */
function alone(strips: Strips, name: string): Strips {
    return {
        ...strips,
        title: `${name}, over time`,
        strips: strips.strips.map(strip => ({ ...strip, expected: [], low: [], high: [] })),
    };
}

interface InSpaceProps {
    path: FlightPath;
    strips: Strips | undefined;
    name: string;
    digest: string | undefined;
}

/** Comes when it is asked for: its library is large. */
function InSpace({ path, strips, name, digest }: InSpaceProps) {
    const bay = useBay();
    const [view, setView] = useState<{ View: ComponentType<FlownViewProps> } | undefined>();
    const [failed, setFailed] = useState(false);
    const drawing = Object.values(bay.asks.rungs.value)
        .filter(rung => digest === undefined || rung.document?.rig.digest === digest)
        .flatMap(rung => rung.document?.answer.sections ?? [])
        .find((section): section is Drawing => section.kind === 'drawing');
    if (drawing === undefined) {
        return <p class="quiet">It can be seen in 3D once the question of balance is answered.</p>;
    }
    if (view !== undefined) {
        return (
            <view.View
                drawing={drawing}
                path={path}
                events={strips?.events ?? []}
                name={name}
                moment={bay.played.at}
            />
        );
    }
    return (
        <p>
            <button
                type="button"
                class="plain"
                onClick={() => {
                    import('../../pictures/FlownView').then(
                        ({ default: View }) => {
                            setView({ View });
                        },
                        () => {
                            setFailed(true);
                        },
                    );
                }}
            >
                Play it in 3D
            </button>
            {failed && ' The 3D view could not be loaded: is the server running?'}
        </p>
    );
}
