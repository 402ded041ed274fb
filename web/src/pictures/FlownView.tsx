import type { Signal } from '@preact/signals';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { poseAt } from '../core/flightPath';
import { momentAt } from '../core/playing';
import { sceneOf } from '../core/scene';
import { OUTLOOKS } from '../core/solid';
import type { Drawing, FlightPath, StripEvent } from '../core/wire';
import { colours } from './colour';
import { extentOf } from './solid/build';
import { Player } from './solid/Player';
import { Stage } from './solid/Stage';
import { onTheme } from './theme';

export interface FlownViewProps {
    drawing: Drawing;
    path: FlightPath;
    events: readonly StripEvent[];
    /** What is played, for a listener. */
    name: string;
    /** The moment that is shown, s; undefined before one is chosen. */
    moment: Signal<number | undefined>;
}

/** An event is told for so long after it came, s. */
const HEARD_S = 1.5;

/** A flight in space: the rig goes where it went and leans as it leant, moment by moment. */
export default function FlownView({ drawing, path, events, name, moment }: FlownViewProps) {
    const scene = useMemo(() => sceneOf(drawing), [drawing]);
    // Drawn, the rig stands on the ground; flown, its place is that of its own axes above it.
    const standsM = useMemo(() => -extentOf(scene).floor, [scene]);
    const canvas = useRef<HTMLCanvasElement>(null);
    const labels = useRef<HTMLDivElement>(null);
    const stage = useRef<Stage>(undefined);
    const [missing, setMissing] = useState(false);
    const film = useMemo(() => ({ moments: path.times, pace: 1 }), [path]);
    const first = path.times[0] ?? 0;
    const at = moment.value;

    const posed = (): void => {
        const { at, turn } = poseAt(path, moment.peek() ?? first);
        stage.current?.pose({ ...at, z: at.z + standsM }, turn);
    };
    useEffect(() => {
        if (!canvas.current || !labels.current?.parentElement) return undefined;
        let made: Stage;
        try {
            made = new Stage(
                canvas.current,
                labels.current,
                colours(labels.current.parentElement),
                scene,
                { selected: undefined, marked: [] },
            );
        } catch {
            setMissing(true);
            return undefined;
        }
        stage.current = made;
        const deaf = onTheme(made.paint);
        posed();
        return () => {
            deaf();
            stage.current = undefined;
            made.dispose();
        };
    }, [scene]);
    useEffect(posed, [path, at, scene]);

    const told = (time: number): string =>
        events
            .filter(event => event.time <= time && event.time > time - HEARD_S)
            .map(event => event.label)
            .join('; ');
    return (
        <div class="flown-view">
            {missing ? (
                <p>
                    This browser draws nothing in space (WebGL is missing or switched off). The
                    strips below tell the same flight.
                </p>
            ) : (
                <>
                    <div class="rig-tools" role="group" aria-label="Look">
                        {OUTLOOKS.map(outlook => (
                            <button
                                key={outlook.name}
                                type="button"
                                onClick={() => {
                                    stage.current?.look(outlook.from);
                                }}
                            >
                                {outlook.words}
                            </button>
                        ))}
                    </div>
                    <div class="solid-home">
                        <canvas
                            ref={canvas}
                            class="solid-canvas"
                            tabIndex={0}
                            role="img"
                            aria-label={`${name} in space. Arrow keys turn what is seen, plus and minus come nearer and go away. The strips tell the same flight.`}
                            onKeyDown={event => {
                                const plain = !(event.ctrlKey || event.metaKey || event.altKey);
                                if (plain && stage.current?.key(event.key)) event.preventDefault();
                            }}
                            onFocus={() => stage.current?.zoom(true)}
                            onBlur={() => stage.current?.zoom(false)}
                        />
                        <div ref={labels} class="solid-labels" aria-hidden="true" />
                    </div>
                </>
            )}
            <Player
                title={name}
                film={film}
                at={at ?? first}
                untouched={at === undefined}
                words={time => `${time.toFixed(2)} s, ${placeWords(path, time)}`}
                told={told}
                onAt={time => {
                    moment.value = time;
                }}
            />
            <p class="flown-event" role="status">
                {at === undefined ? '' : told(at)}
            </p>
        </div>
    );
}

/** Where the rig is, by its own axes, from where it started. */
function placeWords(path: FlightPath, time: number): string {
    const k = momentAt(path.times, time);
    const way = (i: number): number => (path.places[3 * k + i] ?? 0) - (path.places[i] ?? 0);
    return `${way(0).toFixed(1)} m forward, ${way(1).toFixed(1)} m right, ${(-way(2)).toFixed(1)} m up`;
}
