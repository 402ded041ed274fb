import { useCallback, useMemo, useRef, useState } from 'preact/hooks';
import { bareName, drawnName, drawnParts } from '../core/mounts';
import { numbersOf } from '../core/numbers';
import { sceneOf, type Scene } from '../core/scene';
import type { RigProps } from './api';
import { settled, STEP_M, useHand } from './dragging';
import { Frame } from './Frame';
import { rigExhibit } from './solid/exhibit';
import { glbOf } from './solid/glb';
import { ghostOverlay, together } from './solid/ghost';
import { SPACE_KEYS } from './solid/pointingKeys';
import { MeasuredWay, PointingTools } from './solid/PointingTools';
import { SpaceView } from './solid/SpaceView';
import type { Stage } from './solid/Stage';
import { ThingTold } from './solid/ThingTold';
import { usePointing } from './solid/usePointing';
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
    const { things } = exhibit;
    const pointing = usePointing({ things, selected, fields, onShow: props.onShow });
    const stepM = props.stepM ?? STEP_M[props.units];
    const { ghost: held, grip } = useHand(scene, parts, { stepM, ...wanted }, props.onDrag);
    const ghost = useMemo(() => settled(held, props.moved), [held, props.moved]);
    const hand = useSpaceHand({
        pointing,
        grip,
        movable: id => parts.some(part => part.id === id && part.movable),
    });
    const { thing, overlay: way } = pointing;
    const overlay = useMemo(() => together(ghost && ghostOverlay(ghost), way), [ghost, way]);
    const stage = useRef<Stage>(undefined);
    return (
        <Frame
            title={`${drawing.title}, in 3D`}
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
                <PointingTools pointing={pointing} />
            </div>
            <MeasuredWay pointing={pointing} />
            <SpaceView
                words={wordsOf(drawing.title, scene)}
                exhibit={exhibit}
                overlay={overlay}
                selected={pointing.current}
                marked={marked}
                hand={hand}
                onPick={pointing.choose}
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
        `${title} in 3D: ${scene.fans.length} fans${wearer}${strikes}. ${SPACE_KEYS}, M takes the ` +
        'chosen part to move it by arrow keys. The table says where everything is.'
    );
}

const KEY =
    'Drag to turn; click a thing to choose it, drag what is chosen to move it (Alt leaves snapping off). ' +
    'Keys: 1 to 6 views, Page Up and Page Down from thing to thing, D measures from the chosen one, M moves the chosen part by arrow ' +
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
                This browser draws nothing in 3D (WebGL is missing or switched off). The views from
                behind, from the side and from above show the same rig.
            </p>
            {tables().map(table => (
                <TableView key={table.id} table={table} selected={selected} onShow={onShow} />
            ))}
        </>
    );
}
