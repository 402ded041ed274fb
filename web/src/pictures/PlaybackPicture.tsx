import { useComputed, useSignal, type Signal } from '@preact/signals';
import { useCallback, useId, useMemo, useRef, useState } from 'preact/hooks';
import { withLengths } from '../core/lengths';
import { momentsOf, numbersOf } from '../core/numbers';
import {
    aheadOf,
    LEVEL_WORDS,
    playedOf,
    textOn,
    trackName,
    type Ahead,
    type Played,
} from '../core/playback';
import { momentAt } from '../core/playing';
import { NO_SCENE, sceneOf, type Scene } from '../core/scene';
import { lay, VIEWS, type ViewName } from '../core/view';
import type { Playback } from '../core/wire';
import type { PictureProps } from './api';
import { Frame } from './Frame';
import { InSpace } from './InSpace';
import { PlayedRig, playedCorners, playedScene, Swatch } from './PlayedRig';
import { RigEdges } from './RigEdges';
import { SeenFrom } from './SeenFrom';
import { Player } from './Player';
import { useWidth } from './useWidth';

const SHEET = { margin: 34, foot: 24, leastHeight: 200, mostHeight: 460 };
const INSET = 18; // padding and frame of a picture
const WIDEST = 680;
/** How long the whole plays at speed 1, s. */
const WHOLE_S = 15;
const LISTED = 6;
const NAMED = 3;
const SIDES: readonly ViewName[] = ['behind', 'side', 'above'];

/** How warm each part is at a moment, drawn where it is; moments are played, or chosen by a slider. */
export function PlaybackPicture(props: PictureProps & { section: Playback }) {
    const { section, fields, fileName, stale, selected, onShow, rig } = props;
    const played = useMemo(() => playedOf(section, fields), [section, fields]);
    const scene = useMemo(() => playedScene(rig ? sceneOf(rig) : NO_SCENE, played), [rig, played]);
    const lengths = useMemo(() => withLengths(fields, props.units), [fields, props.units]);
    const tables = useCallback(() => numbersOf(section, fields), [section, fields]);
    const file = useCallback(() => [momentsOf(section, fields)], [section, fields]);
    // Its time goes on at every frame, but only another moment is drawn anew.
    const at = useSignal<number | undefined>(undefined);
    const moment = useComputed(() =>
        at.value === undefined ? played.worst : momentAt(played.times, at.value),
    ).value;
    const ahead = useMemo(() => aheadOf(played, moment).slice(0, LISTED), [played, moment]);
    const film = { played, at, first: ahead[0], moment };
    const named = useMemo(() => ahead.slice(0, NAMED).map(each => each.track), [ahead]);
    return (
        <Frame
            title={section.title}
            fileName={fileName}
            kind="playback"
            tables={tables}
            file={file}
            stale={stale}
            selected={selected}
            onShow={onShow}
        >
            <HeatPlayer title={section.title} {...film} />
            <Drawn
                title={section.title}
                played={played}
                scene={scene}
                fields={fields}
                moment={moment}
                ahead={ahead}
                selected={selected}
                onShow={onShow}
            />
            <InSpace
                title={section.title}
                load={() => import('./solid/HeatSpace')}
                props={{
                    words: `${section.title} at ${textOn(played.x, played.times[moment] ?? 0)} in 3D: ${ahead.map(each => told(played, each, moment)).join('; ')}`,
                    played,
                    scene,
                    moment,
                    named,
                    title: section.title,
                    fields: lengths,
                    player: <HeatPlayer title={`${section.title}, in 3D`} {...film} />,
                    selected,
                    onShow,
                }}
            />
            <Farthest played={played} ahead={ahead} moment={moment} onShow={onShow} />
            <p class="picture-key">
                Thin and plain: cool. Dotted: warm. Hatched: in the last fifth of its way to its
                limit. Crossed, with a thick rim: at or over it. A part that warms in several places
                shows the worst of them. Wires are drawn straight from end to end, which is no plan
                of them.
            </p>
        </Frame>
    );
}

interface HeatPlayerProps {
    title: string;
    played: Played;
    /** The time that is shown, s; none before one is chosen: then it is the worst. */
    at: Signal<number | undefined>;
    moment: number;
    first: Ahead | undefined;
}

