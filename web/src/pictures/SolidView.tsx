import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { bareName, drawnName } from '../core/mounts';
import { numbersOf } from '../core/numbers';
import { sceneOf } from '../core/scene';
import { OUTLOOKS } from '../core/solid';
import type { RigProps } from './api';
import { colours } from './colour';
import { Frame } from './Frame';
import { Stage } from './solid/Stage';
import { TableView } from './TableView';
import { onTheme } from './theme';

const NONE: readonly string[] = [];
/** A longer way of the pointer turns the rig, a shorter one chooses a part. */
const CLICK = 4;

/** The rig to turn. */
export default function SolidView(props: RigProps) {
    const { drawing, fields, fileName, stale, parts, marked = NONE } = props;
    const selected = props.selected === undefined ? undefined : drawnName(parts, props.selected);
    const onShow = (part: string): void => {
        props.onShow(bareName(part));
    };
    const scene = useMemo(() => sceneOf(drawing), [drawing]);
    const tables = useCallback(() => numbersOf(drawing, fields), [drawing, fields]);
    const canvas = useRef<HTMLCanvasElement>(null);
    const labels = useRef<HTMLDivElement>(null);
    const stage = useRef<Stage>(undefined);
    const first = useRef({ scene, chosen: { selected, marked } });
    const down = useRef<[number, number]>(undefined);
    const [missing, setMissing] = useState(false);

    useEffect(() => {
        if (!canvas.current || !labels.current?.parentElement) {
            return undefined;
        }
        let made: Stage;
        try {
            const colour = colours(labels.current.parentElement);
            made = new Stage(
                canvas.current,
                labels.current,
                colour,
                first.current.scene,
                first.current.chosen,
            );
        } catch {
            setMissing(true); // told in words below: there is no WebGL here
            return undefined;
        }
        stage.current = made;
        const deaf = onTheme(made.paint);
        return () => {
            deaf();
            stage.current = undefined;
            made.dispose();
        };
    }, []);
    useEffect(() => {
        stage.current?.show(scene);
    }, [scene]);
    useEffect(() => {
        stage.current?.choose({ selected, marked });
    }, [selected, marked]);

    if (missing) {
        return (
            <div class="picture">
                <p>
                    This browser draws nothing in space (WebGL is missing or switched off). The
                    views from behind, from the side and from above show the same rig.
                </p>
                {tables().map(table => (
                    <TableView key={table.id} table={table} selected={selected} onShow={onShow} />
                ))}
            </div>
        );
    }
    return (
        <Frame
            title={`${drawing.title}, in space`}
            fileName={`${fileName}-in-space`}
            kind="solid"
            tables={tables}
            stale={stale}
            selected={selected}
            onShow={onShow}
            bitmap={() => stage.current?.bitmap() ?? Promise.reject(new Error('nothing is drawn'))}
        >
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
                    aria-label={`${drawing.title} in space: ${scene.fans.length} fans${scene.limbs.length > 0 ? ' about the wearer' : ''}. Arrow keys turn it, plus and minus come nearer and go away. The table says where everything is.`}
                    onKeyDown={event => {
                        const plain = !(event.ctrlKey || event.metaKey || event.altKey);
                        if (plain && stage.current?.key(event.key)) {
                            event.preventDefault();
                        }
                    }}
                    onFocus={() => stage.current?.zoom(true)}
                    onBlur={() => stage.current?.zoom(false)}
                    onPointerDown={event => {
                        down.current = [event.clientX, event.clientY];
                    }}
                    onPointerUp={event => {
                        const from = down.current;
                        if (
                            from &&
                            Math.hypot(event.clientX - from[0], event.clientY - from[1]) < CLICK
                        ) {
                            const part = stage.current?.pick(event.offsetX, event.offsetY);
                            if (part !== undefined) {
                                onShow(part);
                            }
                        }
                    }}
                />
                <div ref={labels} class="solid-labels" aria-hidden="true" />
            </div>
            <p class="picture-key">
                Drag to turn; once chosen, the wheel comes nearer. Rims are hatched the way the
                rotor turns, and so goes the arrow round the hub. Chequered ball: centre of mass,
                with its plumb line. Dashed: the line along which the lift acts.
            </p>
        </Frame>
    );
}
