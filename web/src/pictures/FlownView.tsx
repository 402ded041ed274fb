import type { Signal } from '@preact/signals';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { poseAt } from '../core/flightPath';
import { momentAt } from '../core/playing';
import { sceneOf } from '../core/scene';
import type { Drawing, FlightPath, StripEvent } from '../core/wire';
import { rigExhibit } from './solid/exhibit';
import { Player } from './Player';
import { SpaceView } from './solid/SpaceView';
import type { Stage } from './solid/Stage';

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
    const exhibit = useMemo(() => rigExhibit(scene, { jets: false, lines: false }), [scene]);
    // Drawn, the rig stands on the ground; flown, its place is that of its own axes above it.
    const standsM = -exhibit.extent.floor;
    const stage = useRef<Stage>(undefined);
    const film = useMemo(() => ({ moments: path.times, pace: 1 }), [path]);
    const first = path.times[0] ?? 0;
    const at = moment.value;

    const posed = (): void => {
        const { at, turn } = poseAt(path, moment.peek() ?? first);
        stage.current?.pose({ ...at, z: at.z + standsM }, turn);
    };
    useEffect(posed, [path, at, exhibit]);

    const told = (time: number): string =>
        events
            .filter(event => event.time <= time && event.time > time - HEARD_S)
            .map(event => event.label)
            .join('; ');
    return (
        <div class="picture flown-view">
            <SpaceView
                words={`${name} in 3D. Arrow keys turn what is seen, plus and minus come nearer and go away, 1 to 6 are the fixed views. The strips tell the same flight.`}
                exhibit={exhibit}
                onPick={nothing}
                onStage={made => {
                    stage.current = made;
                    posed();
                }}
                instead={
                    <p>
                        This browser draws nothing in 3D (WebGL is missing or switched off). The
                        strips below tell the same flight.
                    </p>
                }
            />
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
    const metres = (m: number): string =>
        m
            .toFixed(1)
            .replace('-', '−')
            .replace(/^−0\.0$/, '0.0');
    return `${metres(way(0))} m forward, ${metres(way(1))} m right, ${metres(-way(2))} m up`;
}

function nothing(): void {
    // a flight that is only looked at
}