/** Goes through its moments; two of them go together, as both show one time. */
function HeatPlayer({ title, played, at, moment, first }: HeatPlayerProps) {
    const { times, x } = played;
    const film = useMemo(() => {
        const whole = (times.at(-1) ?? 0) - (times[0] ?? 0);
        return { moments: times, pace: whole / WHOLE_S };
    }, [times]);
    return (
        <Player
            title={title}
            film={film}
            at={at.value ?? times[moment] ?? 0}
            untouched={at.value === undefined}
            words={time => textOn(x, times[momentAt(times, time)] ?? 0)}
            told={() => (first ? told(played, first, moment) : '')}
            onAt={time => {
                at.value = time;
            }}
        />
    );
}

/** "left.1, motor winding 98.2 °C of 100 °C, near its limit". */
function told(played: Played, { track, level, more }: Ahead, moment: number): string {
    const value = textOn(played.y, track.values[moment] ?? 0);
    return `${trackName(track)} ${value} of ${textOn(played.y, track.limit)}, ${levelWords(level, more)}`;
}

/** "at or over its limit, and so are 23 more". */
function levelWords(level: Ahead['level'], more: number): string {
    const others = more === 1 ? ', and so is one more' : `, and so are ${more} more`;
    return LEVEL_WORDS[level] + (more > 0 ? others : '');
}

interface DrawnProps {
    title: string;
    played: Played;
    scene: Scene;
    fields: PictureProps['fields'];
    moment: number;
    ahead: readonly Ahead[];
    selected: string | undefined;
    onShow: (part: string) => void;
}

function Drawn(props: DrawnProps) {
    const { title, played, scene, fields, moment, ahead } = props;
    const id = useId();
    const [side, setSide] = useState<ViewName>('behind');
    const room = useRef<HTMLDivElement>(null);
    const width = Math.min(WIDEST, Math.max(150, Math.floor(useWidth(room) - INSET)));
    const laid = useMemo(
        () => lay([VIEWS[side]], playedCorners(scene, played), { ...SHEET, width })[0],
        [side, scene, played, width],
    );
    const edges = useMemo(() => laid && <RigEdges laid={laid} fields={fields} />, [laid, fields]);
    const words = `${title} at ${textOn(played.x, played.times[moment] ?? 0)}, seen ${VIEWS[side].words}`;
    return (
        <>
            <SeenFrom sides={SIDES} side={side} onSide={setSide} />
            <div ref={room}>
                {laid && (
                    <svg
                        class="drawn view"
                        viewBox={`0 0 ${laid.width} ${laid.height}`}
                        role="img"
                        aria-label={`${words}: ${ahead.map(each => told(played, each, moment)).join('; ')}`}
                        data-title={words}
                    >
                        <PlayedRig
                            id={id}
                            scene={scene}
                            laid={laid}
                            played={played}
                            moment={moment}
                            named={ahead.slice(0, NAMED).map(each => each.track)}
                            selected={props.selected}
                            onShow={props.onShow}
                        />
                        {edges}
                    </svg>
                )}
            </div>
        </>
    );
}

interface FarthestProps {
    played: Played;
    ahead: readonly Ahead[];
    moment: number;
    onShow: (part: string) => void;
}

/** Of each kind the part that is farthest on its way to its limit at this moment. */
function Farthest({ played, ahead, moment, onShow }: FarthestProps) {
    const id = useId();
    return (
        <ol class="ahead" aria-label="of each kind the farthest on its way to its limit">
            {ahead.map(({ track, level, more }, k) => {
                const value = track.values[moment] ?? 0;
                return (
                    <li key={`${track.part} ${track.kind}`}>
                        <Swatch id={`${id}-${k}`} level={level} />
                        <button
                            type="button"
                            class="part-name"
                            onClick={() => {
                                onShow(track.part);
                            }}
                        >
                            {trackName(track)}
                        </button>
                        <span class="reading">
                            <span data-si={String(value)}>{textOn(played.y, value)}</span> of{' '}
                            <span data-si={String(track.limit)}>
                                {textOn(played.y, track.limit)}
                            </span>
                            , {levelWords(level, more)}
                        </span>
                    </li>
                );
            })}
        </ol>
    );
}
