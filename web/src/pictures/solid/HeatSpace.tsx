import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import { levelsAt, warmOf, warmThings } from '../../core/heatThings';
import { textOn, type Played } from '../../core/playback';
import type { Scene } from '../../core/scene';
import { minus, plus } from '../../core/space';
import { thingsOf } from '../../core/things';
import type { AnswerDocument, Track } from '../../core/wire';
import { playedCorners } from '../PlayedRig';
import type { Exhibit, Naming, Overlay } from './exhibit';
import { heat } from './heat';
import { PointedView } from './PointedView';
import { limbs } from './rig';
import { extentOf, ground } from './shapes';

interface HeatSpaceProps {
    /** What is shown, and how warm the warmest are. */
    words: string;
    played: Played;
    scene: Scene;
    moment: number;
    named: readonly Track[];
    title: string;
    fields: AnswerDocument['fields'];
    /** What goes through its moments. */
    player: ComponentChildren;
    selected: string | undefined;
    onShow: (part: string) => void;
}

/** How warm each part is at a moment, in space. */
export default function HeatSpace(props: HeatSpaceProps) {
    const { words, title, played, scene, moment, named, fields, player, selected, onShow } = props;
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
        <>
            <PointedView
                words={words}
                title={`${title}, in 3D`}
                exhibit={exhibit}
                overlay={overlay}
                fields={fields}
                selected={selected}
                onShow={onShow}
            />
            {player}
        </>
    );
}
