import { Group } from 'three';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { heldScene, holdCorners, holdThings, type Hold } from '../../core/hold';
import { corners, type Scene } from '../../core/scene';
import { minus, plus, type Point } from '../../core/space';
import { thingsOf } from '../../core/things';
import type { AnswerDocument } from '../../core/wire';
import type { Exhibit, Naming } from './exhibit';
import { hold as drawn } from './hold';
import { PointedView } from './PointedView';
import { fans, limbs, parts } from './rig';
import { extentOf } from './shapes';
import type { Stage } from './Stage';

interface HoldSpaceProps {
    words: string;
    hold: Hold;
    /** The rig as another answer draws it; nothing where none does. */
    scene: Scene;
    title: string;
    fields: AnswerDocument['fields'];
    selected: string | undefined;
    onShow: (part: string) => void;
}

/** Stand or tether in space, with what pulls and where nobody may stand. */
export default function HoldSpace(props: HoldSpaceProps) {
    const { words, title, hold, scene, fields, selected, onShow } = props;
    const [wide, setWide] = useState(false);
    const stage = useRef<Stage>(undefined);
    const exhibit = useMemo<Exhibit>(() => {
        const held = heldScene(scene, hold);
        const out = hold.shapes.filter(({ kind }) => kind === 'keep out');
        const around = wide
            ? out.flatMap(({ from, to }) => [to, plus(plus(from, from), to, -1)])
            : [];
        const drawnRig = held.fans.length + held.parts.length > 0 ? corners(held) : [];
        const extent = extentOf([...holdCorners(hold), ...drawnRig, ...around]);
        return {
            rig: colour => {
                const all = new Group();
                all.add(limbs(held, colour), parts(held, colour), fans(held, colour));
                return all;
            },
            world: colour => drawn(hold, colour),
            extent,
            things: [...thingsOf(held), ...holdThings(hold)],
            names: [
                ...hold.pulls.map(pull => ({
                    words: `${pull.label} ${pull.words}`,
                    at: [plus(pull.at, pull.along, 0.3)],
                })),
                ...namesOf(hold),
            ],
        };
    }, [scene, hold, wide]);
    const before = useRef(wide);
    useEffect(() => {
        if (before.current !== wide) {
            before.current = wide;
            stage.current?.fit(); // what is shown was changed below
        }
    }, [wide]);
    return (
        <PointedView
            words={words}
            title={`${title}, in 3D`}
            exhibit={exhibit}
            fields={fields}
            selected={selected}
            onShow={onShow}
            onStage={made => {
                stage.current = made;
            }}
        >
            <button
                type="button"
                aria-pressed={wide}
                onClick={() => {
                    setWide(!wide);
                }}
            >
                whole zone
            </button>
        </PointedView>
    );
}

/** One name for all that are called the same. */
function namesOf({ shapes }: Hold): Naming[] {
    const names = new Map<string, Point[]>();
    for (const { label, from, to, form } of shapes) {
        const at = form === 'circle' ? to : plus(from, minus(to, from), 0.5);
        names.set(label, [...(names.get(label) ?? []), at]);
    }
    return [...names].map(([words, at]) => ({ words, at: at.slice(0, 1) }));
}
