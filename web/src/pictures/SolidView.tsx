import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { lengthWords } from '../core/lengths';
import { bareName, drawnName, drawnParts } from '../core/mounts';
import { numbersOf } from '../core/numbers';
import { sceneOf, type Scene } from '../core/scene';
import { length, minus } from '../core/space';
import { measured, thingName, type Thing } from '../core/things';
import type { RigProps } from './api';
import { settled, STEP_M, useHand } from './dragging';
import { Frame } from './Frame';
import { rigExhibit } from './solid/exhibit';
import { glbOf } from './solid/glb';
import { ghostOverlay, measureOverlay, together } from './solid/ghost';
import { Measure } from './solid/Measure';
import { SpaceView } from './solid/SpaceView';
import type { Stage } from './solid/Stage';
import { ThingTold } from './solid/ThingTold';
import { useSpaceHand } from './solid/useSpaceHand';
import { TableView } from './TableView';

const NONE: readonly string[] = [];

/** The rig in space: to turn, to point at, to measure, to drag. */
export default function SolidView(props: RigProps) {
    const { drawing, fields, fileName, stale } = props;
    const parts = useMemo(() => drawnParts(props.parts), [props.parts]);
    const selected =
        props.selected === undefined ? undefined : drawnName(props.parts, props.selected);
    const marked = useMemo(
        () => (props.marked ?? NONE).map(part => drawnName(props.parts, part)),
        [props.marked, props.parts],
    );
    const scene = useMemo(() => sceneOf(drawing), [drawing]);
    const tables = useCallback(() => numbersOf(drawing, fields), [drawing, fields]);
    const [shown, setShown] = useState({ jets: true, lines: false });
    const [wanted, setWanted] = useState({ snap: true, twin: true, whole: false });
    const exhibit = useMemo(() => rigExhibit(scene, shown), [scene, shown]);
    const [own, setOwn] = useState<string>();
    const [measuring, setMeasuring] = useState(false);
    const [ends, setEnds] = useState<readonly [string | undefined, string | undefined]>([
        undefined,
        undefined,
    ]);
    useEffect(() => {
        setOwn(undefined); // chosen elsewhere since
    }, [selected]);
    const current = own ?? selected;
    const { things } = exhibit;
    const thing = things.find(each => each.id === current);

    const choose = (to: Thing): void => {
        setOwn(to.id);
        if (measuring) {
            setEnds([ends[1] ?? current, to.id]);
        }
        if (to.part !== undefined) {
            props.onShow(to.part);
        }
    };
    const stepM = props.stepM ?? STEP_M[props.units];
    const { ghost: held, grip } = useHand(scene, parts, { stepM, ...wanted }, props.onDrag);
    const ghost = useMemo(() => settled(held, props.moved), [held, props.moved]);
    const hand = useSpaceHand({
        things,
        current,
        grip,
        movable: id => parts.some(part => part.id === id && part.movable),
        onChoose: choose,
        onEnter: choose,
    });
    const [from, to] = ends.map(end => things.find(each => each.id === end));
    const overlay = useMemo(() => {
        const way = from && to && measured(from, to);
        return together(
            ghost && ghostOverlay(ghost),
            way && measureOverlay(way, lengthWords(length(minus(way.to, way.from)), fields)),
        );
    }, [ghost, from, to, fields]);
    const stage = useRef<Stage>(undefined);
    return (
        <Frame
            title={`${drawing.title}, in space`}
            fileName={`${fileName}-in-space`}
            kind="solid"
            tables={tables}
            stale={stale}
            selected={selected}
            onShow={part => {
                props.onShow(bareName(part));
            }}
            model={() => glbOf(shown.jets ? scene : { ...scene, jets: [], strikes: [] }, fileName)}
            bitmap={() => stage.current?.bitmap() ?? Promise.reject(new Error('nothing is drawn'))}
        >
            <div class="rig-tools" role="group" aria-label="Show and move">
                <Tick words="jets" on={shown.jets} to={jets => ({ jets })} set={setShown} />
                <Tick
                    words="lines of thrust"
                    on={shown.lines}
                    to={lines => ({ lines })}
                    set={setShown}
                />
                {parts.some(part => part.movable) && (
                    <>
                        <Tick
                            words="snap"
                            on={wanted.snap}
                            to={snap => ({ snap })}
                            set={setWanted}
                        />
                        <Tick
                            words="twin goes along"
                            on={wanted.twin}
                            to={twin => ({ twin })}
                            set={setWanted}
                        />
                        <Tick
                            words="whole group"
                            on={wanted.whole}
                            to={whole => ({ whole })}
                            set={setWanted}
                        />
                    </>
                )}
                <label>
                    thing
                    <select
                        value={thing?.id ?? ''}
                        onChange={event => {
                            const { value } = event.currentTarget;
                            const found = things.find(each => each.id === value);
                            if (found) choose(found);
                        }}
                    >
                        <option value="">none</option>
                        {things.map(each => (
                            <option key={each.id} value={each.id}>
                                {thingName(each)}, {each.what}
                            </option>
                        ))}
                    </select>
                </label>
                <label>
                    <input
                        type="checkbox"
                        checked={measuring}
                        onChange={event => {
                            setMeasuring(event.currentTarget.checked);
                            setEnds([undefined, undefined]);
                        }}
                    />
                    measure
                </label>
            </div>
            {measuring && (
                <Measure
                    things={things}
                    from={ends[0]}
                    to={ends[1]}
                    fields={fields}
                    onFrom={id => {
                        setEnds([id, ends[1]]);
                    }}
                    onTo={id => {
                        setEnds([ends[0], id]);
                    }}
                />
            )}
            <SpaceView
                words={wordsOf(drawing.title, scene)}
                exhibit={exhibit}
                overlay={overlay}
                selected={current}
                marked={marked}
                hand={hand}
                onPick={choose}
                onStage={made => {
                    stage.current = made;
                }}
                instead={<NoWebGl tables={tables} selected={selected} onShow={props.onShow} />}
            />
            <ThingTold {...props} parts={parts} scene={scene} thing={thing} dragged={ghost?.part} />
            <p class="picture-key">{KEY}</p>
        </Frame>
    );
}

