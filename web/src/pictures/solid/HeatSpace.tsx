import { useMemo } from 'preact/hooks';
import { levelsAt, warmOf, warmThings } from '../../core/heatThings';
import { textOn, type Played } from '../../core/playback';
import type { Scene } from '../../core/scene';
import { minus, plus } from '../../core/space';
import { thingsOf } from '../../core/things';
import type { Track } from '../../core/wire';
import { playedCorners } from '../PlayedRig';
import type { Exhibit, Naming, Overlay } from './exhibit';
import { heat } from './heat';
import { NoWebGl } from './NoWebGl';
import { limbs } from './rig';
import { extentOf, ground } from './shapes';
import { SpaceView } from './SpaceView';

interface HeatSpaceProps {
    /** What is shown, and how warm the warmest are. */
    words: string;
    played: Played;
    scene: Scene;
    moment: number;
    named: readonly Track[];
    selected: string | undefined;
    onShow: (part: string) => void;
}

/** How warm each part is at a moment, in space. */
export default function HeatSpace(props: HeatSpaceProps) {
    const { words, played, scene, moment, named, selected, onShow } = props;
    const warm = useMemo(() => warmOf(played, scene), [played, scene]);
    const exhibit = useMemo<Exhibit>(() => {
        const extent = extentOf(playedCorners(scene, played));
        return {
            rig: colour => limbs(scene, colour),
            world: colour => ground(extent, colour),
            extent,
            things: [
                ...warmThings(warm),
                ...thingsOf(scene).filter(thing => thing.what === 'limb'),
            ],
            names: [],
        };
    }, [played, scene, warm]);
    const overlay = useMemo<Overlay>(() => {
        const levels = levelsAt(warm, played, moment);
        return {
            build: colour => heat(warm, levels, colour),
            names: named.flatMap((track): Naming[] => {
                const mark = played.marks.find(each => each.tracks.includes(track));
                const value = textOn(played.y, track.values[moment] ?? 0);
                return mark
                    ? [
                          {
                              words: `${track.kind} ${value}`,
                              at: [plus(mark.from, minus(mark.to, mark.from), 0.5)],
                          },
                      ]
                    : [];
            }),
        };
    }, [warm, played, moment, named]);
    return (
        <SpaceView
            words={`${words}. Arrow keys turn it, 1 to 6 are the fixed views, plus and minus come nearer and go away.`}
            exhibit={exhibit}
            overlay={overlay}
            selected={selected}
            onPick={thing => {
                if (thing.part !== undefined) onShow(thing.part);
            }}
            instead={<NoWebGl />}
        />
    );
}