function wordsOf(title: string, scene: Scene): string {
    const wearer = scene.limbs.length > 0 ? ' about the wearer' : '';
    const strikes =
        scene.strikes.length > 0 ? `, ${scene.strikes.length} strikes of jets marked` : '';
    return (
        `${title} in space: ${scene.fans.length} fans${wearer}${strikes}. Arrow keys turn it, plus and ` +
        'minus come nearer and go away, 1 to 6 are the fixed views, Page Up and Page Down go from ' +
        'thing to thing, M takes the chosen part to move it by arrow keys. The table says where everything is.'
    );
}

const KEY =
    'Drag to turn; click a thing to choose it, drag what is chosen to move it (Alt leaves snapping off). ' +
    'Keys: 1 to 6 views, Page Up and Page Down from thing to thing, M moves the chosen part by arrow ' +
    'keys, Enter keeps, Escape puts back. Rims are hatched the way the rotor turns, and so goes the ' +
    'arrow round the hub. Cones: jets, as wide as what is faster than half of the axis; whole lines and ' +
    'a mark where one strikes something. Chequered ball: centre of mass, with its plumb line. Dashed: ' +
    'the line along which the lift acts.';

interface TickProps<T> {
    words: string;
    on: boolean;
    to: (on: boolean) => Partial<T>;
    set: (next: (before: T) => T) => void;
}

function Tick<T>({ words, on, to, set }: TickProps<T>) {
    return (
        <label>
            <input
                type="checkbox"
                checked={on}
                onChange={event => {
                    const { checked } = event.currentTarget;
                    set(before => ({ ...before, ...to(checked) }));
                }}
            />
            {words}
        </label>
    );
}

interface NoWebGlProps {
    tables: () => ReturnType<typeof numbersOf>;
    selected: string | undefined;
    onShow: (part: string) => void;
}

function NoWebGl({ tables, selected, onShow }: NoWebGlProps) {
    return (
        <>
            <p>
                This browser draws nothing in space (WebGL is missing or switched off). The views
                from behind, from the side and from above show the same rig.
            </p>
            {tables().map(table => (
                <TableView key={table.id} table={table} selected={selected} onShow={onShow} />
            ))}
        </>
    );
}
